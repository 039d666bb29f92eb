package hushmaze.drawing.draft;

/**
 * Sizes of the lettering, as em in mm. Figures of dimensions come out 2.5 mm high, the least height usual for technical
 * drawings; running text is 9 pt.
 */
public final class Lettering {
    /** Figures of dimensions and marks on drawings. */
    public static final double DIMENSION = 3.8;
    /** Running text. */
    public static final double TEXT = 3.2;
    /** Tables. */
    public static final double TABLE = 3.0;
    /** Captions of fields, sources. */
    public static final double SMALL = 2.5;
    /** Heading within a page. */
    public static final double HEADING = 4.4;
    /** Title of a page. */
    public static final double TITLE = 6.4;
    /** Distance of two lines of writing as a share of the size. */
    public static final double LEADING = 1.36;

    private Lettering() {}
}
