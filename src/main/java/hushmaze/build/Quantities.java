package hushmaze.build;

import hushmaze.build.joint.Fastening;
import hushmaze.build.joint.Joint;
import hushmaze.build.joint.SeamEdges;
import hushmaze.material.Liner;
import hushmaze.project.Port;
import hushmaze.solid.AirEdge;
import hushmaze.solid.AirEdges;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.List;

/**
 * The small things a box takes by length and area, from its joints and faces; fasteners are counted by {@link
 * hushmaze.build.joint.FastenerList}.
 *
 * <p>Counted: glue on the edges that meet a face in the innermost layer, baffles among them, on whole layers laid on each other and on
 * glued seams, one litre on 6.6 m²; sealant inside along the same joints, on both sides of a baffle, and once around the outside of
 * the face with the opening's port, where the box meets the building; the cover's joints with their
 * gasket, a gasket around the port at the opening and between the parts of a box that comes apart; adhesive on the back of
 * every liner piece; facing, if the liner has one, on what lies towards the air; sealing of liner edges in the air; paint on the outside without the ports.
 *
 * <p>Source: glue, a film of 0.15 mm as a glue maker's arithmetic has it, as read. Range: any box. Accuracy: exact lengths and
 * areas; buy a tenth more. Differs from the source: none.
 *
 * @param glueArea faces with glue on them, m²
 * @param glue litres, as m³
 * @param sealant length of its bead, m
 * @param gasket length, m
 * @param linerAdhesive area, m²
 * @param facing area of the liner that lies towards the air, m²; zero if it has no facing
 * @param linerEdges length of liner edges to seal, m
 * @param paint area, m²
 */
public record Quantities(
        double glueArea,
        double glue,
        double sealant,
        double gasket,
        double linerAdhesive,
        double facing,
        double linerEdges,
        double paint) {
    /** Area a litre of glue covers, as m² for a m³. */
    public static final double GLUE_COVERS = 6600;

    /** What a box takes. */
    public static Quantities of(Solid solid) {
        double sealant = 0;
        double cover = 0;
        double edges = 0;
        for (Fastening.Held held : Fastening.of(solid).held()) {
            Joint joint = held.joint();
            boolean once = joint.edge().role() != Role.BAFFLE || joint.edge().layer() == 0;
            if (joint.cover()) {
                cover += once ? joint.length() : 0;
            } else {
                boolean baffle = joint.edge().role() == Role.BAFFLE;
                sealant += once ? (baffle ? 2 : 1) * joint.length() : 0;
                edges += joint.area();
            }
        }
        Port port = solid.openingPort().port();
        double mouth = around(solid);
        double gasket = cover + 2 * (port.width() + port.height()) + SeamEdges.partingGasket(solid);
        double glueArea = edges + laminated(solid) + SeamEdges.gluedArea(solid);
        return new Quantities(
                glueArea,
                glueArea / GLUE_COVERS,
                sealant + mouth,
                gasket,
                solid.liners().stream().mapToDouble(LinerPiece::faceArea).sum(),
                faced(solid),
                AirEdges.of(solid).values().stream()
                        .flatMap(List::stream)
                        .mapToDouble(AirEdge::length)
                        .sum(),
                paint(solid));
    }

    /** Around the outside of the face that meets the building. */
    private static double around(Solid solid) {
        Axis normal = solid.openingPort().role().normal();
        return 2 * (solid.outer().size(normal.u()) + solid.outer().size(normal.v()));
    }

    private static double faced(Solid solid) {
        Liner liner = solid.box().liner();
        if (liner == null || liner.facing() == null) {
            return 0;
        }
        return solid.liners().stream()
                .filter(piece -> piece.isOutermost(solid.box().linedFaces()))
                .mapToDouble(LinerPiece::faceArea)
                .sum();
    }

    /** Faces of layers that lie on the layer before. */
    private static double laminated(Solid solid) {
        double area = 0;
        for (Panel panel : solid.panels()) {
            if (panel.layer() > 0) {
                area += panel.faceArea();
            }
        }
        return area;
    }

    private static double paint(Solid solid) {
        Cuboid outer = solid.outer();
        double x = outer.size(Axis.X);
        double y = outer.size(Axis.Y);
        double z = outer.size(Axis.Z);
        return 2 * (x * y + y * z + z * x)
                - solid.openingPort().area()
                - solid.roomPort().area();
    }
}
