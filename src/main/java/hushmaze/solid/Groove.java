package hushmaze.solid;

/**
 * A rectangle sunk into one face of a board, measured like a {@link Cutout}. It may run out at the edge.
 *
 * @param u0 low u
 * @param v0 low v
 * @param u1 high u
 * @param v1 high v
 * @param depth m, less than the board's thickness
 * @param inLowFace whether it is in the face at the low end of the board's normal
 */
public record Groove(double u0, double v0, double u1, double v1, double depth, boolean inLowFace) {
    public Groove {
        if (!(u1 > u0 && v1 > v0 && depth > 0)) {
            throw new IllegalArgumentException("an empty groove: " + u0 + ".." + u1 + ", " + v0 + ".." + v1 + " m");
        }
    }

    /** m³. */
    public double volume() {
        return (u1 - u0) * (v1 - v0) * depth;
    }
}
