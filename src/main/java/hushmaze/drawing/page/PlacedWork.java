package hushmaze.drawing.page;

import hushmaze.build.SheetPlan;
import hushmaze.build.joint.Hole;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.draft.Scale;
import hushmaze.solid.Cutout;

/**
 * Where what is done to a panel comes to lie on its sheet. A panel that lies across the sheet is turned a quarter to the left,
 * with the face that is seen still up.
 */
record PlacedWork(SheetPlan.Placed panel) {
    private static final Scale FULL = new Scale(1);

    /** The panel itself in true size, the sheet's corner at the origin and its width upwards, mm. */
    Bounds whole() {
        return picture(panel.x(), panel.y(), panel.x() + panel.length(), panel.y() + panel.width());
    }

    /** A rectangle of the panel, mm. */
    Bounds bounds(Cutout c) {
        Hole a = onSheet(new Hole(c.u0(), c.v0()));
        Hole b = onSheet(new Hole(c.u1(), c.v1()));
        return picture(Math.min(a.u(), b.u()), Math.min(a.v(), b.v()), Math.max(a.u(), b.u()), Math.max(a.v(), b.v()));
    }

    /** A hole of the panel measured from the sheet's corner, m. */
    Hole onSheet(Hole hole) {
        return panel.rotated()
                ? new Hole(panel.x() + panel.length() - hole.v(), panel.y() + hole.u())
                : new Hole(panel.x() + hole.u(), panel.y() + hole.v());
    }

    private static Bounds picture(double x0, double y0, double x1, double y1) {
        return new Bounds(FULL.paper(x0), -FULL.paper(y1), FULL.paper(x1), -FULL.paper(y0));
    }
}
