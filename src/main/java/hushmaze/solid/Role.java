package hushmaze.solid;

/** Where in the box a part belongs. */
public enum Role {
    /** Broad face against the wall or floor, at low z. */
    BACK(Axis.Z),
    /** Broad face towards the room, at high z: the screwed cover. */
    FRONT(Axis.Z),
    /** Long side at low y, beside the first pass. */
    FIRST_SIDE(Axis.Y),
    /** Long side at high y, beside the last pass. */
    LAST_SIDE(Axis.Y),
    /** End at low x, where the first pass begins. */
    NEAR_END(Axis.X),
    /** End at high x, where the first pass turns. */
    FAR_END(Axis.X),
    /** Between two passes. */
    BAFFLE(Axis.Y);

    private final Axis normal;

    Role(Axis normal) {
        this.normal = normal;
    }

    /**
     * Whether a wall is at the low end of its normal, so that its inner face is its high one.
     *
     * @throws IllegalStateException for a baffle, which has no inside
     */
    public boolean isLow() {
        return switch (this) {
            case BACK, FIRST_SIDE, NEAR_END -> true;
            case FRONT, LAST_SIDE, FAR_END -> false;
            case BAFFLE -> throw new IllegalStateException("a baffle is not part of the shell");
        };
    }

    /** Direction across the part's faces. */
    public Axis normal() {
        return normal;
    }
}
