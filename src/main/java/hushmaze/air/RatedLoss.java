package hushmaze.air;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/** A pressure loss that is known at one flow, carried to another by a power of the flow: Δp = Δp₀ (Q/Q₀)^n, n at most 2. */
final class RatedLoss {
    private static final double MOST_EXPONENT = 2;

    private RatedLoss() {}

    /**
     * Loss coefficient on the velocity in an area.
     *
     * @param ratedPressure Pa
     * @param ratedFlow m³/s
     * @param flow m³/s
     * @param area the velocity is of, m²
     * @param leastExponent end of the range of n; the other end is 2
     * @param likelyExponent likely n
     */
    static Zeta zeta(
            double ratedPressure,
            double ratedFlow,
            double flow,
            double area,
            AirState air,
            double leastExponent,
            double likelyExponent) {
        InvalidValue.within("ratedPressure", ratedPressure, 0, 1e4, Unit.PASCAL);
        InvalidValue.within("ratedFlow", ratedFlow, 1e-6, 1000, Unit.LITRE_PER_SECOND);
        InvalidValue.within("flow", flow, 1e-9, 1000, Unit.LITRE_PER_SECOND);
        InvalidValue.within("area", area, 1e-6, 1000, Unit.SQUARE_METRE);
        double unit = ratedPressure / air.dynamicPressure(flow / area);
        double ratio = flow / ratedFlow;
        double one = Math.pow(ratio, leastExponent);
        double other = Math.pow(ratio, MOST_EXPONENT);
        return new Zeta(
                unit * Math.min(one, other), unit * Math.pow(ratio, likelyExponent), unit * Math.max(one, other));
    }
}
