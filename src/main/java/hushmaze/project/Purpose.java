package hushmaze.project;

/** What a vent path is for. */
public enum Purpose {
    /** Fresh or conditioned air into the room. */
    SUPPLY,
    /** Air out of the room to the house, back to the system or through. */
    RETURN,
    /** Air out of the room to outdoors. */
    EXHAUST
}
