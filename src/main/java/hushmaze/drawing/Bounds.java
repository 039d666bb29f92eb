package hushmaze.drawing;

/**
 * A rectangle on the page, mm.
 *
 * @param x0 left
 * @param y0 top
 * @param x1 right
 * @param y1 bottom
 */
public record Bounds(double x0, double y0, double x1, double y1) {
    public double width() {
        return x1 - x0;
    }

    public double height() {
        return y1 - y0;
    }

    public double centreX() {
        return (x0 + x1) / 2;
    }

    public double centreY() {
        return (y0 + y1) / 2;
    }

    /** The smallest rectangle around both. */
    public Bounds union(Bounds other) {
        return new Bounds(
                Math.min(x0, other.x0), Math.min(y0, other.y0), Math.max(x1, other.x1), Math.max(y1, other.y1));
    }

    /** Moved out on every side, or in for a negative amount. */
    public Bounds grown(double by) {
        return new Bounds(x0 - by, y0 - by, x1 + by, y1 + by);
    }

    /** Whether the two share more than an edge. */
    public boolean overlaps(Bounds other) {
        return x0 < other.x1 && other.x0 < x1 && y0 < other.y1 && other.y0 < y1;
    }

    /** Whether the other lies inside, edges included, within a thousandth of a millimetre. */
    public boolean contains(Bounds other) {
        double slack = 1e-3;
        return other.x0 >= x0 - slack && other.y0 >= y0 - slack && other.x1 <= x1 + slack && other.y1 <= y1 + slack;
    }
}
