package hushmaze.drawing.axon;

import hushmaze.solid.Axis;
import hushmaze.solid.PartCells;
import java.util.ArrayList;
import java.util.List;

/** Lines where faces of a body of cells meet at an angle, each in one piece as far as it goes. */
final class CellEdges {
    private final PartCells cells;
    private final List<Edge> edges = new ArrayList<>();

    private CellEdges(PartCells cells) {
        this.cells = cells;
    }

    static List<Edge> of(PartCells cells) {
        CellEdges all = new CellEdges(cells);
        for (Axis along : Axis.values()) {
            for (int p = 0; p <= cells.count(along.u()); p++) {
                for (int q = 0; q <= cells.count(along.v()); q++) {
                    all.add(along, p, q);
                }
            }
        }
        return all.edges;
    }

    private void add(Axis along, int p, int q) {
        int start = -1;
        for (int t = 0; t <= cells.count(along); t++) {
            boolean bends = t < cells.count(along) && bends(along, t, p, q);
            if (bends && start < 0) {
                start = t;
            }
            if (!bends && start >= 0) {
                double from = cells.plane(along, start);
                double to = cells.plane(along, t);
                edges.add(new Edge(along, from, to, cells.plane(along.u(), p), cells.plane(along.v(), q)));
                start = -1;
            }
        }
    }

    /** Of the four cells round a line: all or none there is no surface, two side by side a flat one. */
    private boolean bends(Axis along, int t, int p, int q) {
        boolean ll = cells.there(along, t, p - 1, q - 1);
        boolean lh = cells.there(along, t, p - 1, q);
        boolean hl = cells.there(along, t, p, q - 1);
        boolean hh = cells.there(along, t, p, q);
        boolean flat = ll == lh && hl == hh || ll == hl && lh == hh;
        return !flat;
    }
}
