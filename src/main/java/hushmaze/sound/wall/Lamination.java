package hushmaze.sound.wall;

/** How the boards of a wall hold together. */
public enum Lamination {
    /** Glued all over: one stiff plate. */
    GLUED,
    /** Only screwed, or with a soft layer between: their masses add, each board bends by itself. */
    SEPARATE
}
