package hushmaze.build.joint;

import hushmaze.project.Seam;
import hushmaze.solid.Axis;
import hushmaze.solid.Panel;
import hushmaze.solid.Seal;
import hushmaze.solid.Solid;

/** Where two stretches of one board meet at a seam. */
public final class SeamEdges {
    private static final double SAME = 1e-6;

    private SeamEdges() {}

    /** Whether the second board is glued to the first one's far end: the same wall, layer and baffle, one stretch on. */
    static boolean meet(Panel p, Panel q) {
        return p.role() == q.role()
                && p.number() == q.number()
                && p.layer() == q.layer()
                && p.stretch() + 1 == q.stretch()
                && p.normal() != Axis.X
                && Math.abs(p.bounds().x1() - q.bounds().x0()) < SAME;
    }

    /** Length of the joint at the end of a board, m. */
    static double length(Panel p) {
        return p.normal() == Axis.Y ? p.bounds().size(Axis.Z) : p.bounds().size(Axis.Y);
    }

    /** Area of all glued seams' edges, m². */
    public static double glued(Solid solid) {
        double area = 0;
        for (Panel p : solid.panels()) {
            for (Panel q : solid.panels()) {
                area += meet(p, q) ? length(p) * p.thickness() : 0;
            }
        }
        return area;
    }

    /** Length of the gaskets between the stretches of a box that comes apart, m: along every board that parts. */
    public static double partingGasket(Solid solid) {
        double length = 0;
        for (Seal seal : solid.seals()) {
            if (seal.kind() == Seal.Kind.PARTING_GASKET) {
                double y = seal.bounds().size(Axis.Y);
                double z = seal.bounds().size(Axis.Z);
                length += Math.max(y, z);
            }
        }
        return length;
    }

    /** Whether the box comes apart. */
    public static boolean parts(Solid solid) {
        return solid.box().seams().stream().anyMatch(s -> s.kind() == Seam.Kind.PARTING);
    }
}
