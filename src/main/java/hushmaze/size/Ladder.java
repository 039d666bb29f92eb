package hushmaze.size;

import java.util.List;

/** Which of all clear sizes that are whole steps are taken. Lists are without what is out of range, and may be empty. */
interface Ladder {
    /**
     * Widths of passes, m.
     *
     * @param least that lets air and opening in, not yet rounded
     * @param fill the most there is room for, a whole number of steps
     */
    List<Double> widths(double least, double fill);

    /** Widths of a chamber, m; arguments as for passes. */
    List<Double> chamberWidths(double least, double fill);

    /**
     * Heights, m.
     *
     * @param least that lets the opening in, not yet rounded
     * @param most there is room for, a whole number of steps
     * @param flowing the least that lets the air through the widest pass, a whole number of steps
     */
    List<Double> heights(double least, double most, double flowing);

    /**
     * Lengths from the longest down, m.
     *
     * @param least that holds baffle and ports, not yet rounded
     * @param longest there is room for, a whole number of steps
     */
    List<Double> lengths(double least, double longest);

    /** Most widths of passes there may be; 0 if that depends on the room there is. */
    int mostWidths();

    /** Most widths of a chamber; 0 if that depends on the room there is. */
    int mostChamberWidths();

    /** Most lengths; 0 if that depends on the room there is. */
    int mostLengths();
}
