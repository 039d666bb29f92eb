package hushmaze.solid;

/**
 * A stretch of a liner piece's edge that the air passes, measured like a {@link Cutout}; one of its two sizes is nothing.
 *
 * @param u0 low u, m
 * @param v0 low v, m
 * @param u1 high u, m
 * @param v1 high v, m
 */
public record AirEdge(double u0, double v0, double u1, double v1) {
    /** m. */
    public double length() {
        return (u1 - u0) + (v1 - v0);
    }
}
