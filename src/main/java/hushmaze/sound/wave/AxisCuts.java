package hushmaze.sound.wave;

import java.util.Arrays;

/**
 * How an axis is cut for one frequency: in pieces that are not long to the wave, and on request with small intervals next to
 * re-entrant edges.
 */
final class AxisCuts {
    /** Longest interval, in radians of the shortest wave. */
    private static final double LONGEST = 9;

    /** Ratio of neighbouring small intervals. */
    private static final double RATIO = 0.2;
    /** Share of an interval that the layers next to an edge take. */
    private static final double SHARE = 0.3;

    /** Ascending, m; an axis along which nothing changes has the lines 0 and 1. */
    final double[] line;
    /** Interval between the block grid's lines in which each new interval lies. */
    final int[] blockInterval;
    /** New number of each of the block grid's lines. */
    final int[] lineOf;
    /** Whether nothing changes along the axis. */
    final boolean constant;

    private double[] made = new double[16];
    private int count;

    AxisCuts(BlockGrid blocks, int axis, double[] wavenumber, WaveAccuracy accuracy) {
        double[] old = blocks.lines[axis];
        SharpEdges edges = blocks.edges;
        lineOf = new int[old.length];
        constant = blocks.flat && axis == 2;
        if (constant) {
            line = new double[] {0, 1};
            blockInterval = new int[1];
            lineOf[1] = 1;
            return;
        }
        int layers = Math.max(0, accuracy.extraLayers());
        add(old[0]);
        for (int i = 0; i + 1 < old.length; i++) {
            lineOf[i] = count - 1;
            cut(old[i], old[i + 1], edges.on(axis, i), edges.on(axis, i + 1), layers, wavenumber[i]);
        }
        lineOf[old.length - 1] = count - 1;
        line = Arrays.copyOf(made, count);
        blockInterval = new int[count - 1];
        for (int i = 0, block = 0; i + 1 < count; i++) {
            while (lineOf[block + 1] <= i) {
                block++;
            }
            blockInterval[i] = block;
        }
    }

    int intervals() {
        return blockInterval.length;
    }

    double width(int interval) {
        return line[interval + 1] - line[interval];
    }

    private void cut(double low, double high, boolean sharpLow, boolean sharpHigh, int layers, double wavenumber) {
        double size = high - low;
        double reach = layers == 0 ? 0 : SHARE * size;
        if (sharpLow) {
            for (int i = layers - 1; i >= 0; i--) {
                add(low + reach * Math.pow(RATIO, i));
            }
        }
        double from = made[count - 1];
        double to = sharpHigh ? high - reach : high;
        int pieces = (int) Math.max(1, Math.ceil((to - from) * wavenumber / LONGEST));
        for (int i = 1; i < pieces; i++) {
            add(from + (to - from) * i / pieces);
        }
        if (sharpHigh) {
            for (int i = 0; i < layers; i++) {
                add(high - reach * Math.pow(RATIO, i));
            }
        }
        add(high);
    }

    private void add(double place) {
        if (count == made.length) {
            made = Arrays.copyOf(made, 2 * count);
        }
        made[count++] = place;
    }
}
