package hushmaze.build.joint;

import hushmaze.solid.Axis;
import hushmaze.solid.Panel;
import hushmaze.solid.Seal;
import hushmaze.solid.Solid;
import java.util.List;

/** Where two stretches of one board meet at a seam. */
public final class SeamEdges {
    private static final double SAME = 1e-6;

    private SeamEdges() {}

    /** Every board to whose far end the next stretch of the same wall, layer or baffle is glued. */
    public static List<Panel> glued(Solid solid) {
        return solid.panels().stream()
                .filter(p -> solid.panels().stream().anyMatch(q -> meet(p, q)))
                .toList();
    }

    /** Whether the far end of one board is glued to the near end of the other. */
    public static boolean meet(Panel p, Panel q) {
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
    public static double gluedArea(Solid solid) {
        return glued(solid).stream().mapToDouble(p -> length(p) * p.thickness()).sum();
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
}
