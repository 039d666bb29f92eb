package hushmaze.air;

/**
 * A fitting whose pressure loss at one flow is known.
 *
 * <p>Formula: Δp = Δp₀ (Q/Q₀)^n, n from 1.8 to 2, likely 2; Q flow, Q₀ and Δp₀ the known flow and its pressure.
 *
 * <p>Source: turbulent flow through fittings; the lower exponent allows for what friction there is, our judgement. Range:
 * flows near the known one; the range carried widens with the distance from it. Accuracy: that of the known pressure.
 * Differs from the source: none.
 */
final class KnownLoss {
    static final String SOURCE = "known pressure at a known flow, exponent between 1.8 and 2";
    private static final double LEAST_EXPONENT = 1.8;
    private static final double LIKELY_EXPONENT = 2;

    private KnownLoss() {}

    /**
     * Loss coefficient on the velocity in an area.
     *
     * @param knownPressure Pa
     * @param knownFlow m³/s
     * @param flow m³/s
     * @param area the velocity is of, m²
     */
    static Zeta zeta(double knownPressure, double knownFlow, double flow, double area, AirState air) {
        return RatedLoss.zeta(knownPressure, knownFlow, flow, area, air, LEAST_EXPONENT, LIKELY_EXPONENT);
    }
}
