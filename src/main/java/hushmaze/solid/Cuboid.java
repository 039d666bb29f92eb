package hushmaze.solid;

/**
 * A block with its faces across the axes, in metres.
 *
 * @param x0 low x
 * @param y0 low y
 * @param z0 low z
 * @param x1 high x
 * @param y1 high y
 * @param z1 high z
 */
public record Cuboid(double x0, double y0, double z0, double x1, double y1, double z1) {
    public Cuboid {
        if (!(x1 > x0 && y1 > y0 && z1 > z0)) {
            throw new IllegalArgumentException(
                    "an empty block: " + x0 + ".." + x1 + ", " + y0 + ".." + y1 + ", " + z0 + ".." + z1 + " m");
        }
    }

    /** Low end along an axis, m. */
    public double low(Axis axis) {
        return switch (axis) {
            case X -> x0;
            case Y -> y0;
            case Z -> z0;
        };
    }

    /** High end along an axis, m. */
    public double high(Axis axis) {
        return switch (axis) {
            case X -> x1;
            case Y -> y1;
            case Z -> z1;
        };
    }

    /** Size along an axis, m. */
    public double size(Axis axis) {
        return high(axis) - low(axis);
    }

    /** Centre along an axis, m. */
    public double centre(Axis axis) {
        return (low(axis) + high(axis)) / 2;
    }

    /** m³. */
    public double volume() {
        return (x1 - x0) * (y1 - y0) * (z1 - z0);
    }

    /** The same block with new ends along one axis. */
    public Cuboid with(Axis axis, double low, double high) {
        return switch (axis) {
            case X -> new Cuboid(low, y0, z0, high, y1, z1);
            case Y -> new Cuboid(x0, low, z0, x1, high, z1);
            case Z -> new Cuboid(x0, y0, low, x1, y1, high);
        };
    }

    /** The block grown outwards by the same amount on every side, m. */
    public Cuboid grown(double by) {
        return new Cuboid(x0 - by, y0 - by, z0 - by, x1 + by, y1 + by, z1 + by);
    }
}
