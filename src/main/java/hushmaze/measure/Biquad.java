package hushmaze.measure;

/**
 * A digital filter of second order, transposed direct form II: H(z) = (b0 + b1 z⁻¹ + b2 z⁻²) / (1 + a1 z⁻¹ + a2 z⁻²).
 *
 * <p>It keeps the two states between calls.
 */
final class Biquad {
    /** States smaller than this are none: numbers near the smallest there are cost time. */
    private static final double SILENCE = 1e-150;

    private final double b0;
    private final double b1;
    private final double b2;
    private final double a1;
    private final double a2;
    private double s1;
    private double s2;

    Biquad(double b0, double b1, double b2, double a1, double a2) {
        this.b0 = b0;
        this.b1 = b1;
        this.b2 = b2;
        this.a1 = a1;
        this.a2 = a2;
    }

    /** The same filter with a gain of one at an angular frequency in radians per sample. */
    Biquad unityAt(double omega) {
        double gain = 1 / Math.sqrt(power(omega));
        return new Biquad(gain * b0, gain * b1, gain * b2, a1, a2);
    }

    /**
     * Filters samples by three sections in a row. All three go along together, because each
     * sample of one section has to wait for the one before it, and the others can be worked out meanwhile.
     *
     * @param from where the samples begin
     * @param n how many they are
     * @param two where the output of the second section goes, from 0 on
     * @param three where that of the third goes
     */
    static void run(Biquad f, Biquad g, Biquad h, double[] samples, int from, int n, double[] two, double[] three) {
        double f1 = audible(f.s1);
        double f2 = audible(f.s2);
        double g1 = audible(g.s1);
        double g2 = audible(g.s2);
        double h1 = audible(h.s1);
        double h2 = audible(h.s2);
        for (int i = 0; i < n; i++) {
            double x = samples[from + i];
            double y = f.b0 * x + f1;
            f1 = f.b1 * x + f2 - f.a1 * y;
            f2 = f.b2 * x - f.a2 * y;
            double z = g.b0 * y + g1;
            g1 = g.b1 * y + g2 - g.a1 * z;
            g2 = g.b2 * y - g.a2 * z;
            double w = h.b0 * z + h1;
            h1 = h.b1 * z + h2 - h.a1 * w;
            h2 = h.b2 * z - h.a2 * w;
            two[i] = z;
            three[i] = w;
        }
        f.s1 = f1;
        f.s2 = f2;
        g.s1 = g1;
        g.s2 = g2;
        h.s1 = h1;
        h.s2 = h2;
    }

    private static double audible(double state) {
        return Math.abs(state) < SILENCE ? 0 : state;
    }

    /** Square of the gain at an angular frequency in radians per sample. */
    double power(double omega) {
        double c1 = Math.cos(omega);
        double c2 = Math.cos(2 * omega);
        double i1 = Math.sin(omega);
        double i2 = Math.sin(2 * omega);
        double top = square(b0 + b1 * c1 + b2 * c2) + square(b1 * i1 + b2 * i2);
        double bottom = square(1 + a1 * c1 + a2 * c2) + square(a1 * i1 + a2 * i2);
        return top / bottom;
    }

    private static double square(double x) {
        return x * x;
    }
}
