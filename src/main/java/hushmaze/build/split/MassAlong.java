package hushmaze.build.split;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;
import java.util.List;

/** How the mass of a box is spread along its passes. */
final class MassAlong {
    private final List<Part> parts;
    private final double start;

    MassAlong(Solid solid) {
        this.parts = solid.parts().toList();
        this.start = solid.outer().x0();
    }

    /**
     * Mass from the outer face of the near end up to a plane, kg.
     *
     * @param position of the plane, from that face, m
     */
    double upTo(double position) {
        return parts.stream().mapToDouble(p -> upTo(p, start + position)).sum();
    }

    private static double upTo(Part part, double x) {
        Cuboid bounds = part.bounds();
        if (x >= bounds.x1()) {
            return part.mass();
        }
        if (x <= bounds.x0()) {
            return 0;
        }
        double length = x - bounds.x0();
        if (part.normal() == Axis.X) {
            return part.mass() * length / bounds.size(Axis.X);
        }
        double volume = part.vSize() * length * part.thickness();
        for (Cutout c : part.cutouts()) {
            volume -= within(c.u0(), c.u1(), length) * (c.v1() - c.v0()) * part.thickness();
        }
        for (Groove g : part.grooves()) {
            volume -= within(g.u0(), g.u1(), length) * (g.v1() - g.v0()) * g.depth();
        }
        return volume * part.density();
    }

    private static double within(double from, double to, double end) {
        return Math.max(0, Math.min(to, end) - from);
    }
}
