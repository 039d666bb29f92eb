package hushmaze.sound.criterion;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;

/**
 * Frequency weighting A.
 *
 * <p>Formula: R = f4² f⁴ / [(f² + f1²) (f² + f4²) sqrt(f² + f2²) sqrt(f² + f3²)], A = 20 lg R + 2.000 dB.
 *
 * <p>Symbols: f frequency in Hz; f1 to f4 the pole frequencies in Hz; A in dB.
 *
 * <p>Source: IEC 61672-1; form of the formula as read in a published table of the weighting, exact poles and constant
 * from memory.
 *
 * <p>Range: any frequency above zero; the program uses the exact band centres 50 Hz to 10 kHz.
 *
 * <p>Accuracy: 0.1 dB against the standard's table at nominal frequencies.
 *
 * <p>Differs from the source: the weight at a band's centre is used for the whole band.
 */
public final class AWeighting {
    private static final double F1 = 20.598997;
    private static final double F2 = 107.65265;
    private static final double F3 = 737.86223;
    private static final double F4 = 12194.217;
    private static final double AT_1000_HZ = 2.000;

    private static final Spectrum OCTAVES = Spectrum.ofFrequency(BandSet.OCTAVE, AWeighting::at);
    private static final Spectrum THIRDS = Spectrum.ofFrequency(BandSet.THIRD_OCTAVE, AWeighting::at);

    private AWeighting() {}

    /** Weight at a frequency in Hz, dB. */
    public static double at(double frequency) {
        double f2 = frequency * frequency;
        double r = F4
                * F4
                * f2
                * f2
                / ((f2 + F1 * F1) * (f2 + F4 * F4) * Math.sqrt(f2 + F2 * F2) * Math.sqrt(f2 + F3 * F3));
        return 20 * Math.log10(r) + AT_1000_HZ;
    }

    /** Weights at the exact centres of a set of bands, dB. */
    public static Spectrum weights(BandSet bands) {
        return bands == BandSet.OCTAVE ? OCTAVES : THIRDS;
    }

    /** A-weighted total of octave or third-octave levels, dB. */
    public static double total(Spectrum levels) {
        return levels.plus(weights(levels.bands())).total();
    }
}
