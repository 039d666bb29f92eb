package hushmaze.build;

import hushmaze.build.CutNode.Along;
import hushmaze.build.CutNode.Cut;
import hushmaze.build.CutNode.Leaf;
import java.util.ArrayList;
import java.util.List;

/**
 * The cuts of one sheet in the order a person makes them: first all parallel cuts of a piece, then what came off, one piece
 * after the other.
 *
 * @param steps numbered from 1
 */
public record CutSequence(List<Step> steps) {
    /** What a piece is. */
    public enum Kind {
        /** The trimmed sheet. */
        SHEET,
        /** To be cut further. */
        PART_SHEET,
        /** Finished. */
        PANEL,
        /** Left over. */
        OFFCUT,
        /** Narrower than the blade: nothing is left. */
        DUST
    }

    /**
     * A piece on the bench.
     *
     * @param kind what it is
     * @param name mark of a panel; "P1", "P2", ... of a piece to be cut further, in the order they come off; else empty
     * @param length along the sheet's length, m
     * @param width along the sheet's width, m
     */
    public record Piece(Kind kind, String name, double length, double width) {}

    /**
     * One cut.
     *
     * @param number counted from 1
     * @param along direction the saw runs in: along the length is a rip, along the width a crosscut
     * @param fence from fence to blade: size of the first piece across the cut, m
     * @param from what is cut
     * @param first piece between fence and blade
     * @param second piece beyond the blade
     * @param narrow whether the piece between fence and blade is narrower than can be held there: use a push stick, or set the
     *     fence for the wide side. What falls off beyond the blade may be narrow
     * @param left whether the size of what falls off is a panel's: it depends on the sheet and the blade too
     * @param guided length of the edge that runs along the fence, m
     */
    public record Step(
            int number,
            Along along,
            double fence,
            Piece from,
            Piece first,
            Piece second,
            boolean narrow,
            boolean left,
            double guided) {
        /** Shortest edge that a fence guides safely (common practice, no source), m. */
        static final double LEAST_GUIDED = 0.3;
        /** So many times the edge along the fence a piece may be wide across it (common practice, no source). */
        static final double MOST_ACROSS = 2;

        /** Size of what falls off, across the cut, m. */
        public double beyond() {
            return along == Along.LENGTH ? second.width() : second.length();
        }

        /** Size of the piece that is cut, across the cut, m. */
        public double across() {
            return along == Along.LENGTH ? from.width() : from.length();
        }

        /**
         * Whether the edge along the fence is too short to keep the piece from turning, by itself, for what lies between fence and blade, or
         * for the whole piece: a cut for a saw guided along a straight edge, or for a mitre fence.
         */
        public boolean unsteady() {
            return guided < LEAST_GUIDED - CutReplay.SLACK
                    || guided < fence - CutReplay.SLACK
                    || MOST_ACROSS * guided < across() - CutReplay.SLACK;
        }
    }

    public CutSequence {
        steps = List.copyOf(steps);
    }

    /** The cuts of a sheet; none if one panel fills it. */
    public static CutSequence of(SheetPlan plan) {
        double length = plan.sheet().length() - 2 * plan.trim();
        double width = plan.sheet().width() - 2 * plan.trim();
        Writer writer = new Writer(plan.kerf(), plan.leastStrip());
        writer.row(plan.cuts(), new Piece(Kind.SHEET, "", length, width));
        return new CutSequence(writer.steps);
    }

    /** How often the fence must be set: every new number and every change of direction from the cut before counts. */
    public int fenceSettings() {
        int count = 0;
        Step last = null;
        for (Step step : steps) {
            if (last == null
                    || last.along() != step.along()
                    || Math.abs(last.fence() - step.fence()) > CutReplay.SLACK) {
                count++;
            }
            last = step;
        }
        return count;
    }

    /** Collects the steps. */
    private static final class Writer {
        private final double kerf;
        private final double leastStrip;
        private final List<Step> steps = new ArrayList<>();
        private int named;

        Writer(double kerf, double leastStrip) {
            this.kerf = kerf;
            this.leastStrip = leastStrip;
        }

        /** Makes all parallel cuts of a piece, then goes on with what came off. */
        void row(CutNode start, Piece whole) {
            List<CutNode> nodes = new ArrayList<>();
            List<Piece> pieces = new ArrayList<>();
            CutNode node = start;
            Piece piece = whole;
            while (node instanceof Cut cut && start instanceof Cut row && cut.along() == row.along()) {
                boolean rip = cut.along() == Along.LENGTH;
                double rest = CutReplay.beyond(rip ? piece.width() : piece.length(), cut.at(), kerf);
                Piece first = piece(cut.first(), rip ? piece.length() : cut.at(), rip ? cut.at() : piece.width());
                Piece second = piece(cut.second(), rip ? piece.length() : rest, rip ? rest : piece.width());
                boolean narrow = cut.at() < leastStrip - CutReplay.SLACK;
                boolean last = !(cut.second() instanceof Cut next && next.along() == cut.along());
                boolean left = last && exact(cut.second(), cut.along());
                double guided = rip ? piece.length() : piece.width();
                steps.add(
                        new Step(steps.size() + 1, cut.along(), cut.at(), piece, first, second, narrow, left, guided));
                nodes.add(cut.first());
                pieces.add(first);
                node = cut.second();
                piece = second;
            }
            if (!nodes.isEmpty()) {
                nodes.add(node);
                pieces.add(piece);
            }
            for (int i = 0; i < nodes.size(); i++) {
                row(nodes.get(i), pieces.get(i));
            }
        }

        /** Whether a panel has the whole extent of a piece across a cut, so that nothing is cut off there any more. */
        private static boolean exact(CutNode node, Along along) {
            if (node instanceof Cut cut) {
                return exact(cut.second(), along) || cut.along() != along && exact(cut.first(), along);
            }
            return node instanceof Leaf leaf && !leaf.offcut();
        }

        private Piece piece(CutNode node, double length, double width) {
            if (node instanceof Leaf leaf) {
                if (!leaf.offcut()) {
                    return new Piece(Kind.PANEL, leaf.mark(), length, width);
                }
                return new Piece(length > 0 && width > 0 ? Kind.OFFCUT : Kind.DUST, "", length, width);
            }
            named++;
            return new Piece(Kind.PART_SHEET, "P" + named, length, width);
        }
    }
}
