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

    /** Direction across the part's faces. */
    public Axis normal() {
        return normal;
    }
}
