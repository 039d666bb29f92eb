package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Scale;
import java.util.List;

/** The numbers of cuts, in rings on the cuts. */
final class CutRings {
    private static final double RING = 1.9;
    private static final double TEXT = 2.4;
    /** Numbers of three digits. */
    private static final double LONG_TEXT = 1.9;
    /** Least distance of a ring from the start of its cut. */
    private static final double FROM_END = 0.6;
    /** Farthest ring from an end of its cut: before the sheet's dimensions. */
    private static final double FARTHEST = 7.5;

    private final double enlarged;
    private final List<Bounds> taken;

    /**
     * @param enlarged how much larger than on a printed page
     * @param taken places to keep clear of; those of the rings are added
     */
    CutRings(double enlarged, List<Bounds> taken) {
        this.enlarged = enlarged;
        this.taken = taken;
    }

    /**
     * Sets the ring of a cut at the first place from its start where nothing is in the way; beyond one of its ends, on a line to
     * it, if there is no such place; none if there is no room there either.
     */
    void put(Sketch sketch, SheetGeometry.Line line, Scale scale) {
        Point from = new Point(scale.paper(line.x0()), -scale.paper(line.y0()));
        Point to = new Point(scale.paper(line.x1()), -scale.paper(line.y1()));
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        double radius = enlarged * RING;
        double first = radius + enlarged * FROM_END;
        int step = line.step().number();
        for (double at = first; at <= length; at += radius / 2) {
            Point place = along(from, to, at / length);
            if (free(place, radius)) {
                ring(sketch, place, step);
                return;
            }
        }
        for (double out = first; out <= enlarged * FARTHEST; out += radius / 2) {
            for (Point end : List.of(to, from)) {
                Point place = along(end.equals(to) ? from : to, end, 1 + out / length);
                if (free(place, radius)) {
                    sketch.line(end.x(), end.y(), place.x(), place.y(), Stroke.THIN.in(Ink.ACCENT));
                    ring(sketch, place, step);
                    return;
                }
            }
        }
    }

    private static Point along(Point from, Point to, double share) {
        return new Point(from.x() + (to.x() - from.x()) * share, from.y() + (to.y() - from.y()) * share);
    }

    private static Bounds around(Point place, double radius) {
        return new Bounds(place.x(), place.y(), place.x(), place.y()).grown(radius);
    }

    private boolean free(Point place, double radius) {
        return taken.stream().noneMatch(around(place, radius)::overlaps);
    }

    private void ring(Sketch sketch, Point place, int step) {
        double radius = enlarged * RING;
        taken.add(around(place, radius));
        sketch.add(new Shape.Circle(place.x(), place.y(), radius, Stroke.THIN.in(Ink.ACCENT), Ink.WHITE));
        String number = String.valueOf(step);
        double size = enlarged * (number.length() > 2 ? LONG_TEXT : TEXT);
        sketch.text(place.x(), place.y() + size * 0.33, number, size, Weight.SEMIBOLD, Anchor.MIDDLE, Ink.ACCENT);
    }
}
