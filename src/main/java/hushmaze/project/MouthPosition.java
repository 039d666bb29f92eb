package hushmaze.project;

/** Where in the surfaces of a room, or of a building outdoors, an opening is. */
public enum MouthPosition {
    /** Away from the edges of a wall, floor or ceiling. */
    MIDDLE_OF_SURFACE,
    /** Where two surfaces meet. */
    EDGE,
    /** Where three surfaces meet. */
    CORNER
}
