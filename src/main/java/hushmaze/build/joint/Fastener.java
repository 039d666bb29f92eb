package hushmaze.build.joint;

/**
 * Fasteners of one size.
 *
 * @param kind what they are
 * @param diameter m
 * @param length m
 */
public record Fastener(Kind kind, double diameter, double length) {
    /** What a fastener is. */
    public enum Kind {
        /** Into a drilled hole. */
        SCREW,
        /** A thin nail, shot in; holds until the glue does. */
        BRAD,
        /** A round peg of wood in a glued joint. */
        DOWEL,
        /** A flat steel plate with four short screws, over a joint that comes apart. */
        PLATE,
        /** A pin with a washer that holds liner where the air is fast. */
        PIN
    }
}
