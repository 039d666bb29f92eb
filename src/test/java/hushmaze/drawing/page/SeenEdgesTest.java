package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.build.CutItem;
import hushmaze.build.CutListMaker;
import hushmaze.solid.Axis;
import hushmaze.solid.Cutout;
import hushmaze.solid.Part;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import hushmaze.solid.SolidBuilder;
import org.junit.jupiter.api.Test;

/**
 * Property: a cut-out's distance from the left and the lower edge of a drawing is its distance in the box from the sides that
 * are said to lie there.
 */
class SeenEdgesTest {
    private static final double MICROMETRE = 1e-6;

    @Test
    void cutoutsLieAsFarFromTheSideOfTheBoxAsFromTheEdgeOfTheDrawing() {
        int seen = 0;
        RandomBoxes boxes = new RandomBoxes(2911);
        for (int box = 0; box < 40; box++) {
            for (CutItem item :
                    CutListMaker.of(SolidBuilder.build(boxes.next())).boards()) {
                for (int i = 0; i < item.quantity(); i++) {
                    Part part = item.parts().get(i);
                    if (item.cutouts().size() == 1 && part.cutouts().size() == 1) {
                        SeenEdges edges = SeenEdges.of(part, item.turnings().get(i));
                        Cutout drawn = item.cutouts().get(0);
                        assertThat(drawn.u0()).isCloseTo(distance(part, edges.left()), within(MICROMETRE));
                        assertThat(drawn.v0()).isCloseTo(distance(part, edges.lower()), within(MICROMETRE));
                        seen++;
                    }
                }
            }
        }
        assertThat(seen).isGreaterThan(40);
    }

    /** Of the cut-out of a part as it is built in, from the edge at a side of the box, m. */
    private static double distance(Part part, Role side) {
        Cutout hole = part.cutouts().get(0);
        Axis axis = side.normal();
        boolean alongU = part.normal().u() == axis;
        double low = alongU ? hole.u0() : hole.v0();
        double high = alongU ? part.uSize() - hole.u1() : part.vSize() - hole.v1();
        return side.isLow() ? low : high;
    }
}
