package hushmaze.measure;

import hushmaze.quantity.Band;

/**
 * A Butterworth band-pass of sixth order for one band: three sections of second order by the bilinear transform with pre-warped
 * edges, narrowed so that broad noise has the level an ideal filter with the band's edges would give.
 *
 * <p>Formula: the analogue low-pass of third order has its poles p_k at -1 and -1/2 ± j √3/2; the band-pass between the angular
 * frequencies Ω1 and Ω2 has s² - p_k B s + Ω0² = 0 with B = (Ω2 - Ω1) / 1.0472 and Ω0² = Ω1 Ω2, where Ω = tan(π f / f_s) and
 * s = (1 - z⁻¹) / (1 + z⁻¹). The gain is one at Ω0. A filter of
 * third order that is 3 dB down at its edges lets through as much white noise as an ideal one (π/6) / sin(π/6) = 1.0472 as
 * wide, 0.2 dB too much.
 *
 * <p>All bands have the same zeros, (1 - z⁻²)³. {@link Zeros} sees to them once for all bands at a rate, the gain goes to the
 * square of the output, and each section here has its two poles left: y_n = x_n - a1 y_(n-1) - a2 y_(n-2).
 *
 * <p>Source: textbook design of digital filters, from memory; the result is tested against the limits of IEC 61260-1 class 1.
 *
 * <p>Range: upper edge up to {@link #HIGHEST} of the sampling rate.
 */
final class BandPass {
    /** Highest upper edge of a band over the sampling rate. */
    static final double HIGHEST = 0.4;

    /** Width of the noise that passes over the width between the points 3 dB down. */
    private static final double NOISE_WIDTH = Math.PI / 6 / Math.sin(Math.PI / 6);

    /** Outputs smaller than this are none: numbers near the smallest there are cost time. */
    private static final double SILENCE = 1e-150;

    /** Two poles, with the last two outputs. */
    private static final class Poles {
        private final double a1;
        private final double a2;
        private double last;
        private double before;

        /** Of 1 / (s² + damping s + square), with s by the bilinear transform. */
        Poles(double damping, double square) {
            double a0 = 1 + damping + square;
            a1 = 2 * (square - 1) / a0;
            a2 = (1 - damping + square) / a0;
        }

        void keep(double newest, double second) {
            last = audible(newest);
            before = audible(second);
        }

        private static double audible(double output) {
            return Math.abs(output) < SILENCE ? 0 : output;
        }

        double power(double omega) {
            double re = 1 + a1 * Math.cos(omega) + a2 * Math.cos(2 * omega);
            double im = a1 * Math.sin(omega) + a2 * Math.sin(2 * omega);
            return 1 / (re * re + im * im);
        }
    }

    private final Poles first;
    private final Poles second;
    private final Poles third;
    /** Square of the gain. */
    private final double gain;

    BandPass(Band band, double rate) {
        double low = Math.tan(Math.PI * band.lowerHz() / rate);
        double high = Math.tan(Math.PI * band.upperHz() / rate);
        double width = (high - low) / NOISE_WIDTH;
        double middle = low * high;
        // the real pole -1: s² + B s + Ω0²
        first = new Poles(width, middle);
        // the pair of poles gives a quartic, parted into two quadratics with real coefficients
        double re = -0.5 * width;
        double im = Math.sqrt(0.75) * width;
        // s = q/2 ± sqrt(q²/4 - Ω0²) with q = p B
        double dre = (re * re - im * im) / 4 - middle;
        double dim = re * im / 2;
        double modulus = Math.hypot(dre, dim);
        double rootRe = Math.sqrt(Math.max(0, (modulus + dre) / 2));
        double rootIm = Math.copySign(Math.sqrt(Math.max(0, (modulus - dre) / 2)), dim);
        second = pole(re / 2 + rootRe, im / 2 + rootIm);
        third = pole(re / 2 - rootRe, im / 2 - rootIm);
        gain = 1 / plainPower(2 * Math.atan(Math.sqrt(middle)));
    }

    private static Poles pole(double re, double im) {
        return new Poles(-2 * re, re * re + im * im);
    }

    /**
     * Filters samples that went through {@link Zeros}. The three sections go along together, because each sample of one section has to
     * wait for the one before it, and the others can be worked out meanwhile.
     *
     * @return sum of the squares of the output
     */
    double squares(double[] samples, int count) {
        double f1 = first.a1;
        double f2 = first.a2;
        double g1 = second.a1;
        double g2 = second.a2;
        double h1 = third.a1;
        double h2 = third.a2;
        double y1 = first.last;
        double y2 = first.before;
        double z1 = second.last;
        double z2 = second.before;
        double w1 = third.last;
        double w2 = third.before;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double y = samples[i] - f2 * y2 - f1 * y1;
            y2 = y1;
            y1 = y;
            double z = y - g2 * z2 - g1 * z1;
            z2 = z1;
            z1 = z;
            double w = z - h2 * w2 - h1 * w1;
            w2 = w1;
            w1 = w;
            sum += w * w;
        }
        first.keep(y1, y2);
        second.keep(z1, z2);
        third.keep(w1, w2);
        return gain * sum;
    }

    /** Square of the gain at an angular frequency in radians per sample, with the zeros. */
    double power(double omega) {
        return gain * plainPower(omega);
    }

    private double plainPower(double omega) {
        return Zeros.power(omega) * first.power(omega) * second.power(omega) * third.power(omega);
    }
}
