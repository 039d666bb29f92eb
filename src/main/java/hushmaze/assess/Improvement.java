package hushmaze.assess;

/**
 * What a change of the box's walls would do to the margin.
 *
 * @param kind of change
 * @param margin of the path with it, dB
 * @param gain over the margin as it is, dB
 */
public record Improvement(Kind kind, double margin, double gain) {
    /** The changes. */
    public enum Kind {
        /** One more layer of the outermost board all round. */
        ONE_MORE_LAYER,
        /** Every joint tight. */
        TIGHT_JOINTS,
        /** Both. */
        BOTH
    }
}
