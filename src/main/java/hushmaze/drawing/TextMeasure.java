package hushmaze.drawing;

/** How wide a text comes out. Heights follow from the size by the fixed shares below. */
public interface TextMeasure {
    /** Height of capitals and figures as a share of the size. */
    double CAPITAL = 0.66;
    /** How far letters rise above the line of writing, as a share of the size. */
    double ASCENT = 0.74;
    /** How far letters fall below it. */
    double DESCENT = 0.22;

    /**
     * Width of a text, mm.
     *
     * @param text one line
     * @param size of the lettering (its em), mm
     * @param weight cut
     */
    double width(String text, double size, Weight weight);
}
