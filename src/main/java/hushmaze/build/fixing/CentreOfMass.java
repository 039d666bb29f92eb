package hushmaze.build.fixing;

import hushmaze.solid.Axis;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;

/** Where the weight of a box acts; screws, glue and sealant are not counted. */
public final class CentreOfMass {
    /** m/s². */
    static final double GRAVITY = 9.80665;

    private CentreOfMass() {}

    /** Place along an axis from the solid's origin, m. */
    public static double along(Solid solid, Axis axis) {
        double moment = solid.parts().mapToDouble(p -> moment(p, axis)).sum();
        return moment / solid.mass();
    }

    /** Mass times place; what is cut out is taken out. */
    private static double moment(Part part, Axis axis) {
        double middle = part.bounds().centre(axis);
        double whole = part.uSize() * part.vSize() * middle;
        for (Cutout hole : part.cutouts()) {
            double at = middle;
            if (axis == part.normal().u()) {
                at = part.bounds().low(axis) + (hole.u0() + hole.u1()) / 2;
            } else if (axis == part.normal().v()) {
                at = part.bounds().low(axis) + (hole.v0() + hole.v1()) / 2;
            }
            whole -= hole.area() * at;
        }
        double moment = whole * part.thickness();
        for (Groove groove : part.grooves()) {
            moment -= groove.volume() * middle(part, groove, axis);
        }
        return moment * part.density();
    }

    private static double middle(Part part, Groove groove, Axis axis) {
        double low = part.bounds().low(axis);
        if (axis == part.normal().u()) {
            return low + (groove.u0() + groove.u1()) / 2;
        }
        if (axis == part.normal().v()) {
            return low + (groove.v0() + groove.v1()) / 2;
        }
        return groove.inLowFace() ? low + groove.depth() / 2 : part.bounds().high(axis) - groove.depth() / 2;
    }
}
