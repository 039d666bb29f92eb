package hushmaze.solid;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Property: the parts of any box, put back in their places, close around the air path and nothing else. The proof itself
 * is shown to notice each kind of damage.
 */
class PlacementProofTest {
    private static final Board MDF = new Board("MDF 18", 0.018, 750, 3.5e9, 0.02, false, "test");
    private static final Liner LINER = new Liner("liner 25", 0.025, 48, 20000, 10000, 30000, 0.0009, "test");

    private static Box fourPasses() {
        Port inlet = new Port(PortFace.BACK, 0.2, 0.1, 0);
        Port outlet = new Port(PortFace.SIDE, 0.2, 0.15, 0.05);
        return new Box(
                Box.Form.MAZE,
                4,
                0.1,
                0.25,
                0.8,
                0.11,
                List.of(MDF, MDF),
                MDF,
                1,
                LINER,
                LinedFaces.ALL,
                inlet,
                outlet);
    }

    @Test
    void partsOfTenThousandRandomBoxesClose() {
        RandomBoxes boxes = new RandomBoxes(20261125);
        for (int i = 0; i < 10_000; i++) {
            Box box = boxes.next();
            assertThat(PlacementProof.faults(SolidBuilder.build(box)))
                    .as("box %d: %s", i, box)
                    .isEmpty();
        }
    }

    @Test
    void cavityAddsUpFromClearSizesLinersAndBaffles() {
        Solid solid = SolidBuilder.build(fourPasses());
        // By hand: 4 passes of 100 between two liners of 25, and 3 baffles of 18: 4*150 + 3*18 = 654 mm.
        assertThat(solid.cavity().size(Axis.Y)).isCloseTo(0.654, within());
        // 800 + 2*25 = 850 mm; 250 + 2*25 = 300 mm; the shell adds 2*36 = 72 mm to each.
        assertThat(solid.cavity().size(Axis.X)).isCloseTo(0.850, within());
        assertThat(solid.cavity().size(Axis.Z)).isCloseTo(0.300, within());
        assertThat(solid.outer().size(Axis.X)).isCloseTo(0.922, within());
        assertThat(solid.outer().size(Axis.Y)).isCloseTo(0.726, within());
        assertThat(solid.outer().size(Axis.Z)).isCloseTo(0.372, within());
        // Baffle: 850 - 25 - 110 = 715 mm long, board to board 300 mm high.
        Panel baffle = solid.panels().stream()
                .filter(p -> p.role() == Role.BAFFLE)
                .findFirst()
                .orElseThrow();
        assertThat(baffle.bounds().size(Axis.X)).isCloseTo(0.715, within());
        assertThat(baffle.bounds().size(Axis.Z)).isCloseTo(0.300, within());
    }

    @Test
    void cornerJointsOfTheTwoLayersDoNotLieOverEachOther() {
        Solid solid = SolidBuilder.build(fourPasses());
        Panel innerSide = panel(solid, Role.FIRST_SIDE, 0);
        Panel outerSide = panel(solid, Role.FIRST_SIDE, 1);
        // The inner long side runs over the ends: 850 + 2*18; the outer one butts between them: the same 886 mm.
        assertThat(innerSide.bounds().size(Axis.X)).isCloseTo(0.886, within());
        assertThat(outerSide.bounds().size(Axis.X)).isCloseTo(0.886, within());
        // The inner long side butts between the broad faces, the outer one covers their edges.
        assertThat(innerSide.bounds().size(Axis.Z)).isCloseTo(0.300, within());
        assertThat(outerSide.bounds().size(Axis.Z)).isCloseTo(0.372, within());
    }

    @Test
    void missingPanelIsALeak() {
        Solid solid = SolidBuilder.build(fourPasses());
        List<Panel> fewer = new ArrayList<>(solid.panels());
        fewer.removeIf(p -> p.role() == Role.FAR_END);
        assertThat(PlacementProof.faults(with(solid, fewer, solid.liners())))
                .contains(PlacementProof.Fault.LEAK, PlacementProof.Fault.AIR_VOLUME);
    }

    @Test
    void missingLinerIsABareFace() {
        Solid solid = SolidBuilder.build(fourPasses());
        List<LinerPiece> fewer = new ArrayList<>(solid.liners());
        fewer.removeIf(p -> p.role() == Role.BAFFLE && p.number() == 1 && p.layer() == 0);
        assertThat(PlacementProof.faults(with(solid, solid.panels(), fewer)))
                .contains(PlacementProof.Fault.BARE_FACE, PlacementProof.Fault.AIR_VOLUME);
    }

    @Test
    void thickerBoardThanThoughtOverlaps() {
        Solid solid = SolidBuilder.build(fourPasses());
        List<Panel> thicker = new ArrayList<>(solid.panels());
        Panel baffle = thicker.get(thicker.size() - 1);
        Cuboid swollen = baffle.bounds()
                .with(Axis.Y, baffle.bounds().y0(), baffle.bounds().y1() + 0.0004);
        thicker.set(thicker.size() - 1, new Panel(baffle.role(), baffle.number(), 0, MDF, swollen, List.of()));
        assertThat(PlacementProof.faults(with(solid, thicker, solid.liners()))).contains(PlacementProof.Fault.OVERLAP);
    }

    @Test
    void baffleThatReachesTheEndClosesThePath() {
        Solid solid = SolidBuilder.build(fourPasses());
        List<Panel> panels = new ArrayList<>(solid.panels());
        Panel baffle = panels.get(panels.size() - 1);
        Cuboid longer = baffle.bounds().with(Axis.X, 0, solid.cavity().x1());
        panels.set(panels.size() - 1, new Panel(baffle.role(), baffle.number(), 0, MDF, longer, List.of()));
        assertThat(PlacementProof.faults(with(solid, panels, List.of()))).contains(PlacementProof.Fault.NO_PATH);
    }

    private static Panel panel(Solid solid, Role role, int layer) {
        return solid.panels().stream()
                .filter(p -> p.role() == role && p.layer() == layer)
                .findFirst()
                .orElseThrow();
    }

    private static Solid with(Solid solid, List<Panel> panels, List<LinerPiece> liners) {
        return new Solid(
                solid.box(),
                solid.cavity(),
                solid.outer(),
                panels,
                liners,
                solid.seals(),
                solid.baffles(),
                solid.passes(),
                solid.turns(),
                solid.openingPort(),
                solid.roomPort());
    }

    private static Offset<Double> within() {
        return Offset.offset(1e-9);
    }
}
