package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.build.joint.Hole;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.draft.Scale;
import hushmaze.solid.AirEdge;
import hushmaze.solid.Groove;

/** What is to be done to a part besides sawing it: grooves, screw holes, edges to seal. */
final class PlateWork {
    /** Half a hole's cross, mm on paper. */
    static final double CROSS = 1.1;
    /** Distance of the line that marks an edge to seal from that edge, mm on paper. */
    static final double INSIDE = 1.2;
    /** A step off an edge, to see on which side of it the part is, m. */
    private static final double STEP = 1e-4;

    private final CutItem item;

    PlateWork(CutItem item) {
        this.item = item;
    }

    void draw(Sketch sketch, Scale scale) {
        grooves(sketch, scale);
        for (Hole hole : item.holes()) {
            double x = scale.paper(hole.u());
            double y = -scale.paper(hole.v());
            sketch.line(x - CROSS, y, x + CROSS, y, Stroke.THIN);
            sketch.line(x, y - CROSS, x, y + CROSS, Stroke.THIN);
        }
        edgesToSeal(sketch, scale);
    }

    /** Grooves alone. */
    void grooves(Sketch sketch, Scale scale) {
        for (Groove g : item.grooves()) {
            sketch.rectangle(
                    new Bounds(scale.paper(g.u0()), -scale.paper(g.v1()), scale.paper(g.u1()), -scale.paper(g.v0())),
                    Stroke.THIN,
                    null);
        }
    }

    /** Edges to seal alone. */
    void edgesToSeal(Sketch sketch, Scale scale) {
        item.airEdges().forEach(edge -> mark(edge, sketch, scale));
    }

    private void mark(AirEdge e, Sketch sketch, Scale scale) {
        boolean level = e.v1() - e.v0() < e.u1() - e.u0();
        double u = (e.u0() + e.u1()) / 2;
        double v = (e.v0() + e.v1()) / 2;
        boolean beyond = level ? inPart(u, v + STEP) : inPart(u + STEP, v);
        double off = beyond ? INSIDE : -INSIDE;
        double x0 = scale.paper(e.u0()) + (level ? 0 : off);
        double x1 = scale.paper(e.u1()) + (level ? 0 : off);
        double y0 = -scale.paper(e.v0()) - (level ? off : 0);
        double y1 = -scale.paper(e.v1()) - (level ? off : 0);
        sketch.line(x0, y0, x1, y1, Stroke.HIDDEN);
    }

    private boolean inPart(double u, double v) {
        return u > 0
                && v > 0
                && u < item.length()
                && v < item.width()
                && item.cutouts().stream().noneMatch(c -> u > c.u0() && u < c.u1() && v > c.v0() && v < c.v1());
    }
}
