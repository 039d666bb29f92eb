package hushmaze.measure;

/** The zeros of all band-passes: H(z) = (1 - z⁻²)³ = 1 - 3 z⁻² + 3 z⁻⁴ - z⁻⁶. It keeps the last six samples between calls. */
final class Zeros {
    /** So many samples of before stand before new ones. */
    private static final int PAST = 6;

    private final double[] past = new double[PAST];

    /**
     * Filters samples.
     *
     * @param samples the six before the new ones are written over
     * @param from where the new ones begin, six at least
     * @param count of new ones
     * @param out where the output goes, from 0 on
     */
    void run(double[] samples, int from, int count, double[] out) {
        int begin = from - PAST;
        System.arraycopy(past, 0, samples, begin, PAST);
        for (int i = 0; i < count; i++) {
            int at = begin + i;
            out[i] = samples[at + 6] - samples[at] + 3 * (samples[at + 2] - samples[at + 4]);
        }
        System.arraycopy(samples, begin + count, past, 0, PAST);
    }

    /** Square of the gain at an angular frequency in radians per sample. */
    static double power(double omega) {
        double one = 2 * Math.sin(omega);
        return Math.pow(one * one, 3);
    }
}
