package hushmaze.solid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Finds the edges of liner that the air passes: at the tips of baffles, around ports and wherever a piece ends beside air.
 * Fibres come loose there first, so these are sealed.
 */
public final class AirEdges {
    private static final double SAME = 1e-7;

    private final CellGrid grid;

    private AirEdges(Solid solid) {
        List<Part> parts = solid.parts().toList();
        this.grid = CellGrid.of(solid, SAME);
        for (int p = 0; p < parts.size(); p++) {
            for (int cell : grid.filledBy(parts.get(p))) {
                grid.put(cell, p);
            }
        }
        grid.seal(solid, parts.size());
    }

    /** The edges in the air, piece by piece in the order of the solid; pieces without any are there with none. */
    public static Map<LinerPiece, List<AirEdge>> of(Solid solid) {
        AirEdges edges = new AirEdges(solid);
        Map<LinerPiece, List<AirEdge>> all = new LinkedHashMap<>();
        for (LinerPiece piece : solid.liners()) {
            all.put(piece, edges.of(piece));
        }
        return all;
    }

    private List<AirEdge> of(LinerPiece piece) {
        List<AirEdge> edges = new ArrayList<>();
        along(piece, piece.normal().u(), piece.normal().v(), true, edges);
        along(piece, piece.normal().v(), piece.normal().u(), false, edges);
        return edges;
    }

    /** Edges across one axis; each place has the stretches along the other axis. */
    private void along(LinerPiece piece, Axis across, Axis along, boolean acrossIsU, List<AirEdge> into) {
        Map<Double, List<double[]>> places = new TreeMap<>();
        for (int cell : grid.filledBy(piece)) {
            for (int step = -1; step <= 1; step += 2) {
                int beside = grid.beside(cell, across, step);
                if (beside >= 0 && grid.at(beside) == CellGrid.NOTHING) {
                    double place = step < 0 ? grid.low(cell, across) : grid.high(cell, across);
                    places.computeIfAbsent(place - piece.bounds().low(across), p -> new ArrayList<>())
                            .add(new double[] {
                                grid.low(cell, along) - piece.bounds().low(along),
                                grid.high(cell, along) - piece.bounds().low(along)
                            });
                }
            }
        }
        places.forEach((place, stretches) -> {
            for (double[] s : joined(stretches)) {
                into.add(acrossIsU ? new AirEdge(place, s[0], place, s[1]) : new AirEdge(s[0], place, s[1], place));
            }
        });
    }

    private static List<double[]> joined(List<double[]> stretches) {
        stretches.sort((a, b) -> Double.compare(a[0], b[0]));
        List<double[]> joined = new ArrayList<>();
        for (double[] s : stretches) {
            double[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && s[0] <= last[1] + SAME) {
                last[1] = Math.max(last[1], s[1]);
            } else {
                joined.add(s.clone());
            }
        }
        return joined;
    }
}
