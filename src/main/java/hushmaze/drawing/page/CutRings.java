package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
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
        double x0 = scale.paper(line.x0());
        double y0 = -scale.paper(line.y0());
        double x1 = scale.paper(line.x1());
        double y1 = -scale.paper(line.y1());
        double length = Math.hypot(x1 - x0, y1 - y0);
        double radius = enlarged * RING;
        for (double at = radius + enlarged * FROM_END; at <= length; at += radius / 2) {
            double x = x0 + (x1 - x0) * at / length;
            double y = y0 + (y1 - y0) * at / length;
            if (free(x, y, radius)) {
                ring(sketch, x, y, line.step().number());
                return;
            }
        }
        for (double out = radius + enlarged * FROM_END; out <= enlarged * FARTHEST; out += radius / 2) {
            for (boolean end : new boolean[] {true, false}) {
                double at = end ? length + out : -out;
                double x = x0 + (x1 - x0) * at / length;
                double y = y0 + (y1 - y0) * at / length;
                if (free(x, y, radius)) {
                    sketch.line(end ? x1 : x0, end ? y1 : y0, x, y, Stroke.THIN.in(Ink.ACCENT));
                    ring(sketch, x, y, line.step().number());
                    return;
                }
            }
        }
    }

    private boolean free(double x, double y, double radius) {
        Bounds ring = new Bounds(x, y, x, y).grown(radius);
        return taken.stream().noneMatch(ring::overlaps);
    }

    private void ring(Sketch sketch, double x, double y, int step) {
        double radius = enlarged * RING;
        taken.add(new Bounds(x, y, x, y).grown(radius));
        sketch.add(new Shape.Circle(x, y, radius, Stroke.THIN.in(Ink.ACCENT), Ink.WHITE));
        String number = String.valueOf(step);
        double size = enlarged * (number.length() > 2 ? LONG_TEXT : TEXT);
        sketch.text(x, y + size * 0.33, number, size, Weight.SEMIBOLD, Anchor.MIDDLE, Ink.ACCENT);
    }
}
