package hushmaze.quantity;

/** How much a notice matters. */
public enum Severity {
    /** Good to know. */
    NOTE,
    /** Doubtful: look at it before building. */
    WARNING,
    /** The design does not do what is asked, or is unsafe. */
    STOP
}
