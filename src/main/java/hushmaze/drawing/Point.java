package hushmaze.drawing;

/**
 * A place on the page.
 *
 * @param x to the right, mm
 * @param y downwards, mm
 */
public record Point(double x, double y) {
    Point moved(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
