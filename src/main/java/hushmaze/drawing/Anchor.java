package hushmaze.drawing;

/** Which point of a text its position names, along the line of writing. */
public enum Anchor {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double share;

    Anchor(double share) {
        this.share = share;
    }

    /** Share of the text's width that lies before its position. */
    public double share() {
        return share;
    }
}
