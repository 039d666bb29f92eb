package hushmaze.air;

/**
 * A sudden change of the clear area, without a turn.
 *
 * <p>Loss coefficient on the velocity in the smaller area: widening ζ = (1 - x)², narrowing ζ = 0.5 (1 - x)^0.75; x
 * smaller over larger area.
 *
 * <p>Source: Handbook of Hydraulic Resistance, diagrams 4-1 (Borda-Carnot) and 4-9, as read in the documentation of an
 * open library of pressure losses. Range: Re from 3300 (widening) and 1e4 (narrowing); below it the same numbers are used.
 * Accuracy: a second printed table of narrowings runs 2 to 12 % higher; the range carried is 10 % either way, our
 * judgement. Differs from the source: areas only; how the two shapes lie to each other is not looked at.
 */
final class AreaChange {
    static final String SOURCE = "Handbook of Hydraulic Resistance, diagrams 4-1 and 4-9";
    /** Share carried to either side, our judgement. */
    static final double SPREAD = 0.10;

    private AreaChange() {}

    /** Loss coefficient on the velocity in the smaller area; areas before and after in m². */
    static Zeta zeta(double before, double after) {
        double x = Math.min(before, after) / Math.max(before, after);
        // 4-1 when it widens, 4-9 when it narrows
        return Zeta.around(after > before ? (1 - x) * (1 - x) : 0.5 * Math.pow(1 - x, 0.75), SPREAD);
    }
}
