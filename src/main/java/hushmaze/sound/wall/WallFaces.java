package hushmaze.sound.wall;

import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What of a box's outside lies beside each pass: areas that radiate into the room and lengths of joints.
 *
 * <p>The strip of a pass reaches to the middle of the baffle. It has its share of both broad faces and of both ends; the
 * first and the last pass also have the long sides. Ports are taken off, and so are faces against the building. Joints are
 * the twelve edges of the box, counted whether or not a face beside them is against the building; the four around the front
 * are the cover's, the others are glued.
 */
final class WallFaces {
    private final double[] areas;
    private final double[] glued;
    private final double[] cover;

    /**
     * @param solid of the box
     * @param covered faces against the building
     * @param extra board added all round on the outside, m
     */
    WallFaces(Solid solid, Set<Role> covered, double extra) {
        List<Pass> passes = solid.passes();
        Cuboid outer = extra > 0 ? solid.outer().grown(extra) : solid.outer();
        areas = new double[passes.size()];
        glued = new double[passes.size()];
        cover = new double[passes.size()];
        double low = outer.y0();
        for (int i = 0; i < areas.length; i++) {
            double high = i == areas.length - 1
                    ? outer.y1()
                    : (passes.get(i).clear().y1() + passes.get(i + 1).clear().y0()) / 2;
            addStrip(i, high - low, outer, covered);
            low = high;
        }
        addSide(0, Role.FIRST_SIDE, outer, covered);
        addSide(areas.length - 1, Role.LAST_SIDE, outer, covered);
        takeOff(0, solid.openingPort(), covered);
        takeOff(areas.length - 1, solid.roomPort(), covered);
    }

    /**
     * Faces of a box against the building. The face with the port over the opening is; in a duct run only the back can be,
     * when that port is in it.
     */
    static Set<Role> againstBuilding(Solid solid, Opening opening) {
        Role role = solid.openingPort().role();
        boolean hanging = opening.kind() == Opening.Kind.IN_DUCT && role != Role.BACK;
        return hanging ? EnumSet.noneOf(Role.class) : EnumSet.of(role);
    }

    int passes() {
        return areas.length;
    }

    /** Outer area beside a pass that radiates into the room, m². */
    double area(int pass) {
        return areas[pass];
    }

    /** Length of the glued joints beside a pass, m. */
    double glued(int pass) {
        return glued[pass];
    }

    /** Length of the cover's joints beside a pass, m. */
    double cover(int pass) {
        return cover[pass];
    }

    double allGlued() {
        return sum(glued);
    }

    double allCover() {
        return sum(cover);
    }

    private void addStrip(int pass, double width, Cuboid outer, Set<Role> covered) {
        double length = outer.size(Axis.X);
        double height = outer.size(Axis.Z);
        for (Role role : List.of(Role.BACK, Role.FRONT)) {
            areas[pass] += covered.contains(role) ? 0 : width * length;
        }
        for (Role role : List.of(Role.NEAR_END, Role.FAR_END)) {
            areas[pass] += covered.contains(role) ? 0 : width * height;
        }
        glued[pass] += 2 * width;
        cover[pass] += 2 * width;
    }

    private void addSide(int pass, Role role, Cuboid outer, Set<Role> covered) {
        double length = outer.size(Axis.X);
        double height = outer.size(Axis.Z);
        areas[pass] += covered.contains(role) ? 0 : length * height;
        glued[pass] += length + 2 * height;
        cover[pass] += length;
    }

    private void takeOff(int pass, PortPlace port, Set<Role> covered) {
        double left = areas[pass] - (covered.contains(port.role()) ? 0 : port.area());
        areas[pass] = Math.max(0, left);
    }

    private static double sum(double[] lengths) {
        double sum = 0;
        for (double length : lengths) {
            sum += length;
        }
        return sum;
    }
}
