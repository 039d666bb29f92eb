package hushmaze.measure;

/**
 * Takes every second sample of a signal after a low-pass: a half-band filter of 31 coefficients, a sinc under a Kaiser window
 * with β = 9. Up to an eighth of the sampling rate nothing is lost (0.001 dB), and what would fold down there, from three
 * eighths up, is taken away by more than 90 dB.
 *
 * <p>Source: textbook, from memory; the bank of filters it is part of is tested against IEC 61260-1 class 1.
 */
final class HalfRate {
    private static final int HALF = 15;
    private static final double BETA = 9;
    /** The coefficients at odd distances from the middle, nearest first; those at even distances are zero. */
    private static final double[] SIDE = side();

    private static final double MIDDLE = 0.5;

    /** Samples that were there before: so many have to stand before new ones. */
    static final int PAST = 2 * HALF;

    private final double[] past = new double[PAST];
    private boolean odd;

    /**
     * Filters and halves.
     *
     * @param work with the new samples from {@link #PAST} on; what comes before them is written over
     * @param count of new samples
     * @param out where the output goes
     * @param to where it begins there; at least half as many have room, and one more
     * @return how many samples went there
     */
    int run(double[] work, int count, double[] out, int to) {
        System.arraycopy(past, 0, work, 0, PAST);
        int length = PAST + count;
        int n = to;
        for (int i = HALF + (odd ? 1 : 0); i + HALF < length; i += 2) {
            double sum = MIDDLE * work[i];
            for (int k = 0; k < SIDE.length; k++) {
                int away = 2 * k + 1;
                sum += SIDE[k] * (work[i - away] + work[i + away]);
            }
            out[n++] = sum;
        }
        odd ^= count % 2 != 0;
        System.arraycopy(work, count, past, 0, PAST);
        return n - to;
    }

    /** Square of the gain at an angular frequency in radians per sample of the input. */
    static double power(double omega) {
        double sum = MIDDLE;
        for (int k = 0; k < SIDE.length; k++) {
            sum += 2 * SIDE[k] * Math.cos((2 * k + 1) * omega);
        }
        return sum * sum;
    }

    private static double[] side() {
        double[] side = new double[(HALF + 1) / 2];
        double sum = 0;
        for (int k = 0; k < side.length; k++) {
            double away = 2.0 * k + 1;
            double edge = away / (HALF + 1);
            double window = bessel(BETA * Math.sqrt(1 - edge * edge)) / bessel(BETA);
            side[k] = Math.sin(Math.PI * away / 2) / (Math.PI * away) * window;
            sum += 2 * side[k];
        }
        for (int k = 0; k < side.length; k++) {
            side[k] *= MIDDLE / sum;
        }
        return side;
    }

    /** Modified Bessel function of the first kind and order zero, by its series. */
    private static double bessel(double x) {
        double term = 1;
        double sum = 1;
        for (int k = 1; term > 1e-17 * sum; k++) {
            term *= x / 2 / k * (x / 2 / k);
            sum += term;
        }
        return sum;
    }
}
