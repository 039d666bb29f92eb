package hushmaze.build.joint;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds where the boards of the innermost layer, baffles among them, meet edge to face. Read from the boards in their
 * places: two meet if they are no further apart than the gasket, or the edge is let in no deeper than the groove.
 */
final class Joints {
    private static final double SLACK = 1e-7;

    private final double apart;
    private final double within;

    private Joints(Solid solid) {
        this.apart = solid.box().joinery().gasket() + SLACK;
        this.within = solid.box().joinery().groove() + SLACK;
    }

    static List<Joint> of(Solid solid) {
        Joints joints = new Joints(solid);
        List<Joint> all = new ArrayList<>();
        for (Panel face : solid.panels()) {
            if (face.role() == Role.BAFFLE || face.layer() > 0) {
                continue;
            }
            for (Panel edge : solid.panels()) {
                if (edge.normal() != face.normal() && (edge.role() == Role.BAFFLE || edge.layer() == 0)) {
                    joints.meet(face, edge, all);
                }
            }
        }
        return all;
    }

    private void meet(Panel face, Panel edge, List<Joint> into) {
        Axis n = face.normal();
        boolean low = face.role().isLow();
        double gap = low
                ? edge.bounds().low(n) - face.bounds().high(n)
                : face.bounds().low(n) - edge.bounds().high(n);
        if (gap > apart || gap < -within) {
            return;
        }
        Axis across = edge.normal();
        Axis along = n.u() == across ? n.v() : n.u();
        double from = Math.max(face.bounds().low(along), edge.bounds().low(along));
        double to = Math.min(face.bounds().high(along), edge.bounds().high(along));
        Cuboid strip = edge.bounds();
        double width = Math.min(face.bounds().high(across), strip.high(across))
                - Math.max(face.bounds().low(across), strip.low(across));
        if (to - from > SLACK && width > SLACK) {
            into.add(new Joint(
                    face, edge, face.role() == Role.FRONT, along, from, to, across, strip.centre(across), width));
        }
    }
}
