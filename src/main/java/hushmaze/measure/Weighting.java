package hushmaze.measure;

/**
 * Frequency weightings A, C and Z of a sound level meter as digital filters.
 *
 * <p>Formula: C has two poles each at f1 and f4 and two zeros at 0 Hz; A one more pole each at f2 and f3 and two more zeros at
 * 0 Hz; both are 0 dB at 1 kHz; Z is 0 dB everywhere. f1 20.60, f2 107.7, f3 737.9, f4 12194 Hz.
 *
 * <p>Source: IEC 61672-1, annex on the weightings (poles from memory, the same as of the weighting of bands).
 *
 * <p>Low poles by the bilinear transform with the pole pre-warped. The pair at f4 would fall off too fast near half the
 * sampling rate; its sections are chosen so that the gain is exactly the analogue one at 0 Hz, a sixth and 0.4 of the sampling
 * rate. Tested against the table of the standard with the limits of class 1 at 44.1, 48 and 96 kHz.
 */
public enum Weighting {
    /** As the ear hears quiet sound. */
    A,
    /** Nearly flat. */
    C,
    /** Not weighted. */
    Z;

    private static final double F1 = 20.598997;
    private static final double F2 = 107.65265;
    private static final double F3 = 737.86223;
    private static final double F4 = 12194.217;
    private static final double REFERENCE_HZ = 1000;

    /** The filter's sections at a sampling rate, Hz; those of A are those of C and one more. Each is 0 dB at 1 kHz. */
    Biquad[] sections(double rate) {
        double omega = 2 * Math.PI * REFERENCE_HZ / rate;
        double[] high = lowPass(rate);
        Biquad lowest = biquad(multiply(highPass(F1, rate), highPass(F1, rate))).unityAt(omega);
        Biquad highest = biquad(multiply(high, high)).unityAt(omega);
        return switch (this) {
            case Z -> new Biquad[0];
            case C -> new Biquad[] {lowest, highest};
            case A -> {
                double[] middle = multiply(highPass(F2, rate), highPass(F3, rate));
                yield new Biquad[] {lowest, highest, biquad(middle).unityAt(omega)};
            }
        };
    }

    private static Biquad biquad(double[] c) {
        return new Biquad(c[0], c[1], c[2], c[3], c[4]);
    }

    /** First order high-pass {b0, b1, a1}: s / (s + Ω), Ω = tan(π f / f_s). */
    private static double[] highPass(double pole, double rate) {
        double w = Math.tan(Math.PI * pole / rate);
        return new double[] {1 / (1 + w), -1 / (1 + w), (w - 1) / (w + 1)};
    }

    /**
     * First order low-pass {b0, b1, a1} with the power gain T(f) = 1 / (1 + (f/f4)²) at 0 Hz and two more frequencies:
     * (p + q cos ω) / (1 + r cos ω) with p + q = 1 + r, and p + q cos ω = T (1 + r cos ω) at both.
     */
    private static double[] lowPass(double rate) {
        double f = rate / 6;
        double g = 0.4 * rate;
        double c = Math.cos(2 * Math.PI * f / rate);
        double d = Math.cos(2 * Math.PI * g / rate);
        double t = 1 / (1 + f * f / (F4 * F4));
        double u = 1 / (1 + g * g / (F4 * F4));
        // q (c - 1) + r (1 - T c) = T - 1, twice, p taken out
        double det = (c - 1) * (1 - u * d) - (d - 1) * (1 - t * c);
        double q = ((t - 1) * (1 - u * d) - (u - 1) * (1 - t * c)) / det;
        double r = ((c - 1) * (u - 1) - (d - 1) * (t - 1)) / det;
        double p = 1 + r - q;
        double[] top = factor(p, q);
        double[] bottom = factor(1, r);
        return new double[] {top[0] / bottom[0], top[1] / bottom[0], bottom[1] / bottom[0]};
    }

    /** The polynomial {x, y} of least phase with x² + y² + 2 x y cos ω = p + q cos ω. */
    private static double[] factor(double p, double q) {
        double sum = Math.sqrt(p + q);
        double difference = Math.sqrt(p - q);
        return new double[] {(sum + difference) / 2, (sum - difference) / 2};
    }

    /** Two sections of first order {b0, b1, a1} as one of second {b0, b1, b2, a1, a2}. */
    private static double[] multiply(double[] x, double[] y) {
        return new double[] {x[0] * y[0], x[0] * y[1] + x[1] * y[0], x[1] * y[1], x[2] + y[2], x[2] * y[2]};
    }
}
