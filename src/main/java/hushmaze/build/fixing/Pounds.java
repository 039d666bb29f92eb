package hushmaze.build.fixing;

/** Units of the design formulas, which are published for pounds and inches. */
final class Pounds {
    /** N. */
    static final double POUND = 4.4482216152605;
    /** m. */
    static final double INCH = 0.0254;
    /** Pa. */
    static final double PSI = POUND / (INCH * INCH);

    private Pounds() {}
}
