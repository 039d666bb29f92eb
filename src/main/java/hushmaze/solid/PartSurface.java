package hushmaze.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * The whole surface of a part as flat rectangles: cut-outs and grooves are really taken out. It lies where one of
 * {@link PartCells} that is there meets nothing. Every edge of a rectangle is a whole edge of its neighbour, so that the surface closes without gaps. Holes for
 * screws are left out.
 */
public final class PartSurface {
    /**
     * One flat rectangle.
     *
     * @param across axis it lies across
     * @param high whether the part is on the low side of it, so that it looks towards the axis's high end
     * @param at where along that axis, m
     * @param u0 low end along {@link Axis#u} of that axis, m
     * @param v0 low end along {@link Axis#v}, m
     * @param u1 high end along u, m
     * @param v1 high end along v, m
     */
    public record Face(Axis across, boolean high, double at, double u0, double v0, double u1, double v1) {
        /** Its four corners {x, y, z} in turn, m; counterclockwise for who looks at it from outside the part. */
        public List<double[]> corners() {
            List<double[]> turn = List.of(place(u0, v0), place(u1, v0), place(u1, v1), place(u0, v1));
            // x × y = +z and y × z = +x, but x × z = -y
            boolean counterclockwise = high != (across == Axis.Y);
            return counterclockwise ? turn : List.of(turn.get(3), turn.get(2), turn.get(1), turn.get(0));
        }

        private double[] place(double u, double v) {
            return switch (across) {
                case X -> new double[] {at, u, v};
                case Y -> new double[] {u, at, v};
                case Z -> new double[] {u, v, at};
            };
        }
    }

    private final PartCells cells;
    private final List<Face> faces = new ArrayList<>();

    private PartSurface(PartCells cells) {
        this.cells = cells;
    }

    /** The rectangles of a part's surface. */
    public static List<Face> of(Part part) {
        return of(PartCells.of(part));
    }

    /** The rectangles of the surface of cells. */
    public static List<Face> of(PartCells cells) {
        PartSurface surface = new PartSurface(cells);
        for (Axis across : Axis.values()) {
            for (int i = 0; i < surface.cells.count(across.u()); i++) {
                for (int j = 0; j < surface.cells.count(across.v()); j++) {
                    surface.stack(across, i, j);
                }
            }
        }
        return List.copyOf(surface.faces);
    }

    /** The faces across an axis along one row of cells. */
    private void stack(Axis across, int i, int j) {
        boolean before = false;
        for (int k = 0; k <= cells.count(across); k++) {
            boolean there = cells.there(across, k, i, j);
            if (there != before) {
                faces.add(new Face(
                        across,
                        before,
                        cells.plane(across, k),
                        cells.plane(across.u(), i),
                        cells.plane(across.v(), j),
                        cells.plane(across.u(), i + 1),
                        cells.plane(across.v(), j + 1)));
            }
            before = there;
        }
    }
}
