package hushmaze.sound.wave;

import java.util.Arrays;

/**
 * The functions along one axis: a hat for every line, inner functions for every interval. Functions are numbered hats
 * first, then interval by interval.
 */
final class AxisGrid {
    /** Ascending, m; an axis along which nothing changes has the lines 0 and 1. */
    final double[] line;
    /** Functions of each interval. */
    final IntervalBasis[] basis;

    private final int[] firstInner;
    private final int size;

    AxisGrid(double[] line, IntervalBasis[] basis) {
        this.line = line;
        this.basis = basis;
        firstInner = new int[basis.length];
        int next = basis[0].hats == 0 ? 0 : line.length;
        for (int i = 0; i < basis.length; i++) {
            firstInner[i] = next;
            next += basis[i].inner;
        }
        size = next;
    }

    /** The axis of a flat space along which nothing changes. */
    static AxisGrid constant() {
        return new AxisGrid(new double[] {0, 1}, new IntervalBasis[] {IntervalBasis.CONSTANT});
    }

    boolean isConstant() {
        return basis[0].hats == 0;
    }

    int intervals() {
        return basis.length;
    }

    /** Number of functions. */
    int size() {
        return size;
    }

    double width(int interval) {
        return line[interval + 1] - line[interval];
    }

    /** Number of a function, by its place among those of an interval. */
    int function(int interval, int local) {
        int hats = basis[interval].hats;
        return local < hats ? interval + local : firstInner[interval] + local - hats;
    }

    /** The interval that holds a place, the lower one on a line; -1 outside. */
    int intervalAt(double place) {
        if (isConstant()) {
            return 0;
        }
        int found = Arrays.binarySearch(line, place);
        int interval = found >= 0 ? Math.max(0, found - 1) : -found - 2;
        return interval < 0 || interval >= intervals() ? -1 : interval;
    }
}
