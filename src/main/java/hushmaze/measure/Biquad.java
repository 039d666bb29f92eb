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

    /** Filters the first samples of an array in place. */
    void run(double[] samples, int count) {
        double t1 = Math.abs(s1) < SILENCE ? 0 : s1;
        double t2 = Math.abs(s2) < SILENCE ? 0 : s2;
        for (int i = 0; i < count; i++) {
            double x = samples[i];
            double y = b0 * x + t1;
            t1 = b1 * x - a1 * y + t2;
            t2 = b2 * x - a2 * y;
            samples[i] = y;
        }
        s1 = t1;
        s2 = t2;
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
