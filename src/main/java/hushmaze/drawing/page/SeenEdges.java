package hushmaze.drawing.page;

import hushmaze.build.Turning;
import hushmaze.solid.Axis;
import hushmaze.solid.Part;
import hushmaze.solid.Role;

/**
 * Which sides of the box the left and the lower edge of a part's drawing lie at, so that a part with holes off its middle is
 * built in the right way round.
 *
 * @param left side of the box at the left edge
 * @param lower side of the box at the lower edge
 */
record SeenEdges(Role left, Role lower) {
    /** Those of a part that is laid down in some way to be drawn. */
    static SeenEdges of(Part part, Turning turning) {
        Axis u = part.normal().u();
        Axis v = part.normal().v();
        return new SeenEdges(
                side(turning.exchange() ? v : u, turning.mirrorU()),
                side(turning.exchange() ? u : v, turning.mirrorV()));
    }

    /** The side of the box at one end of an axis. */
    static Role side(Axis axis, boolean high) {
        return switch (axis) {
            case X -> high ? Role.FAR_END : Role.NEAR_END;
            case Y -> high ? Role.LAST_SIDE : Role.FIRST_SIDE;
            case Z -> high ? Role.FRONT : Role.BACK;
        };
    }
}
