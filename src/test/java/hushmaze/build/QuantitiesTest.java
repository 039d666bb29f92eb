package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Facing;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.solid.AirEdges;
import hushmaze.solid.Axis;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import java.util.List;
import org.junit.jupiter.api.Test;

/** <em>Validation</em> worked by hand and <em>property</em> tests of what a box takes besides sheets. */
class QuantitiesTest {
    /**
     * By hand: one bare pass, clear 100 x 300 x 600 mm, single board: the sides run over the ends, so
     * joints 2 · (0.636 + 0.1) + 4 · 0.3 = 2.672 m, cover 1.472 m and
     * a port of 0.08 x 0.25 m, 0.66 m around; the end that meets the building is 0.1 x 0.3 m and two boards more each way.
     */
    @Test
    void onePassByHand() {
        Port end = new Port(PortFace.END, 0.08, 0.25, 0);
        Solid solid = SolidBuilder.build(SampleBoxes.maze(1, 0.6, null, LinedFaces.NONE, 1, end, end));
        Quantities q = Quantities.of(solid);
        double board = solid.box().shell().get(0).thickness();
        assertThat(q.sealant()).isCloseTo(2.672 + 2 * (0.1 + 0.3 + 4 * board), within(1e-12));
        assertThat(q.gasket()).isCloseTo(1.472 + 0.66, within(1e-12));
        assertThat(q.glueArea()).isCloseTo(2.672 * board, within(1e-12));
        assertThat(q.glue() * 1000).isCloseTo(2.672 * board / 6.6, within(1e-12));
        assertThat(q.linerAdhesive()).isZero();
        double x = 0.6 + 2 * board;
        double y = 0.1 + 2 * board;
        double z = 0.3 + 2 * board;
        assertThat(q.paint()).isCloseTo(2 * (x * y + y * z + z * x) - 0.04, within(1e-12));
        assertThat(q.linerEdges()).isZero();
    }

    /**
     * By hand: the same with ports as wide and high as the pass. There are no ends: back and two sides, joints 2 · 0.636 m,
     * cover as much, a port of 0.1 x 0.3 m, 0.8 m around.
     */
    @Test
    void openEndsTakeNoGlue() {
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Solid solid = SolidBuilder.build(SampleBoxes.maze(1, 0.6, null, LinedFaces.NONE, 1, end, end));
        assertThat(solid.panels()).hasSize(4);
        Quantities q = Quantities.of(solid);
        double board = solid.box().shell().get(0).thickness();
        assertThat(q.sealant()).isCloseTo(1.272 + 2 * (0.1 + 0.3 + 4 * board), within(1e-12));
        assertThat(q.gasket()).isCloseTo(1.272 + 0.8, within(1e-12));
        assertThat(q.glueArea()).isCloseTo(1.272 * board, within(1e-12));
    }

    /**
     * By hand: one pass, clear 100 x 300 x 600 mm, two layers of 25 mm on the sides and one on the ends with ports as large as the pass:
     * the facing lies on the outer layers, 2 · 0.6 · 0.3 m², and on the strips of the ends beside the ports, four of 0.05 · 0.3 m².
     */
    @Test
    void theFacingLiesOnTheOuterLayers() {
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Liner liner = SampleBoxes.liner(0.025);
        LinedFaces faces = new LinedFaces(2, 0, 1, 0);
        Facing film = new Facing("film", 0.03, null, "invented for a test");
        Box bare = SampleBoxes.maze(1, 0.6, liner, faces, 1, end, end);
        assertThat(Quantities.of(SolidBuilder.build(bare)).facing()).isZero();
        Solid solid = SolidBuilder.build(bare.withLiner(liner.faced(film)));
        assertThat(Quantities.of(solid).facing()).isCloseTo(2 * 0.6 * 0.3 + 4 * 0.05 * 0.3, within(1e-12));
    }

    /** Property: what is glued and sealed grows with layers and baffles; nothing is lost or negative for any box. */
    @Test
    void anyBox() {
        RandomBoxes boxes = new RandomBoxes(31);
        for (int i = 0; i < 200; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            Quantities q = Quantities.of(solid);
            double edges = 4
                    * (solid.cavity().size(Axis.X)
                            + solid.cavity().size(Axis.Y)
                            + solid.cavity().size(Axis.Z));
            // A port as high as its wall has no joints at its sides.
            double ports =
                    around(solid.openingPort().port()) + around(solid.roomPort().port());
            assertThat(q.sealant() + q.gasket()).isGreaterThan(edges - ports);
            assertThat(q.glueArea()).isPositive();
            assertThat(q.linerEdges() > 0)
                    .isEqualTo(!AirEdges.of(solid).values().stream().allMatch(List::isEmpty));
            assertThat(q.paint()).isPositive();
            double lined = solid.liners().stream()
                    .mapToDouble(l -> l.volume() / l.thickness())
                    .sum();
            assertThat(q.linerAdhesive()).isCloseTo(lined, within(1e-9));
        }
    }

    private static double around(Port port) {
        return 2 * (port.width() + port.height());
    }
}
