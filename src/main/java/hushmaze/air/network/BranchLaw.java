package hushmaze.air.network;

/** How much air a way lets through at a difference of pressure. */
public interface BranchLaw {
    /** Below this difference a law may be straightened so that its slope stays finite, Pa. */
    double STRAIGHT_BELOW = 1e-4;

    /**
     * Flow, m³/s, rising with the difference.
     *
     * @param pressureDifference at the start minus at the end of the way, Pa
     */
    double flow(double pressureDifference);

    /** Whether the flow depends on the pressure at all. */
    default boolean answersPressure() {
        return true;
    }

    /** The same way so many times as large: as many of it side by side. */
    default BranchLaw enlarged(double factor) {
        return difference -> factor * flow(difference);
    }

    /** Odd power law, continued as a cubic of equal slope below {@link #STRAIGHT_BELOW}. */
    static double power(double coefficient, double exponent, double difference) {
        double x = difference / STRAIGHT_BELOW;
        double edge = coefficient * Math.pow(STRAIGHT_BELOW, exponent);
        if (Math.abs(x) >= 1) {
            return Math.signum(x) * coefficient * Math.pow(Math.abs(difference), exponent);
        }
        return edge * ((3 - exponent) / 2 * x + (exponent - 1) / 2 * x * x * x);
    }
}
