package hushmaze.drawing.axon;

import hushmaze.drawing.Point;
import java.util.List;

/** A convex region of a picture with sides along the pictures of the axes only. */
public final class Region {
    private final Hexagon hexagon;

    Region(Hexagon hexagon) {
        this.hexagon = hexagon;
    }

    /** Its corners on paper in order, six of which some may fall together, mm. */
    public List<Point> corners(Isometric view) {
        return hexagon.corners(view);
    }

    /** A point inside, mm. */
    public Point middle(Isometric view) {
        return hexagon.middle(view);
    }

    /** Area on paper, mm². */
    public double area(Isometric view) {
        return hexagon.area() * Isometric.COS * view.scale() * view.scale();
    }

    /** Its least width across one of the three directions, mm on paper. */
    public double narrow(Isometric view) {
        return hexagon.narrow() * Isometric.COS * view.scale();
    }

    /** Whether a point given by two numbers of {@link Isometric} lies inside. */
    boolean holds(double b, double c) {
        Hexagon h = hexagon;
        return b > h.b0() && b < h.b1() && c > h.c0() && c < h.c1() && b - c > h.a0() && b - c < h.a1();
    }
}
