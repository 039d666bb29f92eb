package hushmaze.drawing;

import java.util.List;

/** Something on a page, in millimetres. */
public sealed interface Shape {
    /** The same, moved. */
    Shape moved(double dx, double dy);

    /** The rectangle it fills, without the width of its line. */
    Bounds bounds(TextMeasure measure);

    /** A straight line. */
    record Line(double x1, double y1, double x2, double y2, Stroke stroke) implements Shape {
        @Override
        public Line moved(double dx, double dy) {
            return new Line(x1 + dx, y1 + dy, x2 + dx, y2 + dy, stroke);
        }

        @Override
        public Bounds bounds(TextMeasure measure) {
            return new Bounds(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
        }
    }

    /**
     * A line through several points, or a polygon.
     *
     * @param points at least two
     * @param closed whether the last point is joined to the first
     * @param stroke of the line; null for none
     * @param fill of the inside; null for none
     */
    record Path(List<Point> points, boolean closed, Stroke stroke, Ink fill) implements Shape {
        public Path {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException("a path of " + points.size() + " points");
            }
        }

        @Override
        public Path moved(double dx, double dy) {
            return new Path(points.stream().map(p -> p.moved(dx, dy)).toList(), closed, stroke, fill);
        }

        @Override
        public Bounds bounds(TextMeasure measure) {
            return points.stream()
                    .map(p -> new Bounds(p.x(), p.y(), p.x(), p.y()))
                    .reduce(Bounds::union)
                    .orElseThrow();
        }
    }

    /** A circle; line or fill may be null. */
    record Circle(double x, double y, double radius, Stroke stroke, Ink fill) implements Shape {
        @Override
        public Circle moved(double dx, double dy) {
            return new Circle(x + dx, y + dy, radius, stroke, fill);
        }

        @Override
        public Bounds bounds(TextMeasure measure) {
            return new Bounds(x, y, x, y).grown(radius);
        }
    }

    /**
     * One line of text.
     *
     * @param x of the anchor
     * @param y of the line of writing at the anchor
     * @param text what is written
     * @param size of the lettering (its em), mm
     * @param weight cut
     * @param anchor which point of the text is at x and y
     * @param upwards whether it is turned to read from the right-hand side of the page, running upwards
     * @param ink colour
     */
    record Text(double x, double y, String text, double size, Weight weight, Anchor anchor, boolean upwards, Ink ink)
            implements Shape {
        @Override
        public Text moved(double dx, double dy) {
            return new Text(x + dx, y + dy, text, size, weight, anchor, upwards, ink);
        }

        @Override
        public Bounds bounds(TextMeasure measure) {
            double width = measure.width(text, size, weight);
            double before = anchor.share() * width;
            double after = width - before;
            double above = TextMeasure.ASCENT * size;
            double below = TextMeasure.DESCENT * size;
            return upwards
                    ? new Bounds(x - above, y - after, x + below, y + before)
                    : new Bounds(x - before, y - above, x + after, y + below);
        }
    }

    /**
     * A place that tells more where drawings can be pointed at. Nothing is painted.
     *
     * @param area where to point
     * @param told what it tells
     */
    record Hint(Bounds area, Told told) implements Shape {
        @Override
        public Hint moved(double dx, double dy) {
            return new Hint(new Bounds(area.x0() + dx, area.y0() + dy, area.x1() + dx, area.y1() + dy), told);
        }

        @Override
        public Bounds bounds(TextMeasure measure) {
            return area;
        }
    }
}
