package hushmaze.air.need;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.OptionalDouble;

/**
 * Fastest air in a bare duct in the last run before its mouth in a room that shall be quiet.
 *
 * <p>Table: velocity in rectangular ducts within the occupied space, 950, 1450 and 2000 ft/min at RC(N) 25, 35 and 45; the
 * last run to the mouth has half of it.
 *
 * <p>Source: largest duct velocities by room criterion, ASHRAE, as read in two copies. Range: RC 25 to 45, in straight lines
 * between; below 25 nothing is published and the first figure is held, above 45 there is none. Accuracy: of the table;
 * fittings raise the noise. Differs from the source: none.
 */
public final class DuctVelocity {
    private static final double[] CRITERIA = {25, 35, 45};
    /** ft/min. */
    private static final double[] VELOCITIES = {950, 1450, 2000};

    private static final double LAST_RUN = 0.5;

    private DuctVelocity() {}

    /**
     * The limit in the last run, m/s; nothing above RC 45.
     *
     * @param rc number of the room criterion
     */
    public static OptionalDouble lastRun(double rc) {
        InvalidValue.within("rc", rc, 0, 100, Unit.NUMBER);
        int last = CRITERIA.length - 1;
        if (rc > CRITERIA[last]) {
            return OptionalDouble.empty();
        }
        int i = rc <= CRITERIA[1] ? 1 : last;
        double share = Math.max(0, (rc - CRITERIA[i - 1]) / (CRITERIA[i] - CRITERIA[i - 1]));
        double feet = VELOCITIES[i - 1] + share * (VELOCITIES[i] - VELOCITIES[i - 1]);
        return OptionalDouble.of(LAST_RUN * Unit.FOOT_PER_MINUTE.toSi(feet));
    }
}
