package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Arrow;
import hushmaze.drawing.draft.Lettering;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Solid;

/** A small plan of the bare boards with the sizes to measure inside: length, width, and corner to corner both ways. */
final class InsidePlan {
    private static final double HIGHEST = 24;
    /** Narrower boxes are drawn wider than they are, so that the figures stay apart. */
    private static final double LEAST_HEIGHT = 12;

    private static final double SIZE = Lettering.SMALL;

    private InsidePlan() {}

    /** The plan, no wider than given, from its origin downwards. */
    static Sketch of(Job job, double room) {
        Solid solid = job.result().solid();
        Cuboid cavity = solid.cavity();
        TextMeasure measure = job.measure();
        double wall = 1.2;
        String across = job.length(cavity.size(Axis.Y));
        double beside = measure.width(across, SIZE, Weight.REGULAR) + 3;
        double shape = cavity.size(Axis.Y) / cavity.size(Axis.X);
        double width = Math.min(HIGHEST / shape, room - 2 * (beside + wall));
        double height = Math.max(LEAST_HEIGHT, width * shape);
        double x0 = (room - width) / 2;
        Bounds inner = new Bounds(x0, wall, x0 + width, wall + height);
        Sketch sketch = new Sketch();
        sketch.rectangle(inner.grown(wall), Stroke.THIN, Ink.PALE);
        sketch.rectangle(inner, Stroke.THIN, Ink.WHITE);
        Stroke line = Stroke.THIN.in(Ink.ACCENT);
        both(sketch, inner.x0(), inner.y0(), inner.x1(), inner.y1(), line);
        both(sketch, inner.x0(), inner.y1(), inner.x1(), inner.y0(), line);
        String diagonal = job.length(Math.hypot(cavity.size(Axis.X), cavity.size(Axis.Y)));
        over(sketch, measure, inner.centreX(), inner.centreY(), diagonal);
        double below = inner.y1() + wall + 3.2;
        both(sketch, inner.x0(), below, inner.x1(), below, line);
        over(sketch, measure, inner.centreX(), below, job.length(cavity.size(Axis.X)));
        double right = inner.x1() + wall + 2;
        both(sketch, right, inner.y0(), right, inner.y1(), line);
        sketch.text(right + 1, inner.centreY() + SIZE * TextMeasure.CAPITAL / 2, across, SIZE, Anchor.START);
        return sketch;
    }

    private static void both(Sketch sketch, double x0, double y0, double x1, double y1, Stroke line) {
        Arrow.line(sketch, (x0 + x1) / 2, (y0 + y1) / 2, x0, y0, line);
        Arrow.line(sketch, (x0 + x1) / 2, (y0 + y1) / 2, x1, y1, line);
    }

    /** A figure on a line, on a white ground. */
    private static void over(Sketch sketch, TextMeasure measure, double x, double y, String figure) {
        double half = measure.width(figure, SIZE, Weight.REGULAR) / 2 + 0.6;
        double up = SIZE * TextMeasure.CAPITAL / 2 + 0.5;
        sketch.rectangle(new Bounds(x - half, y - up, x + half, y + up), null, Ink.WHITE);
        sketch.text(x, y + SIZE * TextMeasure.CAPITAL / 2, figure, SIZE, Anchor.MIDDLE);
    }
}
