package hushmaze.project;

/** Where a slit opens. */
public enum SlitMouth {
    /** In the middle of a surface. */
    IN_SURFACE,
    /** Along the edge where two surfaces meet, as under a door or at a skirting board. */
    ALONG_EDGE
}
