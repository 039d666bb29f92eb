package hushmaze.size;

import hushmaze.quantity.Unit;
import java.util.EnumSet;
import java.util.List;

/**
 * One limit that, relaxed alone, would let a box be laid out, or be quiet enough.
 *
 * @param limit which
 * @param from as asked, SI
 * @param to least that would do, SI
 * @param unit to show both in
 */
public record Relaxation(Limit limit, double from, double to, Unit unit) {
    /** Limits a brief sets. */
    public enum Limit {
        SPACE_WIDTH,
        SPACE_HEIGHT,
        SPACE_DEPTH,
        PRESSURE_DROP,
        PATH_VELOCITY,
        OPENING_VELOCITY,
        FLOW,
        MASS,
        DOORWAY_WIDTH,
        DOORWAY_HEIGHT,
        /** The opening's width, its height along with it. */
        OPENING,
        /** The space's width, its height and depth along with it. */
        SPACE,
        /** The doorway's width, its height along with it. */
        DOORWAY,
        /** Area of the boards there are. */
        BOARD_SHEETS,
        /** Area of the liner there is. */
        LINER_SHEETS;

        /** Limits of a brief that are one number. */
        static List<Limit> single() {
            return List.copyOf(EnumSet.range(SPACE_WIDTH, OPENING));
        }

        /** Those that are several numbers, which change in the same measure. */
        static List<Limit> several() {
            return List.of(SPACE, DOORWAY);
        }
    }
}
