package hushmaze.solid;

import hushmaze.project.Box;
import hushmaze.project.Seam;
import java.util.List;
import java.util.Optional;

/** Where the boards part at a seam, and where along a box a seam may be. */
public final class SeamPlaces {
    /** How far the joints of two layers are apart at a glued seam, m; common practice, no source. */
    public static final double STAGGER = 0.1;
    /** Least distance from a seam to a port, a baffle's tip or the face of an end, lined or bare, m; our own judgement. */
    static final double KEEP_OFF = 0.03;

    /** Rounding of places that are just far enough, m. */
    private static final double SLACK = 1e-9;

    private final Box box;
    private final Cuboid cavity;
    private final Cuboid outer;
    private final List<PortPlace> ports;
    private final List<Cuboid> baffles;

    SeamPlaces(Box box, Cuboid cavity, Cuboid outer, List<PortPlace> ports, List<Cuboid> baffles) {
        this.box = box;
        this.cavity = cavity;
        this.outer = outer;
        this.ports = List.copyOf(ports);
        this.baffles = List.copyOf(baffles);
    }

    /** The places of a solid that is there already, with or without seams. */
    public static SeamPlaces of(Solid solid) {
        return new SeamPlaces(
                solid.box(),
                solid.cavity(),
                solid.outer(),
                List.of(solid.openingPort(), solid.roomPort()),
                solid.baffles());
    }

    /** Where a layer parts at a seam, from the solid's origin, m; baffles and liner part where layer 0 does. */
    public double plane(Seam seam, int layer) {
        double x = outer.x0() + seam.position();
        return seam.kind() == Seam.Kind.GLUED && layer % 2 == 1 ? x + STAGGER : x;
    }

    /** What a seam would be too near to; nothing if it may be there. */
    public Optional<String> inTheWay(Seam seam) {
        int planes = seam.kind() == Seam.Kind.GLUED && box.shell().size() > 1 ? 2 : 1;
        for (int layer = 0; layer < planes; layer++) {
            double x = plane(seam, layer);
            if (near(x - cavity.x0() - box.endLiner()) || near(cavity.x1() - box.endLiner() - x)) {
                return Optional.of("an end");
            }
            for (PortPlace port : ports) {
                boolean inEnd = port.role().normal() == Axis.X;
                if (!inEnd
                        && near(Math.max(port.hole().x0() - x, x - port.hole().x1()))) {
                    return Optional.of("a port");
                }
            }
        }
        for (int i = 0; i < baffles.size(); i++) {
            // every other baffle starts at the near end and has its tip towards the far one
            double tip = i % 2 == 0 ? baffles.get(i).x1() : baffles.get(i).x0();
            if (near(Math.abs(tip - plane(seam, 0)))) {
                return Optional.of("a baffle's tip");
            }
        }
        return Optional.empty();
    }

    private static boolean near(double distance) {
        return distance < KEEP_OFF - SLACK;
    }
}
