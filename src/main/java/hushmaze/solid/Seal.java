package hushmaze.solid;

/**
 * Space that is neither board nor liner nor air, because something soft fills it.
 *
 * @param kind what fills it
 * @param bounds block it fills, as far as no board and no liner is in it
 */
public record Seal(Kind kind, Cuboid bounds) {
    /** What fills the space. */
    public enum Kind {
        /** Gasket between the cover and the edges it lies on. */
        COVER_GASKET,
        /** Gasket between two parts of a box that comes apart. */
        PARTING_GASKET,
        /** Play of a board in its frame or groove: glue and sealant; round the cover it stays open to the outside. */
        PLAY
    }
}
