package hushmaze.drawing.draft;

import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import java.util.List;

/** Filled arrowheads: 3 mm long and a third of that wide. */
public final class Arrow {
    /** Length of the head, mm. */
    public static final double LENGTH = 3;

    private static final double HALF_WIDTH = LENGTH / 6;

    private Arrow() {}

    /**
     * A head whose tip is at a point.
     *
     * @param dx direction it points in, a unit vector
     * @param dy direction it points in
     */
    public static void head(Sketch sketch, double x, double y, double dx, double dy, Ink ink) {
        double baseX = x - dx * LENGTH;
        double baseY = y - dy * LENGTH;
        sketch.polygon(
                List.of(
                        new Point(x, y),
                        new Point(baseX - dy * HALF_WIDTH, baseY + dx * HALF_WIDTH),
                        new Point(baseX + dy * HALF_WIDTH, baseY - dx * HALF_WIDTH)),
                null,
                ink);
    }

    /** A thin line with a head at its end. */
    public static void line(Sketch sketch, double x1, double y1, double x2, double y2, Stroke stroke) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        double dx = (x2 - x1) / length;
        double dy = (y2 - y1) / length;
        sketch.line(x1, y1, x2 - dx * LENGTH / 2, y2 - dy * LENGTH / 2, stroke);
        head(sketch, x2, y2, dx, dy, stroke.ink());
    }
}
