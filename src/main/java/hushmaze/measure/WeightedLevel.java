package hushmaze.measure;

import hushmaze.quantity.Energy;

/**
 * Level of a weighted signal: mean (Leq), and what is exceeded for a tenth and nine tenths of the time with the time weighting
 * Fast.
 *
 * <p>Fast is the square of the weighted signal through an exponential mean of 0.125 s (IEC 61672-1), looked at every 10 ms or
 * so and counted in steps of 0.1 dB, so that memory does not grow with time.
 */
final class WeightedLevel {
    private static final double FAST_S = 0.125;
    private static final double LOOK_S = 0.01;
    private static final double LOWEST_DB = -300;
    private static final int STEPS_PER_DB = 10;
    private static final int STEPS = 6000;

    /** What one sample leaves of the mean before it, and two, three and four. */
    private final double keep1;

    private final double keep2;
    private final double keep3;
    private final double keep4;
    private final int look;
    private final long[] counts = new long[STEPS];
    /** Mean over what one sample adds to it. */
    private double fast;

    private double sum;
    private double columnSum;
    private long counted;
    private long columnCounted;
    private long looks;
    private int untilLook;

    WeightedLevel(double rate) {
        this.keep1 = Math.exp(-1 / (FAST_S * rate));
        this.keep2 = keep1 * keep1;
        this.keep3 = keep2 * keep1;
        this.keep4 = keep2 * keep2;
        this.look = (int) Math.max(1, Math.round(LOOK_S * rate));
        this.untilLook = look;
    }

    /** Takes the next samples. With {@code count} false they only bring the mean into swing. */
    void run(double[] samples, int from, int n, boolean count) {
        int at = from;
        int end = from + n;
        while (at < end) {
            int part = Math.min(untilLook, end - at);
            double squares = squares(samples, at, part);
            columnSum += count ? squares : 0;
            at += part;
            untilLook -= part;
            if (untilLook == 0) {
                untilLook = look;
                if (count) {
                    put((1 - keep1) * fast);
                }
            }
        }
        columnCounted += count ? n : 0;
    }

    /** Goes on with the mean, four samples at once where there are four, and gives the sum of their squares. */
    private double squares(double[] samples, int from, int n) {
        double mean = fast;
        double total = 0;
        int i = from;
        int end = from + n;
        for (; i + 3 < end; i += 4) {
            double a = samples[i] * samples[i];
            double b = samples[i + 1] * samples[i + 1];
            double c = samples[i + 2] * samples[i + 2];
            double d = samples[i + 3] * samples[i + 3];
            mean = keep4 * mean + (keep3 * a + keep2 * b + (keep1 * c + d));
            total += a + b + (c + d);
        }
        for (; i < end; i++) {
            double a = samples[i] * samples[i];
            mean = keep1 * mean + a;
            total += a;
        }
        fast = mean;
        return total;
    }

    private void put(double meanSquare) {
        double step = (Energy.db(meanSquare) - LOWEST_DB) * STEPS_PER_DB;
        counts[(int) Math.max(0, Math.min(STEPS - 1, step))]++;
        looks++;
    }

    /**
     * Ends a column of a picture.
     *
     * @return mean square since the column before ended
     */
    double endColumn() {
        double mean = columnSum / Math.max(1, columnCounted);
        sum += columnSum;
        counted += columnCounted;
        columnSum = 0;
        columnCounted = 0;
        return mean;
    }

    /** Level of the mean square, dB re one. */
    double leq() {
        return Energy.db((sum + columnSum) / Math.max(1, counted + columnCounted));
    }

    /** Level with the weighting Fast that is exceeded for a share of the time, dB re one, to 0.05 dB. */
    double exceeded(double shareOfTime) {
        long above = 0;
        for (int i = STEPS - 1; i >= 0; i--) {
            above += counts[i];
            if (above > 0 && above >= shareOfTime * looks) {
                return LOWEST_DB + (i + 0.5) / STEPS_PER_DB;
            }
        }
        return Double.NEGATIVE_INFINITY;
    }
}
