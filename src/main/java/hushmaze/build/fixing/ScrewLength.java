package hushmaze.build.fixing;

import hushmaze.project.Mounting;
import hushmaze.solid.Solid;

/**
 * How long a screw has to be that holds a box: thread in the timber, its tapered tip, the cleat, and where it is driven from inside the
 * boards of the box. Plaster or board on the studs comes on top. A head let into a batten is as deep below its face as the
 * recess.
 *
 * <p>Source: geometry; a tip as long as the screw is thick, as the National Design Specification has it for lag screws (from memory).
 */
public final class ScrewLength {
    private ScrewLength() {}

    /** Left of a cleat before the point of a screw that is driven into it from inside, m; common practice, no source. */
    private static final double COVER = 0.003;

    /** Most length of a screw that holds a cleat on the box from inside, m: its point must not come out at the wall. */
    public static double mostFromInside(Solid solid, Mounting mounting) {
        return solid.box().shellThickness() + mounting.cleat() - COVER;
    }

    /** Least length, plaster not counted, m. */
    public static double of(Solid solid, Mounting mounting, Way way) {
        double boards = way.fromInside() ? solid.box().shellThickness() : -StudFixing.recess(mounting.screw());
        return mounting.thread() + StudFixing.diameter(mounting.screw()) + mounting.cleat() + boards;
    }
}
