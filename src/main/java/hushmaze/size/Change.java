package hushmaze.size;

/** Small errors of cutting and buying, and small improvements, whose effect on a box is worth knowing. */
public enum Change {
    /** Every pass wider by {@link #WIDTH}; the other clear sizes stay, the box grows. */
    WIDER,
    /** Every pass narrower by that; the box shrinks. */
    NARROWER,
    /** Liner thicker by {@link #LINER}; boards stay where they are, so what is clear between liners shrinks. */
    THICKER_LINER,
    /** Liner thinner by that. */
    THINNER_LINER,
    /** Liner of half the flow resistivity. */
    HALF_RESISTIVITY,
    /** Liner of twice the flow resistivity. */
    DOUBLE_RESISTIVITY,
    /** The cover's joint open by {@link #SLIT} all round. */
    COVER_SLIT,
    /** One more layer of the outermost board all round. */
    ONE_MORE_LAYER,
    /** One more pass of the same clear sizes. */
    ONE_MORE_PASS;

    /** Change of the clear width, m. */
    public static final double WIDTH = 0.005;
    /** Change of the liner's thickness, m. */
    public static final double LINER = 0.01;
    /** Width of the slit along the cover, m. */
    public static final double SLIT = 0.001;

    /** Whether it is something that goes wrong rather than something one may decide to do. */
    public boolean isError() {
        return this != ONE_MORE_LAYER && this != ONE_MORE_PASS;
    }
}
