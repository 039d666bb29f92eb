package hushmaze.sound.estimate;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Transmission loss of an expansion chamber with lossy walls, plane waves.
 *
 * <p>Formula: TL = 10 lg{[cosh a + M sinh a]² cos² kl + [sinh a + M cosh a]² sin² kl}, a = σl/2, M = (m + 1/m)/2.
 * Without loss it is 10 lg[1 + (m - 1/m)²/4 · sin² kl].
 *
 * <p>Symbols: TL in dB; m area ratio chamber to duct; k = 2πf/c in 1/m; l length in m; σl attenuation of energy along the
 * chamber in nepers, that is its loss in dB over 4.343.
 *
 * <p>Source: the chamber below cut-off in the two-region method of <i>HVAC Systems Duct Design</i>, chapter 11 (equation
 * from memory). The lossless form is the textbook one (<i>Noise and Vibration Control Engineering</i>, 1992, figure 10.12).
 *
 * <p>Range: plane waves in duct and chamber, equal ducts on both sides.
 *
 * <p>Accuracy: exact for the 1-D model; real chambers shift the dips.
 *
 * <p>Differs from the source: nothing.
 */
final class LossyExpansionChamber {
    /** dB per neper of energy. */
    private static final double DECIBEL_PER_NEPER = 10 / Math.log(10);

    private LossyExpansionChamber() {}

    /**
     * Transmission loss, dB.
     *
     * @param frequency Hz
     * @param areaRatio chamber over duct
     * @param length of the chamber, m
     * @param lossAlong what the lining takes along the chamber, dB
     * @param soundSpeed m/s
     */
    public static double transmissionLoss(
            double frequency, double areaRatio, double length, double lossAlong, double soundSpeed) {
        InvalidValue.within("areaRatio", areaRatio, 1e-9, Double.POSITIVE_INFINITY, Unit.NUMBER);
        InvalidValue.within("length", length, 0, Double.POSITIVE_INFINITY, Unit.MILLIMETRE);
        double a = lossAlong / DECIBEL_PER_NEPER / 2;
        double m = (areaRatio + 1 / areaRatio) / 2;
        double kl = 2 * Math.PI * frequency / soundSpeed * length;
        double even = (Math.cosh(a) + m * Math.sinh(a)) * Math.cos(kl);
        double odd = (Math.sinh(a) + m * Math.cosh(a)) * Math.sin(kl);
        return 10 * Math.log10(even * even + odd * odd);
    }
}
