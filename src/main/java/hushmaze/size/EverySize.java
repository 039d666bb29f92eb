package hushmaze.size;

import java.util.AbstractList;
import java.util.List;

/** All sizes that are whole steps, from the most down. */
record EverySize(Steps steps) implements Ladder {
    private static final double SLACK = 1e-9;

    @Override
    public List<Double> widths(double least, double fill) {
        return down(fill, least);
    }

    @Override
    public List<Double> chamberWidths(double least, double fill) {
        return down(fill, least);
    }

    @Override
    public List<Double> heights(double least, double most, double flowing) {
        return down(most, least);
    }

    @Override
    public List<Double> lengths(double least, double longest) {
        return down(longest, least);
    }

    private List<Double> down(double most, double least) {
        int count = most <= 0 ? 0 : (int) Math.floor((most - least) / steps.size() + SLACK) + 1;
        return new Run(steps, most, Math.max(0, count));
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
        private final int count;

        Run(Steps steps, double most, int count) {
            this.steps = steps;
            this.most = most;
            this.count = count;
        }

        @Override
        public Double get(int index) {
            if (index < 0 || index >= count) {
                throw new IndexOutOfBoundsException(index);
            }
            return steps.nearest(most - index * steps.size());
        }

        @Override
        public int size() {
            return count;
        }
    }
}
