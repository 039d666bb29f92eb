package hushmaze.sound.estimate;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Loss of a plane wave at the open mouth of a duct.
 *
 * <p>Formula: ERL = 10 lg[1 + (a1 c / (π f D))^a2].
 *
 * <p>Symbols: ERL in dB; D = sqrt(4 A / π) equivalent diameter in m, A clear area in m²; c speed of sound in m/s; f in Hz;
 * a1 = 0.7 flush in a large surface, 1.0 free; a2 = 2.
 *
 * <p>Source: ASHRAE research project RP-1314; formula and constants from memory. The flush form agrees within 0.2 dB with the
 * exact plane-wave reflection of a piston in a baffle.
 *
 * <p>Range: plane waves in a long straight duct that ends in the open; above the duct's cut-on the loss has all but gone.
 * {@link Mouths} gives a notice when the straight is short.
 *
 * <p>Accuracy: 1 dB for a straight duct; bends and grilles near the mouth change it by up to 10 dB (as read in the abstract of
 * a paper on end reflection in ventilation ducts).
 *
 * <p>Differs from the source: used for rectangular mouths with the diameter of equal area. In an insertion loss it counts
 * as a difference: mouths of the box less those of the bare opening.
 */
public final class EndReflection {
    private static final double A2 = 2;

    /** What surrounds the mouth. */
    public enum Setting {
        /** In the plane of a surface that is large to the wavelength. */
        FLUSH(0.7),
        /** Standing free in the room. */
        FREE(1.0);

        private final double a1;

        Setting(double a1) {
            this.a1 = a1;
        }
    }

    private EndReflection() {}

    /**
     * Loss at a mouth, dB.
     *
     * @param frequency Hz
     * @param area clear, m²
     * @param soundSpeed m/s
     * @param setting what is around it
     */
    public static double loss(double frequency, double area, double soundSpeed, Setting setting) {
        InvalidValue.within("area", area, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        return 10 * Math.log10(1 + Math.pow(setting.a1 * soundSpeed / (Math.PI * frequency * diameter(area)), A2));
    }

    /** Diameter of the circle of an area in m², m. */
    static double diameter(double area) {
        return Math.sqrt(4 * area / Math.PI);
    }
}
