package hushmaze.build;

import hushmaze.solid.Axis;
import hushmaze.solid.Part;
import hushmaze.solid.PartCells;
import java.util.Optional;

/**
 * A strip of board beside a cut-out or a groove that is narrower than it is high, so that it may break when the board is
 * handled or screwed.
 *
 * <p>Formula: w &lt; h − 1 mm. w is the width of board between two free sides that face each other, of which one at least is a
 * cut-out's or a groove's; h is how far the strip stands free: the board's thickness beside cut-outs, the groove's depth
 * beside a groove. The millimetre is for joints with play and for sizes as printed.
 *
 * <p>Source: common practice, no source. Range: rectangular cut-outs and grooves; holes for screws are not looked at.
 * Accuracy: exact as geometry; how easily a strip breaks depends on the board as well. Differs from the source: none.
 *
 * @param width of the strip, m
 * @param limit how wide it should be, m
 */
public record NarrowStrip(double width, double limit) {
    /** So much less than the limit is no matter, m. */
    static final double SLACK = 0.001 + Plate.SAME;

    /** The strip of a board that is narrowest for its height; none where all are wide enough. */
    public static Optional<NarrowStrip> of(Part board) {
        if (board.cutouts().isEmpty() && board.grooves().isEmpty()) {
            return Optional.empty();
        }
        Search search = new Search(PartCells.of(board), board.normal());
        search.across(board.normal().u());
        search.across(board.normal().v());
        return Optional.ofNullable(search.worst).filter(s -> s.width() < s.limit() - SLACK);
    }

    private double share() {
        return width / limit;
    }

    /** Looks at every row of cells between two free sides. */
    private static final class Search {
        private final PartCells cells;
        private final Axis normal;
        private NarrowStrip worst;

        Search(PartCells cells, Axis normal) {
            this.cells = cells;
            this.normal = normal;
        }

        void across(Axis axis) {
            Axis along = axis == normal.u() ? normal.v() : normal.u();
            for (int row = 0; row < cells.count(along); row++) {
                for (int layer = 0; layer < cells.count(normal); layer++) {
                    runs(axis, row, layer);
                }
            }
        }

        private void runs(Axis axis, int row, int layer) {
            int all = cells.count(axis);
            int from = 0;
            while (from < all) {
                int to = from;
                while (to < all && there(axis, to, row, layer)) {
                    to++;
                }
                if (to > from && (from > 0 || to < all)) {
                    take(axis, from, to, row, layer);
                }
                from = to + 1;
            }
        }

        private void take(Axis axis, int from, int to, int row, int layer) {
            int low = layer;
            while (low > 0 && run(axis, from, to, row, low - 1)) {
                low--;
            }
            int high = layer + 1;
            while (high < cells.count(normal) && run(axis, from, to, row, high)) {
                high++;
            }
            NarrowStrip strip = new NarrowStrip(
                    cells.plane(axis, to) - cells.plane(axis, from),
                    cells.plane(normal, high) - cells.plane(normal, low));
            if (worst == null || strip.share() < worst.share()) {
                worst = strip;
            }
        }

        /** Whether just these cells of a row are there together. */
        private boolean run(Axis axis, int from, int to, int row, int layer) {
            for (int at = from; at < to; at++) {
                if (!there(axis, at, row, layer)) {
                    return false;
                }
            }
            return !there(axis, from - 1, row, layer) && !there(axis, to, row, layer);
        }

        private boolean there(Axis axis, int at, int row, int layer) {
            return axis.u() == normal ? cells.there(axis, at, layer, row) : cells.there(axis, at, row, layer);
        }
    }
}
