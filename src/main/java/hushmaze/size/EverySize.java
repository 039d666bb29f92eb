package hushmaze.size;

import java.util.AbstractList;
import java.util.List;

/**
 * All sizes that are whole steps, from the most down; or every so many steps a width and a height, and the least of them.
 *
 * @param apart steps from one width or height to the next; lengths are always all there are
 */
record EverySize(Steps steps, int apart) implements Ladder {
    private static final double SLACK = 1e-9;

    @Override
    public List<Double> widths(double least, double fill) {
        return down(fill, least, apart);
    }

    @Override
    public List<Double> chamberWidths(double least, double fill) {
        return down(fill, least, apart);
    }

    @Override
    public List<Double> heights(double least, double most, double flowing) {
        return down(most, least, apart);
    }

    @Override
    public List<Double> lengths(double least, double longest) {
        return down(longest, least, 1);
    }

    private List<Double> down(double most, double least, int stride) {
        int between = most <= 0 ? -1 : (int) Math.floor((most - least) / steps.size() + SLACK);
        return new Run(steps, most, Math.max(-1, between), stride);
    }

    @Override
    public int mostWidths() {
        return 0;
    }

    @Override
    public int mostChamberWidths() {
        return 0;
    }

    @Override
    public int mostLengths() {
        return 0;
    }

    /** Worked out when asked for: there may be millions. */
    private static final class Run extends AbstractList<Double> {
        private final Steps steps;
        private final double most;
        private final int between;
        private final int stride;

        /** @param between steps from the least to the most; -1 if there is none */
        Run(Steps steps, double most, int between, int stride) {
            this.steps = steps;
            this.most = most;
            this.between = between;
            this.stride = stride;
        }

        @Override
        public Double get(int index) {
            if (index < 0 || index >= size()) {
                throw new IndexOutOfBoundsException(index);
            }
            return steps.nearest(most - Math.min(between, index * stride) * steps.size());
        }

        @Override
        public int size() {
            return between < 0 ? 0 : 1 + (between + stride - 1) / stride;
        }
    }
}
