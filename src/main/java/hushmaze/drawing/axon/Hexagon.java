package hushmaze.drawing.axon;

import hushmaze.drawing.Point;
import hushmaze.solid.Cuboid;
import java.util.ArrayList;
import java.util.List;

/**
 * What is between three pairs of lines along the pictures of the axes: the outline of a block, of one of its faces, or of what
 * is left of one; in the numbers a, b and c of {@link Isometric}, m.
 *
 * @param a0 low a
 * @param a1 high a
 * @param b0 low b
 * @param b1 high b
 * @param c0 low c
 * @param c1 high c
 */
record Hexagon(double a0, double a1, double b0, double b1, double c0, double c1) {
    /** What is narrower than this is nothing, m. */
    private static final double LEAST = 1e-9;

    /** The outline of a block. Its edges of sight are those where a face towards the viewer meets one away from him. */
    static Hexagon of(Cuboid q) {
        return new Hexagon(
                q.x0() - q.y1(), q.x1() - q.y0(), q.x0() + q.z0(), q.x1() + q.z1(), q.y0() + q.z0(), q.y1() + q.z1());
    }

    /** The same region with every pair of lines as close as the other two allow, since a = b - c. */
    Hexagon tight() {
        return new Hexagon(
                Math.max(a0, b0 - c1),
                Math.min(a1, b1 - c0),
                Math.max(b0, a0 + c0),
                Math.min(b1, a1 + c1),
                Math.max(c0, b0 - a1),
                Math.min(c1, b1 - a0));
    }

    /** Whether there is nothing in it; right for tight ones. */
    boolean isEmpty() {
        return a1 - a0 <= LEAST || b1 - b0 <= LEAST || c1 - c0 <= LEAST;
    }

    boolean apartFrom(Hexagon o) {
        return a0 >= o.a1 || o.a0 >= a1 || b0 >= o.b1 || o.b0 >= b1 || c0 >= o.c1 || o.c0 >= c1;
    }

    /** What is left of it when another is taken out: up to six pieces that do not overlap. */
    List<Hexagon> minus(Hexagon o) {
        if (apartFrom(o)) {
            return List.of(this);
        }
        List<Hexagon> left = new ArrayList<>();
        Hexagon h = this;
        keep(new Hexagon(h.a0, Math.min(h.a1, o.a0), h.b0, h.b1, h.c0, h.c1), left);
        keep(new Hexagon(Math.max(h.a0, o.a1), h.a1, h.b0, h.b1, h.c0, h.c1), left);
        h = new Hexagon(Math.max(h.a0, o.a0), Math.min(h.a1, o.a1), h.b0, h.b1, h.c0, h.c1);
        keep(new Hexagon(h.a0, h.a1, h.b0, Math.min(h.b1, o.b0), h.c0, h.c1), left);
        keep(new Hexagon(h.a0, h.a1, Math.max(h.b0, o.b1), h.b1, h.c0, h.c1), left);
        h = new Hexagon(h.a0, h.a1, Math.max(h.b0, o.b0), Math.min(h.b1, o.b1), h.c0, h.c1);
        keep(new Hexagon(h.a0, h.a1, h.b0, h.b1, h.c0, Math.min(h.c1, o.c0)), left);
        keep(new Hexagon(h.a0, h.a1, h.b0, h.b1, Math.max(h.c0, o.c1), h.c1), left);
        return left;
    }

    private static void keep(Hexagon piece, List<Hexagon> into) {
        // Twice: the first bound that moves may let a second move again.
        Hexagon tight = piece.tight().tight();
        if (!tight.isEmpty()) {
            into.add(tight);
        }
    }

    /** Its area in the plane of b and c, m²: on paper it is cos 30° of that, times the scale twice. */
    double area() {
        return (b1 - b0) * (c1 - c0) - corner(b1 - c0 - a1) - corner(a0 - (b0 - c1));
    }

    private static double corner(double cut) {
        return cut > 0 ? cut * cut / 2 : 0;
    }

    /** Its corners on paper; two may fall together. */
    List<Point> corners(Isometric view) {
        return List.of(
                view.flat(b0, c0),
                view.flat(a1 + c0, c0),
                view.flat(b1, b1 - a1),
                view.flat(b1, c1),
                view.flat(a0 + c1, c1),
                view.flat(b0, b0 - a0));
    }

    /** A point well inside: the middle between its corners. */
    Point middle(Isometric view) {
        List<Point> corners = corners(view);
        return new Point(
                corners.stream().mapToDouble(Point::x).average().orElseThrow(),
                corners.stream().mapToDouble(Point::y).average().orElseThrow());
    }

    /** Its least width across one of the three directions, m. */
    double narrow() {
        return Math.min(a1 - a0, Math.min(b1 - b0, c1 - c0));
    }
}
