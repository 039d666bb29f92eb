package hushmaze.app.sheet;

import hushmaze.drawing.Ink;
import hushmaze.drawing.Page;
import hushmaze.drawing.Point;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Stroke;
import java.util.List;
import java.util.stream.DoubleStream;
import javafx.geometry.VPos;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Text;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Scale;
import javafx.scene.transform.Translate;

/** A page as shapes, so that a printer draws lines and letters, not dots; in millimetres, in the document's own colours. */
final class PageNodes {
    /** Letters are set this many times larger and shrunk, or their distances would be rounded to whole units. */
    private static final double ENLARGED = 10;

    private final Page page;

    private PageNodes(Page page) {
        this.page = page;
    }

    /** All shapes of a page. */
    static Group of(Page page) {
        PageNodes nodes = new PageNodes(page);
        Group all = new Group();
        page.shapes().forEach(shape -> all.getChildren().add(nodes.node(shape)));
        return all;
    }

    private Node node(Shape shape) {
        if (shape instanceof Shape.Line line) {
            return polyline(List.of(new Point(line.x1(), line.y1()), new Point(line.x2(), line.y2())), line.stroke());
        } else if (shape instanceof Shape.Path path) {
            return path(path);
        } else if (shape instanceof Shape.Circle circle) {
            Circle round = new Circle(circle.x(), circle.y(), circle.radius());
            return styled(round, circle.fill(), circle.stroke());
        } else if (shape instanceof Shape.Text text) {
            return text(text);
        }
        throw new IllegalArgumentException("a shape that cannot be printed: " + shape);
    }

    private Node path(Shape.Path path) {
        if (!path.closed() && path.fill() == null) {
            return polyline(path.points(), path.stroke());
        }
        Polygon polygon = new Polygon(numbers(path.points()));
        if (path.closed()) {
            return styled(polygon, path.fill(), path.stroke());
        }
        return new Group(styled(polygon, path.fill(), null), polyline(path.points(), path.stroke()));
    }

    private Node polyline(List<Point> points, Stroke stroke) {
        return styled(new Polyline(numbers(points)), null, stroke);
    }

    private static double[] numbers(List<Point> points) {
        return points.stream()
                .flatMapToDouble(p -> DoubleStream.of(p.x(), p.y()))
                .toArray();
    }

    private Node styled(javafx.scene.shape.Shape shape, Ink fill, Stroke stroke) {
        shape.setFill(fill == null ? null : Color.web(fill.hex()));
        if (stroke == null) {
            shape.setStroke(null);
        } else {
            shape.setStroke(Color.web(stroke.ink().hex()));
            shape.setStrokeWidth(stroke.width(page.thinLine()));
            shape.setStrokeLineCap(StrokeLineCap.BUTT);
            shape.getStrokeDashArray().setAll(stroke.pattern().dashes());
        }
        return shape;
    }

    private static Node text(Shape.Text text) {
        Text letters = new Text(text.text());
        letters.setTextOrigin(VPos.BASELINE);
        letters.setFont(ScreenFonts.of(text.weight(), text.size() * ENLARGED));
        letters.setFill(Color.web(text.ink().hex()));
        double width = letters.getLayoutBounds().getWidth();
        letters.setX(
                switch (text.anchor()) {
                    case START -> 0;
                    case MIDDLE -> -width / 2;
                    case END -> -width;
                });
        letters.getTransforms().add(new Translate(text.x(), text.y()));
        if (text.upwards()) {
            letters.getTransforms().add(new Rotate(-90));
        }
        letters.getTransforms().add(new Scale(1 / ENLARGED, 1 / ENLARGED));
        return letters;
    }
}
