package hushmaze.drawing;

import java.util.ArrayList;
import java.util.List;

/** Collects shapes, in the order they are painted. */
public final class Sketch {
    private final List<Shape> shapes = new ArrayList<>();

    /** What was drawn so far. */
    public List<Shape> shapes() {
        return List.copyOf(shapes);
    }

    public boolean isEmpty() {
        return shapes.isEmpty();
    }

    /** The rectangle around everything. */
    public Bounds bounds(TextMeasure measure) {
        return shapes.stream()
                .map(s -> s.bounds(measure))
                .reduce(Bounds::union)
                .orElseThrow(() -> new IllegalStateException("an empty sketch has no bounds"));
    }

    public Sketch add(Shape shape) {
        shapes.add(shape);
        return this;
    }

    /** Another sketch, moved. */
    public Sketch add(Sketch other, double dx, double dy) {
        other.shapes.forEach(s -> shapes.add(s.moved(dx, dy)));
        return this;
    }

    public Sketch line(double x1, double y1, double x2, double y2, Stroke stroke) {
        return add(new Shape.Line(x1, y1, x2, y2, stroke));
    }

    public Sketch path(List<Point> points, Stroke stroke) {
        return add(new Shape.Path(points, false, stroke, null));
    }

    public Sketch polygon(List<Point> points, Stroke stroke, Ink fill) {
        return add(new Shape.Path(points, true, stroke, fill));
    }

    /** A rectangle; line or fill may be null. */
    public Sketch rectangle(Bounds b, Stroke stroke, Ink fill) {
        return polygon(
                List.of(
                        new Point(b.x0(), b.y0()),
                        new Point(b.x1(), b.y0()),
                        new Point(b.x1(), b.y1()),
                        new Point(b.x0(), b.y1())),
                stroke,
                fill);
    }

    /** A filled dot. */
    public Sketch dot(double x, double y, double radius, Ink ink) {
        return add(new Shape.Circle(x, y, radius, null, ink));
    }

    /** A circle that is not filled. */
    public Sketch circle(double x, double y, double radius, Stroke stroke) {
        return add(new Shape.Circle(x, y, radius, stroke, null));
    }

    public Sketch text(double x, double y, String text, double size, Weight weight, Anchor anchor, Ink ink) {
        return add(new Shape.Text(x, y, text, size, weight, anchor, false, ink));
    }

    /** Black, regular lettering. */
    public Sketch text(double x, double y, String text, double size, Anchor anchor) {
        return text(x, y, text, size, Weight.REGULAR, anchor, Ink.BLACK);
    }

    /** Black, regular lettering that runs upwards. */
    public Sketch textUp(double x, double y, String text, double size, Anchor anchor) {
        return add(new Shape.Text(x, y, text, size, Weight.REGULAR, anchor, true, Ink.BLACK));
    }
}
