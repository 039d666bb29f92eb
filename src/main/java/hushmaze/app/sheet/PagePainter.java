package hushmaze.app.sheet;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Page;
import hushmaze.drawing.Point;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Stroke;
import java.util.List;
import java.util.function.Function;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.TextAlignment;

/** Paints the shapes of a page; turns millimetres into pixels and puts level and upright lines on whole pixels. */
final class PagePainter {
    private static final double THINNEST = 0.7;
    private static final double SAME = 1e-6;
    /** Letters are set this many times larger and shrunk, or their distances would be rounded to whole pixels. */
    private static final double ENLARGED = 10;

    private final GraphicsContext to;
    private final Page page;
    private final double scale;
    private final double left;
    private final double top;
    private final Function<Ink, Color> colours;

    /**
     * @param scale pixels per millimetre
     * @param left of the page, pixels
     * @param top of the page, pixels
     */
    PagePainter(GraphicsContext to, Page page, double scale, double left, double top, Function<Ink, Color> colours) {
        this.to = to;
        this.page = page;
        this.scale = scale;
        this.left = Math.round(left);
        this.top = Math.round(top);
        this.colours = colours;
    }

    void paint() {
        to.setTextBaseline(VPos.BASELINE);
        page.shapes().forEach(this::paint);
    }

    private void paint(Shape shape) {
        if (shape instanceof Shape.Line line) {
            paint(new Shape.Path(
                    List.of(new Point(line.x1(), line.y1()), new Point(line.x2(), line.y2())),
                    false,
                    line.stroke(),
                    null));
        } else if (shape instanceof Shape.Path path) {
            paint(path);
        } else if (shape instanceof Shape.Circle circle) {
            paint(circle);
        } else if (shape instanceof Shape.Text text) {
            paint(text);
        }
    }

    private void paint(Shape.Path path) {
        List<Point> points = path.points();
        boolean snap = squared(points);
        double shift = snap && path.stroke() != null ? half(path.stroke()) : 0;
        int n = points.size();
        double[] xs = new double[n];
        double[] ys = new double[n];
        for (int i = 0; i < n; i++) {
            double x = left + points.get(i).x() * scale;
            double y = top + points.get(i).y() * scale;
            xs[i] = snap ? Math.round(x - shift) + shift : x;
            ys[i] = snap ? Math.round(y - shift) + shift : y;
        }
        if (path.fill() != null) {
            to.setFill(colours.apply(path.fill()));
            to.fillPolygon(xs, ys, n);
        }
        if (path.stroke() != null) {
            use(path.stroke());
            if (path.closed()) {
                to.strokePolygon(xs, ys, n);
            } else {
                to.strokePolyline(xs, ys, n);
            }
        }
    }

    private static boolean squared(List<Point> points) {
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if (Math.abs(a.x() - b.x()) > SAME && Math.abs(a.y() - b.y()) > SAME) {
                return false;
            }
        }
        return true;
    }

    /** A line of an odd number of pixels lies on the middle of one. */
    private double half(Stroke stroke) {
        return Math.round(width(stroke)) % 2 == 1 ? 0.5 : 0;
    }

    private double width(Stroke stroke) {
        return Math.max(THINNEST, stroke.width(page.thinLine()) * scale);
    }

    private void use(Stroke stroke) {
        to.setStroke(colours.apply(stroke.ink()));
        to.setLineWidth(width(stroke));
        to.setLineCap(StrokeLineCap.BUTT);
        to.setLineDashes(
                stroke.pattern().dashes().stream().mapToDouble(d -> d * scale).toArray());
    }

    private void paint(Shape.Circle circle) {
        double x = left + (circle.x() - circle.radius()) * scale;
        double y = top + (circle.y() - circle.radius()) * scale;
        double size = 2 * circle.radius() * scale;
        if (circle.fill() != null) {
            to.setFill(colours.apply(circle.fill()));
            to.fillOval(x, y, size, size);
        }
        if (circle.stroke() != null) {
            use(circle.stroke());
            to.strokeOval(x, y, size, size);
        }
    }

    private void paint(Shape.Text text) {
        to.setFont(ScreenFonts.of(text.weight(), text.size() * ENLARGED));
        to.setFill(colours.apply(text.ink()));
        to.setTextAlign(alignment(text.anchor()));
        to.save();
        to.translate(left + text.x() * scale, top + text.y() * scale);
        if (text.upwards()) {
            to.rotate(-90);
        }
        to.scale(scale / ENLARGED, scale / ENLARGED);
        to.fillText(text.text(), 0, 0);
        to.restore();
    }

    private static TextAlignment alignment(Anchor anchor) {
        return switch (anchor) {
            case START -> TextAlignment.LEFT;
            case MIDDLE -> TextAlignment.CENTER;
            case END -> TextAlignment.RIGHT;
        };
    }
}
