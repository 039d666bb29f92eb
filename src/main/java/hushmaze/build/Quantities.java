package hushmaze.build;

import hushmaze.project.Port;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * The small things a box takes, from its joints and faces.
 *
 * <p>Counted: glued joints of the innermost layer (four uprights, the four edges of the back, every baffle along the back and
 * up its fixed end), glue on their faces and on whole layers laid on each other, one litre on 6.6 m²; sealant along the same
 * joints; the cover's joint with its gasket and the baffles' edges under it; a gasket around the port at the opening; screws in
 * both, the first and last 70 mm from the corners and no further apart than 150 mm; adhesive on the back of every liner piece;
 * paint on the outside without the ports.
 *
 * <p>Source: glue, a film of 0.15 mm as a glue maker's arithmetic has it; 70 mm from corners, an MDF industry guide, as read;
 * 150 mm apart, common practice, no source. Range: any box. Accuracy: exact lengths and areas; buy a tenth more. Differs from
 * the source: none.
 *
 * @param glueArea faces with glue on them, m²
 * @param glue litres, as m³
 * @param sealant length of its bead, m
 * @param gasket length, m
 * @param screws in joints and cover together
 * @param linerAdhesive area, m²
 * @param paint area, m²
 */
public record Quantities(
        double glueArea, double glue, double sealant, double gasket, int screws, double linerAdhesive, double paint) {
    /** Area a litre of glue covers, as m² for a m³. */
    private static final double GLUE_COVERS = 6600;

    private static final double FROM_CORNER = 0.07;
    private static final double APART = 0.15;

    /** What a box takes. */
    public static Quantities of(Solid solid) {
        Cuboid cavity = solid.cavity();
        List<Double> glued = new ArrayList<>();
        List<Double> cover = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            glued.add(cavity.size(Axis.X));
            glued.add(cavity.size(Axis.Y));
            cover.add(cavity.size(Axis.X));
            cover.add(cavity.size(Axis.Y));
        }
        for (int i = 0; i < 4; i++) {
            glued.add(cavity.size(Axis.Z));
        }
        for (Panel panel : solid.panels()) {
            if (panel.role() == Role.BAFFLE && panel.layer() == 0) {
                glued.add(panel.bounds().size(Axis.X));
                glued.add(panel.bounds().size(Axis.Z));
                cover.add(panel.bounds().size(Axis.X));
            }
        }
        double sealant = sum(glued);
        Port port = solid.openingPort().port();
        double gasket = sum(cover) + 2 * (port.width() + port.height());
        double glueArea = sealant * innerBoard(solid) + laminated(solid);
        return new Quantities(
                glueArea,
                glueArea / GLUE_COVERS,
                sealant,
                gasket,
                screws(glued) + screws(cover),
                solid.liners().stream().mapToDouble(LinerPiece::faceArea).sum(),
                paint(solid));
    }

    private static double sum(List<Double> lengths) {
        return lengths.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Screws along joints of these lengths, two at least in each. */
    static int screws(List<Double> lengths) {
        int count = 0;
        for (double length : lengths) {
            double between = Math.max(0, length - 2 * FROM_CORNER);
            count += 1 + Math.max(1, (int) Math.ceil(between / APART - 1e-9));
        }
        return count;
    }

    private static double innerBoard(Solid solid) {
        return solid.box().shell().get(0).thickness();
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
