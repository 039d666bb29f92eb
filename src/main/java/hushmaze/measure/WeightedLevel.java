package hushmaze.measure;

import hushmaze.quantity.Energy;

/**
 * Weighted level of a signal: mean (Leq), and what is exceeded for a tenth and nine tenths of the time with the time weighting
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

    private final Biquad[] sections;
    private final double share;
    private final int look;
    private final long[] counts = new long[STEPS];
    private double fast;
    private double sum;
    private long counted;
    private long looks;
    private int untilLook;

    WeightedLevel(Weighting weighting, double rate) {
        this.sections = weighting.sections(rate);
        this.share = 1 - Math.exp(-1 / (FAST_S * rate));
        this.look = (int) Math.max(1, Math.round(LOOK_S * rate));
        this.untilLook = look;
    }

    /** Takes the next samples, which it changes. With {@code count} false they only bring the filters into swing. */
    void run(double[] samples, int n, boolean count) {
        for (Biquad section : sections) {
            section.run(samples, n);
        }
        double mean = fast;
        double total = 0;
        for (int i = 0; i < n; i++) {
            double square = samples[i] * samples[i];
            mean += share * (square - mean);
            total += square;
            if (--untilLook == 0) {
                untilLook = look;
                if (count) {
                    put(mean);
                }
            }
        }
        fast = mean;
        if (count) {
            sum += total;
            counted += n;
        }
    }

    private void put(double meanSquare) {
        double step = (Energy.db(meanSquare) - LOWEST_DB) * STEPS_PER_DB;
        counts[(int) Math.max(0, Math.min(STEPS - 1, step))]++;
        looks++;
    }

    /** Level of the mean square, dB re one. */
    double leq() {
        return Energy.db(sum / Math.max(1, counted));
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
