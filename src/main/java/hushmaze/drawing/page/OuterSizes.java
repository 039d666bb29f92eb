package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.axon.Isometric;
import hushmaze.drawing.draft.Arrow;
import hushmaze.drawing.draft.Lettering;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import java.util.Arrays;

/** The three outer sizes of a box along the edges of its picture. */
final class OuterSizes {
    private static final double SIZE = Lettering.TABLE;
    /** Between an edge and the line along it, mm on paper along an axis. */
    private static final double OFF = 4;

    private final Job job;
    private final Cuboid outer;

    OuterSizes(Job job) {
        this.job = job;
        this.outer = job.result().solid().outer();
    }

    /** Room the figures take at either side of the picture, mm. */
    double beside() {
        return OFF
                + 1
                + Arrays.stream(Axis.values())
                        .mapToDouble(axis -> job.measure().width(words(axis), SIZE, Weight.REGULAR))
                        .max()
                        .orElseThrow();
    }

    /** Adds lines and figures to a picture of the box where it stands. */
    void draw(Sketch sketch, Isometric view) {
        double off = OFF / view.scale();
        Point near = view.paper(outer.x0(), outer.y0() - off, outer.z0());
        Point right = view.paper(outer.x1(), outer.y0() - off, outer.z0());
        line(sketch, near, right, words(Axis.X), Anchor.START);
        near = view.paper(outer.x0() - off, outer.y0(), outer.z0());
        Point left = view.paper(outer.x0() - off, outer.y1(), outer.z0());
        line(sketch, near, left, words(Axis.Y), Anchor.END);
        Point low = view.paper(outer.x1() + off, outer.y0(), outer.z0());
        Point high = view.paper(outer.x1() + off, outer.y0(), outer.z1());
        line(sketch, low, high, words(Axis.Z), Anchor.START);
    }

    private static void line(Sketch sketch, Point from, Point to, String words, Anchor anchor) {
        Stroke stroke = Stroke.THIN.in(Ink.ACCENT);
        double x = (from.x() + to.x()) / 2;
        double y = (from.y() + to.y()) / 2;
        Arrow.line(sketch, x, y, from.x(), from.y(), stroke);
        Arrow.line(sketch, x, y, to.x(), to.y(), stroke);
        boolean upright = from.x() == to.x();
        double beside = anchor == Anchor.START ? 1.2 : -1.2;
        double foot = upright ? y + SIZE * TextMeasure.CAPITAL / 2 : y + SIZE;
        sketch.text(x + beside, foot, words, SIZE, anchor);
    }

    private String words(Axis axis) {
        return job.length(outer.size(axis));
    }
}
