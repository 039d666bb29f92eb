package hushmaze.drawing.axon;

import hushmaze.drawing.Point;

/**
 * Isometric projection: the three axes of a box at 120° on paper, all three at the same scale, unshortened.
 *
 * <p>The viewer stands towards low x, low y and high z: on paper x runs to the right and up, y to the left and up, z up. A point
 * (x, y, z) has three numbers that do not change along the line of sight (-1, -1, 1):
 *
 * <pre>a = x - y,  b = x + z,  c = y + z,  with a = b - c</pre>
 *
 * <p>and on paper it is at cos 30° a to the right and (b + c) / 2 up, times the scale.
 *
 * <p>Source: isometric axonometry with axes drawn unshortened, after the practice of ISO 5456-3, from memory.
 *
 * @param scale mm on paper for a metre along an axis, more than 0
 */
public record Isometric(double scale) {
    static final double COS = Math.sqrt(3) / 2;

    public Isometric {
        if (!(scale > 0 && scale < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a scale of " + scale + " mm/m: it must be more than 0");
        }
    }

    /** Where a point in space comes to lie on paper, x and y from the picture of the origin, mm. */
    public Point paper(double x, double y, double z) {
        return flat(x + z, y + z);
    }

    /** The same from two of the numbers that the line of sight leaves as they are, m. */
    Point flat(double b, double c) {
        return new Point(COS * (b - c) * scale, -(b + c) / 2 * scale);
    }
}
