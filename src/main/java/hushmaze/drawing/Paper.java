package hushmaze.drawing;

import hushmaze.quantity.UnitSystem;

/**
 * Sizes of paper. The thin line is 0.25 mm on the small sizes and 0.35 mm on the large ones, the thick line twice that:
 * widths of the series used for technical drawings.
 */
public enum Paper {
    A4(210, 297, 0.25, false),
    A3(297, 420, 0.35, true),
    LETTER(215.9, 279.4, 0.25, false),
    TABLOID(279.4, 431.8, 0.35, true);

    private final double shortSide;
    private final double longSide;
    private final double thinLine;
    private final boolean large;

    Paper(double shortSide, double longSide, double thinLine, boolean large) {
        this.shortSide = shortSide;
        this.longSide = longSide;
        this.thinLine = thinLine;
        this.large = large;
    }

    /** What is in most printers where people measure so. */
    public static Paper usual(UnitSystem units) {
        return units == UnitSystem.INCH ? LETTER : A4;
    }

    /** mm. */
    public double shortSide() {
        return shortSide;
    }

    /** mm. */
    public double longSide() {
        return longSide;
    }

    /** Width of the thin line, mm. */
    public double thinLine() {
        return thinLine;
    }

    /** Whether it takes two columns of text side by side, and is never used upright. */
    public boolean large() {
        return large;
    }
}
