package hushmaze.air;

/**
 * A filter whose pressure loss at one flow is given.
 *
 * <p>Formula: Δp = Δp₀ (Q/Q₀)^n, n from 1 (creeping flow through fibres) to 2 (fully turbulent), likely 1.5; Q flow, Q₀ and
 * Δp₀ the given flow and its pressure.
 *
 * <p>Source: the exponents are the two limits of flow through a porous layer; the likely one is our judgement. Range: flows
 * near the given one; the range carried widens with the distance from it. Accuracy: that of the given pressure, of the
 * filter's age above all. Differs from the source: none.
 */
final class FilterLoss {
    static final String SOURCE = "given pressure at a given flow, exponent between 1 and 2";
    private static final double CREEPING = 1;
    private static final double LIKELY_EXPONENT = 1.5;

    private FilterLoss() {}

    /**
     * Loss coefficient on the velocity in an area.
     *
     * @param ratedPressure Pa
     * @param ratedFlow m³/s
     * @param flow m³/s
     * @param area the velocity is of, m²
     */
    static Zeta zeta(double ratedPressure, double ratedFlow, double flow, double area, AirState air) {
        return RatedLoss.zeta(ratedPressure, ratedFlow, flow, area, air, CREEPING, LIKELY_EXPONENT);
    }
}
