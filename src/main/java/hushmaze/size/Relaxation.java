package hushmaze.size;

import hushmaze.quantity.Unit;

/**
 * One limit that, relaxed alone, would let a box be laid out.
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
        OPENING
    }
}
