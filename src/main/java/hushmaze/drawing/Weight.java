package hushmaze.drawing;

/** Cuts of the lettering. */
public enum Weight {
    REGULAR,
    SEMIBOLD,
    ITALIC
}
