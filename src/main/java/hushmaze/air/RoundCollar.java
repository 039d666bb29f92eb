package hushmaze.air;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A round collar in the wall of a rectangular part, for a round duct.
 *
 * <p>Loss coefficient on the velocity in the collar: into the collar ζ = e (1 - x)^0.75, out of it ζ = (1 - x)²; x collar
 * area over the area of the part, e entry loss by how far the thin-walled collar stands into the part: 0.5 flush, rising to
 * 1 from half a diameter on. Where the part is the smaller one, the change of area is taken on its velocity.
 *
 * <p>Source: Handbook of Hydraulic Resistance, diagrams 3-1, 4-1 and 4-9, as read in a duct design text. Range: as for the
 * change of area. Accuracy: 10 % either way, our judgement; into the collar the high edge is 14 % up, as for the entry.
 * Differs from the source: the projection of diagram 3-1 (from an endless space) is put in place of the 0.5 of 4-9.
 */
final class RoundCollar {
    static final String SOURCE = "Handbook of Hydraulic Resistance, diagrams 3-1, 4-1 and 4-9";
    private static final double[] PROJECTION = {0, 0.002, 0.01, 0.05, 0.2, 0.5};
    private static final double[] ENTRY = {0.50, 0.57, 0.68, 0.80, 0.92, 1.0};
    private static final double SPREAD = 0.10;
    private static final double SPREAD_UP = 0.14;

    private RoundCollar() {}

    /**
     * Loss coefficient on the velocity in the collar.
     *
     * @param partArea clear area of the rectangular part, m²
     * @param diameter inner, of the collar, m
     * @param projection of the collar into the part, m
     * @param intoCollar whether the air goes from the part into the collar
     */
    static Zeta zeta(double partArea, double diameter, double projection, boolean intoCollar) {
        InvalidValue.within("partArea", partArea, 1e-6, 1000, Unit.SQUARE_METRE);
        InvalidValue.within("diameter", diameter, 0.01, 5, Unit.METRE);
        InvalidValue.within("projection", projection, 0, 10, Unit.METRE);
        double round = Math.PI * diameter * diameter / 4;
        if (round >= partArea) {
            Zeta change = intoCollar ? AreaChange.zeta(partArea, round) : AreaChange.zeta(round, partArea);
            double k = (round / partArea) * (round / partArea);
            return change.times(k);
        }
        double rest = 1 - round / partArea;
        if (!intoCollar) {
            return Zeta.around(rest * rest, SPREAD);
        }
        double likely = Table.held(PROJECTION, ENTRY, projection / diameter) * Math.pow(rest, 0.75);
        return new Zeta(likely * (1 - SPREAD), likely, likely * (1 + SPREAD_UP));
    }
}
