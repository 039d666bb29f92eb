package hushmaze.sound.estimate;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Transmission loss of an expansion chamber with lossy walls, plane waves.
 *
 * <p>Formula: TL = 10 lg{[P cosh a + M sinh a]² cos² kl + [P sinh a + M cosh a]² sin² kl}, a = σl/2, M = (m + 1/m)/2, m =
 * S / sqrt(S1 S2), P = [sqrt(S1/S2) + sqrt(S2/S1)]/2. With equal ducts P = 1; without loss it is then 10 lg[1 + (m - 1/m)²/4
 * · sin² kl].
 *
 * <p>Symbols: TL in dB; S area of the chamber, S1 and S2 areas of the two ducts in m²; k = 2πf/c in 1/m; l length in m; σl
 * attenuation of energy along the chamber in nepers, that is its loss in dB over 4.343.
 *
 * <p>Source: with equal ducts, the chamber below cut-off in the two-region method of <i>HVAC Systems Duct Design</i>, chapter
 * 11 (equation from memory). The lossless form is the textbook one (<i>Noise and Vibration Control Engineering</i>, 1992,
 * figure 10.12).
 *
 * <p>Range: plane waves in ducts and chamber; {@link TwoRegionPlenum} keeps to it.
 *
 * <p>Accuracy: exact for the 1-D model; real chambers shift the dips.
 *
 * <p>Differs from the source: unequal ducts, from the same transfer matrix; swapping them changes nothing.
 */
final class LossyExpansionChamber {
    /** dB per neper of energy. */
    private static final double DECIBEL_PER_NEPER = 10 / Math.log(10);

    private final double steps;
    private final double expansion;
    private final double length;

    /**
     * A chamber between two ducts.
     *
     * @param area of the chamber, m²
     * @param oneDuct area, m²
     * @param otherDuct area, m²
     * @param length of the chamber, m
     */
    LossyExpansionChamber(double area, double oneDuct, double otherDuct, double length) {
        InvalidValue.within("area", area, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        InvalidValue.within("oneDuct", oneDuct, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        InvalidValue.within("otherDuct", otherDuct, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        InvalidValue.within("length", length, 0, Double.POSITIVE_INFINITY, Unit.MILLIMETRE);
        this.length = length;
        this.steps = halfSum(Math.sqrt(oneDuct / otherDuct));
        this.expansion = halfSum(area / Math.sqrt(oneDuct * otherDuct));
    }

    private static double halfSum(double ratio) {
        return (ratio + 1 / ratio) / 2;
    }

    /**
     * Transmission loss, dB.
     *
     * @param frequency Hz
     * @param lossAlong what the lining takes along the chamber, dB
     * @param soundSpeed m/s
     */
    double transmissionLoss(double frequency, double lossAlong, double soundSpeed) {
        double a = lossAlong / DECIBEL_PER_NEPER / 2;
        double kl = 2 * Math.PI * frequency / soundSpeed * length;
        double even = (steps * Math.cosh(a) + expansion * Math.sinh(a)) * Math.cos(kl);
        double odd = (steps * Math.sinh(a) + expansion * Math.cosh(a)) * Math.sin(kl);
        return 10 * Math.log10(even * even + odd * odd);
    }
}
