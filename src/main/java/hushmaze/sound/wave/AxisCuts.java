package hushmaze.sound.wave;

import java.util.Arrays;

/**
 * How an axis is cut for one frequency: in pieces that are not long to the wave, each with the degree that its length asks
 * for, and on request with small intervals next to re-entrant edges.
 *
 * <p>Degree for x radians: START + RISE x + ROOT √x, by trial on turns and on lined mazes of three and four passes: errors
 * fall evenly over frequency. A higher degree next to re-entrant edges does as much as small intervals there, at a fifth of
 * the cost.
 */
final class AxisCuts {
    /** Longest interval, in radians of the shortest wave. */
    private static final double LONGEST = 9;

    private static final double DEGREE_START = 2;
    private static final double DEGREE_RISE = 0.4;
    private static final double DEGREE_ROOT = 1.5;
    /** Added to ROOT for an interval that ends at a re-entrant edge. */
    private static final double SHARP_ROOT = 1.5;

    /** Ratio of neighbouring small intervals. */
    private static final double RATIO = 0.2;
    /** Share of an interval that the layers next to an edge take. */
    private static final double SHARE = 0.3;

    final AxisGrid grid;
    /** Interval between the block grid's lines in which each new interval lies. */
    final int[] blockInterval;
    /** New number of each of the block grid's lines. */
    final int[] lineOf;

    private double[] line = new double[16];
    private int count;

    AxisCuts(BlockGrid blocks, SharpEdges edges, int axis, double[] wavenumber, WaveAccuracy accuracy) {
        double[] old = blocks.lines[axis];
        lineOf = new int[old.length];
        if (blocks.flat && axis == 2) {
            grid = AxisGrid.constant();
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
        line = Arrays.copyOf(line, count);
        blockInterval = new int[count - 1];
        IntervalBasis[] basis = new IntervalBasis[count - 1];
        for (int i = 0, block = 0; i + 1 < count; i++) {
            while (lineOf[block + 1] <= i) {
                block++;
            }
            blockInterval[i] = block;
            boolean sharp = i == lineOf[block] && edges.on(axis, block)
                    || i + 1 == lineOf[block + 1] && edges.on(axis, block + 1);
            double radians = (line[i + 1] - line[i]) * wavenumber[block];
            basis[i] = IntervalBasis.ofDegree(degree(radians, sharp, accuracy));
        }
        grid = new AxisGrid(line, basis);
    }

    private static int degree(double radians, boolean sharp, WaveAccuracy accuracy) {
        double root = DEGREE_ROOT + (sharp ? SHARP_ROOT : 0);
        double asked = DEGREE_START + DEGREE_RISE * radians + root * Math.sqrt(radians);
        int degree = (int) Math.ceil(asked) + accuracy.extraDegree();
        return Math.max(1, Math.min(IntervalBasis.MAX_DEGREE, degree));
    }

    private void cut(double low, double high, boolean sharpLow, boolean sharpHigh, int layers, double wavenumber) {
        double size = high - low;
        double reach = layers == 0 ? 0 : SHARE * size;
        if (sharpLow) {
            for (int i = layers - 1; i >= 0; i--) {
                add(low + reach * Math.pow(RATIO, i));
            }
        }
        double from = line[count - 1];
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
        if (count == line.length) {
            line = Arrays.copyOf(line, 2 * count);
        }
        line[count++] = place;
    }
}
