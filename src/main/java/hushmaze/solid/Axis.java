package hushmaze.solid;

/** The three directions of a box: X along the passes, Y across them, Z along the clear height. */
public enum Axis {
    X,
    Y,
    Z;

    /** First direction in a plane across this axis, in the order x, y, z. */
    public Axis u() {
        return this == X ? Y : X;
    }

    /** Second direction in a plane across this axis, in the order x, y, z. */
    public Axis v() {
        return this == Z ? Y : Z;
    }
}
