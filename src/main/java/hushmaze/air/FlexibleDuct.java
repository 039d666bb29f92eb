package hushmaze.air;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Friction of a round flexible duct.
 *
 * <p>Loss coefficient on the mean velocity: ζ = f (L/D) F with the friction factor of Churchill; F = 1 + 58 r exp(-4.96 D)
 * when it is not pulled straight. L length as laid in m, D inner diameter in m, r share by which it is shorter than when
 * pulled out fully.
 *
 * <p>Source: roughness 0.0003 to 0.003 ft, non-metallic, extended, as read in a table of duct roughness; Churchill as for
 * friction; the factor for compression of Abushakra, Walker and Sherman for ducts of 150, 200 and 250 mm, its constants from
 * memory, its size as read in their abstract: about four times for moderate compression, close to ten for more. Range: D 0.05
 * to 0.6 m, r up to 0.3.
 * Accuracy: the likely roughness is the geometric mean; low and high are the ends of the table with half and one and a half
 * of what compression adds, our judgement. Differs from the source: bends are not in it.
 */
final class FlexibleDuct {
    static final String SOURCE = "table of duct roughness, flexible non-metallic; compression from memory";
    /** Smoothest of the table, 0.0003 ft in m. */
    static final double SMOOTH = 0.0003 * 0.3048;
    /** Roughest of the table, 0.003 ft in m. */
    static final double ROUGH = 0.003 * 0.3048;

    private FlexibleDuct() {}

    /**
     * Loss coefficient on the mean velocity.
     *
     * @param length as laid, m
     * @param diameter inner, m
     * @param compression share by which it is shorter than pulled out, 0 to 0.3
     * @param reynolds on the diameter
     */
    static Zeta zeta(double length, double diameter, double compression, double reynolds) {
        InvalidValue.within("length", length, 0, 100, Unit.METRE);
        InvalidValue.within("diameter", diameter, 0.05, 0.6, Unit.METRE);
        InvalidValue.within("compression", compression, 0, 0.3, Unit.NUMBER);
        InvalidValue.within("reynolds", reynolds, 1, 1e8, Unit.NUMBER);
        double added = 58 * compression * Math.exp(-4.96 * diameter);
        double straight = length / diameter;
        double middle = Math.sqrt(SMOOTH * ROUGH);
        return new Zeta(
                straight * ChurchillFriction.factor(reynolds, SMOOTH / diameter) * (1 + added / 2),
                straight * ChurchillFriction.factor(reynolds, middle / diameter) * (1 + added),
                straight * ChurchillFriction.factor(reynolds, ROUGH / diameter) * (1 + 1.5 * added));
    }
}
