package hushmaze.build.fixing;

import hushmaze.project.Brief;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;

/** How a box hangs, by where somebody with a drill can get at its screws. */
public enum Way {
    /** By screws driven from inside, through the back and the cleats on it; the cover is towards the room and off meanwhile. */
    THROUGH,
    /** By a bevelled batten on the wall that takes hold of another on the box; nobody has to get inside. */
    HOOKED,
    /** From inside too, but the way in is not towards the room, so that nobody can drive them. */
    OUT_OF_REACH,
    /** By its cover, which would then carry the box by the cover's own screws and could not be taken off. */
    BY_ITS_COVER;

    /**
     * The way of a box on a wall or under a ceiling.
     *
     * @param face of the box that lies on the surface
     */
    public static Way of(PortFace face, Opening.Surface surface) {
        return switch (face) {
            case BACK -> THROUGH;
            case FRONT -> BY_ITS_COVER;
            case END, SIDE -> surface == Opening.Surface.WALL ? HOOKED : OUT_OF_REACH;
        };
    }

    /**
     * Height there must be over a box to hang it, m.
     *
     * @param face of the box that lies on the surface
     */
    public static double lift(PortFace face, Brief brief) {
        return brief.onCleats() && of(face, brief.opening().surface()) == HOOKED
                ? Hook.lift(brief.construction().mounting().cleat())
                : 0;
    }

    /** Whether screws go from inside through the boards of the box. */
    public boolean fromInside() {
        return this != HOOKED;
    }
}
