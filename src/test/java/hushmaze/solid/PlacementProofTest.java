package hushmaze.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Seam;
import hushmaze.quantity.InvalidValue;
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

    /** Play 0.5, gasket 3, grooves 6; the box of two layers of 18, cavity 850 x 654 x 300. */
    private static Solid joined() {
        return SolidBuilder.build(fourPasses().joined(new Joinery(0.0005, 0.003, 0.006), List.of()));
    }

    /**
     * Validation, by hand. Walls of the first layer under the cover are 300 - 3 high; those of the second run past it, 300 + 72.
     * The cover lies in the frame of the second layer's walls, 850 + 36 by 654 + 36, with 0.5 all round: 885 x 689, both
     * layers; so does the back's second layer, but not its first. A baffle is let in 6 - 0.5 into back and end: 715 + 5.5 by
     * 300 - 3 + 5.5. Grooves are 18 + 0.5 wide; the back has three, 6 + 715 + 0.25 long.
     */
    @Test
    void jointsMoveCutSizesOnly() {
        Solid solid = joined();
        assertThat(solid.outer()).isEqualTo(SolidBuilder.build(fourPasses()).outer());
        assertThat(solid.passes()).isEqualTo(SolidBuilder.build(fourPasses()).passes());
        assertSize(panel(solid, Role.FIRST_SIDE, 0), 0.886, 0.297);
        assertSize(panel(solid, Role.FIRST_SIDE, 1), 0.886, 0.372);
        assertSize(panel(solid, Role.FRONT, 0), 0.885, 0.689);
        assertSize(panel(solid, Role.FRONT, 1), 0.885, 0.689);
        assertSize(panel(solid, Role.BACK, 0), 0.886, 0.690);
        assertSize(panel(solid, Role.BACK, 1), 0.885, 0.689);
        assertSize(panel(solid, Role.BAFFLE, 0), 0.7205, 0.3025);
        List<Groove> grooves = panel(solid, Role.BACK, 0).grooves();
        assertThat(grooves).hasSize(3).allSatisfy(g -> {
            assertThat(g.u1() - g.u0()).isCloseTo(0.72125, within());
            assertThat(g.v1() - g.v0()).isCloseTo(0.0185, within());
        });
        assertThat(panel(solid, Role.NEAR_END, 0).grooves()).hasSize(2);
        assertThat(panel(solid, Role.FAR_END, 0).grooves()).hasSize(1);
    }

    private static void assertSize(Panel panel, double u, double v) {
        assertThat(panel.uSize()).isCloseTo(u, within());
        assertThat(panel.vSize()).isCloseTo(v, within());
    }

    @Test
    void aForgottenGasketIsALeakAndAForgottenGrooveAnOverlap() {
        Solid solid = joined();
        List<Seal> noGasket = new ArrayList<>(solid.seals());
        noGasket.removeIf(s -> s.kind() == Seal.Kind.COVER_GASKET);
        // The cover's rim is filled, so the gap under the cover shows as air that is not the path's.
        assertThat(PlacementProof.faults(sealed(solid, solid.panels(), noGasket)))
                .contains(PlacementProof.Fault.AIR_VOLUME);
        assertThat(PlacementProof.faults(sealed(solid, solid.panels(), List.of())))
                .contains(PlacementProof.Fault.LEAK);
        List<Panel> plain =
                solid.panels().stream().map(p -> p.grooved(List.of())).toList();
        assertThat(PlacementProof.faults(sealed(solid, plain, solid.seals()))).contains(PlacementProof.Fault.OVERLAP);
    }

    /**
     * Validation, by hand. One layer; a seam that comes apart at 400 from the outside with a gasket of 3: boards of 886 become
     * 400 - 1.5 and 486 - 1.5; the box is carried as 400 and 486.
     */
    @Test
    void aBoxThatComesApart() {
        Box whole = fourPasses();
        Box box = whole.ofBoards(List.of(MDF), MDF)
                .joined(new Joinery(0, 0.003, 0), List.of(new Seam(Seam.Kind.PARTING, 0.4)));
        Solid solid = SolidBuilder.build(box);
        assertThat(PlacementProof.faults(solid)).isEmpty();
        List<Panel> backs =
                solid.panels().stream().filter(p -> p.role() == Role.BACK).toList();
        assertThat(backs).hasSize(2);
        assertThat(backs.get(0).uSize()).isCloseTo(0.3985, within());
        assertThat(backs.get(1).uSize()).isCloseTo(0.4845, within());
        assertThat(backs.get(1).stretch()).isEqualTo(1);
        assertThat(solid.modules()).hasSize(2);
        assertThat(solid.modules().get(0).bounds().size(Axis.X)).isCloseTo(0.4, within());
        assertThat(solid.modules().stream().mapToDouble(Module::mass).sum()).isCloseTo(solid.mass(), within());
    }

    /** Layers of a glued seam part 100 mm apart, so that no joint lies over another; bad places are refused by name. */
    @Test
    void aGluedSeamIsStaggered() {
        Box box = fourPasses().joined(Joinery.PLAIN, List.of(new Seam(Seam.Kind.GLUED, 0.4)));
        Solid solid = SolidBuilder.build(box);
        assertThat(PlacementProof.faults(solid)).isEmpty();
        double inner = solid.panels().stream()
                .filter(p -> p.role() == Role.BACK && p.layer() == 0)
                .findFirst()
                .orElseThrow()
                .bounds()
                .x1();
        double outer = solid.panels().stream()
                .filter(p -> p.role() == Role.BACK && p.layer() == 1)
                .findFirst()
                .orElseThrow()
                .bounds()
                .x1();
        assertThat(outer - inner).isCloseTo(0.1, within());
        assertThat(solid.modules()).hasSize(1);
        // The port at the opening covers 61 to 261 from the outside, and its stagger reaches it too.
        assertThatThrownBy(() -> SolidBuilder.build(
                        fourPasses().joined(Joinery.PLAIN, List.of(new Seam(Seam.Kind.GLUED, 0.15)))))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("seams[0].position")
                .hasMessageContaining("a port");
        assertThatThrownBy(() ->
                        SolidBuilder.build(fourPasses().joined(Joinery.PLAIN, List.of(new Seam(Seam.Kind.PARTING, 3)))))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("an end");
    }

    private static Panel panel(Solid solid, Role role, int layer) {
        return solid.panels().stream()
                .filter(p -> p.role() == role && p.layer() == layer)
                .findFirst()
                .orElseThrow();
    }

    private static Solid with(Solid solid, List<Panel> panels, List<LinerPiece> liners) {
        return with(solid, panels, liners, solid.seals());
    }

    private static Solid sealed(Solid solid, List<Panel> panels, List<Seal> seals) {
        return with(solid, panels, solid.liners(), seals);
    }

    private static Solid with(Solid solid, List<Panel> panels, List<LinerPiece> liners, List<Seal> seals) {
        return new Solid(
                solid.box(),
                solid.cavity(),
                solid.outer(),
                panels,
                liners,
                seals,
                solid.baffles(),
                solid.passes(),
                solid.turns(),
                solid.openingPort(),
                solid.roomPort());
    }

    private static Offset<Double> within() {
        return Offset.offset(1e-9);
    }

    /**
     * Property: every board and liner piece is one body that hangs together and reaches all four sides of its bounds, whatever its
     * cut-outs take together. What is left is found here by painting a grid between all edges, apart from the code under test.
     * Among random boxes there are ports as high as their wall, in the middle of it, which leave a piece on either side, and
     * ports as wide and high as an end, which leave none.
     */
    @Test
    void partsAreWhatIsLeftOfThem() {
        RandomBoxes boxes = new RandomBoxes(404);
        int divided = 0;
        int dividedBoards = 0;
        int open = 0;
        for (int i = 0; i < 2_500; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            solid.parts()
                    .forEach(part -> assertThat(OnePiece.whole(part))
                            .as("%s of %s", part, solid.box())
                            .isTrue());
            divided += count(solid.liners(), Role.FIRST_SIDE) > 1 ? 1 : 0;
            dividedBoards += count(solid.panels(), Role.FIRST_SIDE) > 1 ? 1 : 0;
            open += count(solid.panels(), Role.NEAR_END) == 0 ? 1 : 0;
        }
        assertThat(divided).isPositive();
        assertThat(dividedBoards).isPositive();
        assertThat(open).isPositive();
    }

    private static long count(List<? extends Part> parts, Role role) {
        return parts.stream()
                .filter(p -> p.role() == role && p.stretch() == 0 && p.layer() == 0)
                .count();
    }
}
