package hushmaze.measure;

import hushmaze.quantity.Band;

/**
 * A Butterworth band-pass of sixth order for one band: three {@link Biquad}s by the bilinear transform with pre-warped
 * edges, narrowed so that broad noise has the level an ideal filter with the band's edges would give.
 *
 * <p>Formula: the analogue low-pass of third order has its poles p_k at -1 and -1/2 ± j √3/2; the band-pass between the angular
 * frequencies Ω1 and Ω2 has s² - p_k B s + Ω0² = 0 with B = (Ω2 - Ω1) / 1.0472 and Ω0² = Ω1 Ω2, where Ω = tan(π f / f_s) and
 * s = (1 - z⁻¹) / (1 + z⁻¹). The gain is one at Ω0. A filter of
 * third order that is 3 dB down at its edges lets through as much white noise as an ideal one (π/6) / sin(π/6) = 1.0472 as
 * wide, 0.2 dB too much.
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

    private final Biquad[] sections;

    BandPass(Band band, double rate) {
        double low = Math.tan(Math.PI * band.lowerHz() / rate);
        double high = Math.tan(Math.PI * band.upperHz() / rate);
        double width = (high - low) / NOISE_WIDTH;
        double middle = low * high;
        sections = new Biquad[3];
        // the real pole -1: s² + B s + Ω0²
        sections[0] = section(width, middle, width);
        // the pair of poles gives a quartic, parted into two quadratics with real coefficients
        double re = -0.5 * width;
        double im = Math.sqrt(0.75) * width;
        // s = q/2 ± sqrt(q²/4 - Ω0²) with q = p B
        double dre = (re * re - im * im) / 4 - middle;
        double dim = re * im / 2;
        double modulus = Math.hypot(dre, dim);
        double rootRe = Math.sqrt(Math.max(0, (modulus + dre) / 2));
        double rootIm = Math.copySign(Math.sqrt(Math.max(0, (modulus - dre) / 2)), dim);
        sections[1] = pole(re / 2 + rootRe, im / 2 + rootIm, width);
        sections[2] = pole(re / 2 - rootRe, im / 2 - rootIm, width);
        double gain = 1 / Math.sqrt(power(2 * Math.atan(Math.sqrt(middle))));
        sections[0] = section(width, middle, width * gain);
    }

    private static Biquad pole(double re, double im, double width) {
        return section(-2 * re, re * re + im * im, width);
    }

    /** gain s / (s² + damping s + square), with s by the bilinear transform. */
    private static Biquad section(double damping, double square, double gain) {
        double a0 = 1 + damping + square;
        return new Biquad(gain / a0, 0, -gain / a0, 2 * (square - 1) / a0, (1 - damping + square) / a0);
    }

    /** Filters the first samples of an array in place. */
    void run(double[] samples, int count) {
        Biquad.run(sections[0], sections[1], sections[2], samples, count);
    }

    /** Square of the gain at an angular frequency in radians per sample. */
    double power(double omega) {
        double power = 1;
        for (Biquad section : sections) {
            power *= section.power(omega);
        }
        return power;
    }
}
