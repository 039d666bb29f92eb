package hushmaze.app.solid;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.PartSurface;

/**
 * A plane that cuts a box open: what lies beyond it is taken away.
 *
 * @param axis across which the plane lies
 * @param at where it lies, m
 */
record CutAway(Axis axis, double at) {
    private static final double BEYOND = 100;
    private static final double SAME = 1e-9;

    /** Everything beyond the plane. */
    Cuboid removed() {
        return new Cuboid(-BEYOND, -BEYOND, -BEYOND, BEYOND, BEYOND, BEYOND).with(axis, at, BEYOND);
    }

    /** Whether a block lies wholly beyond it. */
    boolean takes(Cuboid block) {
        return block.low(axis) >= at - SAME;
    }

    /** Whether it goes through a block. */
    boolean crosses(Cuboid block) {
        return block.low(axis) < at - SAME && block.high(axis) > at + SAME;
    }

    /** Whether a face came about by the cut. */
    boolean made(PartSurface.Face face) {
        return face.across() == axis && face.high() && Math.abs(face.at() - at) < SAME;
    }
}
