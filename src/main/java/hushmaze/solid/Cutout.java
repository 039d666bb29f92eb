package hushmaze.solid;

/**
 * A rectangle taken out of a part, right through it, measured from the part's own low corner along the part's u and v
 * directions ({@link Axis#u}, {@link Axis#v} of its normal), m. It may reach the edge.
 *
 * @param u0 low u
 * @param v0 low v
 * @param u1 high u
 * @param v1 high v
 */
public record Cutout(double u0, double v0, double u1, double v1) {
    public Cutout {
        if (!(u1 > u0 && v1 > v0)) {
            throw new IllegalArgumentException("an empty cut-out: " + u0 + ".." + u1 + ", " + v0 + ".." + v1 + " m");
        }
    }

    /** m². */
    public double area() {
        return (u1 - u0) * (v1 - v0);
    }
}
