package hushmaze.air.need;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.OptionalDouble;

/**
 * Fastest air in the free area of an opening into a room that shall be quiet.
 *
 * <p>Table: free-opening velocity by noise criterion, one row for every five NC from 15-20 to 40-45, the upper end of each
 * row; returns 1.2 times the supplies.
 *
 * <p>Source: table of registers and grilles in a text on architectural acoustics, for lined ducts and slots of at least half an
 * inch, as read; the text calls it a rough guideline. Range: NC 15 to 45; below 15 the first row is taken, above 45 there is
 * none. Accuracy: its rows. Differs from the source: none.
 */
public final class OpeningVelocity {
    private static final double FIRST = 15;
    private static final double STEP = 5;
    /** Upper ends of the supply rows, ft/min. */
    private static final double[] SUPPLY = {300, 350, 425, 500, 575, 650};
    /** Upper ends of the return rows, ft/min. */
    private static final double[] RETURN = {360, 420, 510, 600, 690, 780};

    private OpeningVelocity() {}

    /**
     * The limit, m/s; nothing above NC 45.
     *
     * @param nc number of the noise criterion
     * @param supply whether the air comes into the room
     */
    public static OptionalDouble limit(double nc, boolean supply) {
        InvalidValue.within("nc", nc, 0, 100, Unit.NUMBER);
        int row = (int) Math.max(0, Math.ceil((nc - FIRST) / STEP) - 1);
        return row < SUPPLY.length
                ? OptionalDouble.of(Unit.FOOT_PER_MINUTE.toSi((supply ? SUPPLY : RETURN)[row]))
                : OptionalDouble.empty();
    }
}
