package hushmaze.sound.wave;

import java.util.Arrays;

/**
 * Numbers of the functions along one axis: a hat for every line, inner functions for every interval, as many as the cell of
 * highest degree in it has. Functions are numbered hats first, then interval by interval.
 */
final class AxisGrid {
    /** Ascending, m; an axis along which nothing changes has the lines 0 and 1. */
    final double[] line;

    private final int hats;
    private final int[] firstInner;
    private final int size;

    /**
     * @param line ascending, m
     * @param constant whether nothing changes along the axis
     * @param most highest degree of a cell in each interval
     */
    AxisGrid(double[] line, boolean constant, int[] most) {
        this.line = line;
        hats = constant ? 0 : 2;
        firstInner = new int[most.length];
        int next = constant ? 0 : line.length;
        for (int i = 0; i < most.length; i++) {
            firstInner[i] = next;
            next += constant ? 1 : most[i] - 1;
        }
        size = next;
    }

    boolean isConstant() {
        return hats == 0;
    }

    /** Functions of a degree on an interval. */
    IntervalBasis basis(int degree) {
        return isConstant() ? IntervalBasis.CONSTANT : IntervalBasis.ofDegree(degree);
    }

    int intervals() {
        return firstInner.length;
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
