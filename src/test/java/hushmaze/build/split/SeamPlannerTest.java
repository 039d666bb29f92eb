package hushmaze.build.split;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.Construction;
import hushmaze.project.Doorway;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Seam;
import hushmaze.project.Stock;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.store.Presets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Validation: seams of boxes whose sizes are worked by hand beside each test. */
class SeamPlannerTest {
    private static final Board MDF = new Board("MDF 18", 0.018, 750, 3.5e9, 0.02, false, "test");
    private static final Board PLY = new Board("Plywood 18", 0.018, 600, 8e9, 0.02, true, "test");

    /** One pass with a port in each end: everything is alike along it but the ends. */
    static Box straight(Board board, int layers, double clearLength) {
        Port end = new Port(PortFace.END, 0.2, 0.2, 0);
        List<Board> shell = java.util.Collections.nCopies(layers, board);
        return new Box(Box.Form.MAZE, 1, 0.3, 0.2, clearLength, 0, shell, board, 1, null, LinedFaces.NONE, end, end);
    }

    static Stock stock(double length, double width) {
        Saw saw = new Saw("saw", 0.003, 0.005, "test");
        Screw screw = Presets.load().screws().get(0);
        Sheet board = new Sheet("board", length, width, null, null, "test");
        Sheet liner = new Sheet("liner", 1.2, 0.6, null, null, "test");
        return new Stock(List.of(board), List.of(liner), saw, screw);
    }

    static Construction construction(Double maxMass, Doorway doorway) {
        Liner liner = new Liner("liner 25", 0.025, 48, 20000, 10000, 30000, 0.0009, "test");
        return new Construction(
                MDF, 1, 1, liner, false, PortFace.END, PortFace.END, maxMass, null, Joinery.usual(), doorway);
    }

    private static SeamPlan plan(Box box, Stock stock, Double maxMass, Doorway doorway) {
        return new SeamPlanner(construction(maxMass, doorway), stock, UnitSystem.METRIC).plan(box);
    }

    @Test
    void aBoxThatNeedsNoneGetsNone() {
        assertThat(plan(straight(MDF, 1, 1), stock(2.44, 1.22), null, null))
                .isEqualTo(new SeamPlan(List.of(), List.of()));
    }

    @Test
    void aLongBoardIsGluedInTheMiddle() {
        // 3000 clear + 2*18 = 3036 mm outside; sheets give 2440 - 2*5 = 2430: one seam, the middle is 1518, round 1520.
        assertThat(plan(straight(MDF, 1, 3), stock(2.44, 1.22), null, null).seams())
                .containsExactly(new Seam(Seam.Kind.GLUED, 1.52));
    }

    @Test
    void theSecondLayerIsPartedFurtherOnAndMustFitToo() {
        // Two layers: 2940 + 72 = 3012 outside. Sheets of 1640 give 1630. The outer layer parts 100 mm further on: its
        // first piece, from 0 or 18 on, reaches to at most 1630 (the front and back, which cover the ends in one layer,
        // or
        // start 18 in, in the other). Pieces beyond: 3012 - at <= 1630, so at >= 1382. Middle 1506 -> 1606 <= 1630
        // fits.
        SeamPlan plan = plan(straight(MDF, 2, 2.94), stock(1.64, 1.22), null, null);
        assertThat(plan.seams()).containsExactly(new Seam(Seam.Kind.GLUED, 1.51));
        // Sheets of 1600 give 1590: 1506 + 100 is too long where a layer begins at 0; at 1490 - with 18 to spare - it
        // is not.
        SeamPlan shorter = plan(straight(MDF, 2, 2.94), stock(1.6, 1.22), null, null);
        assertThat(shorter.seams()).hasSize(1);
        assertThat(shorter.seams().get(0).position()).isBetween(1.45, 1.5);
    }

    @Test
    void grainKeepsABoardFromLyingAcross() {
        // Sheet 1220 along the grain by 2440 across: a board of 1536 x 236 goes on it across only.
        Stock turned = stock(1.22, 2.44);
        assertThat(plan(straight(MDF, 1, 1.5), turned, null, null).seams()).isEmpty();
        assertThat(plan(straight(PLY, 1, 1.5), turned, null, null).seams())
                .containsExactly(new Seam(Seam.Kind.GLUED, 0.77));
    }

    @Test
    void aHeavyBoxComesApartWhereItsHalvesWeighTheSame() {
        Box box = straight(MDF, 1, 2);
        double mass = SolidBuilder.build(box).mass();
        // Alike at both ends: outside 2036, the middle is 1018, nearest round 1020.
        SeamPlan plan = plan(box, stock(2.44, 1.22), 0.6 * mass, null);
        assertThat(plan.seams()).containsExactly(new Seam(Seam.Kind.PARTING, 1.02));
        SeamPlan three = plan(box, stock(2.44, 1.22), 0.4 * mass, null);
        assertThat(three.seams()).hasSize(2).allMatch(s -> s.kind() == Seam.Kind.PARTING);
        Solid parted = SolidBuilder.build(box.joined(box.joinery(), three.seams()));
        assertThat(parted.modules())
                .hasSize(3)
                .allSatisfy(m -> assertThat(m.mass()).isCloseTo(mass / 3, within(0.02 * mass)));
    }

    @Test
    void aPartGoesThroughADoorAnyWayRound() {
        // Outside 2036 x 336 x 236: through a door of 800 x 300 the 336 goes up it, whatever the length.
        assertThat(plan(straight(MDF, 1, 2), stock(2.44, 1.22), null, new Doorway(0.3, 0.8))
                        .seams())
                .isEmpty();
        // Through a hatch of 300 x 300 a part goes with its 236 and its length, 300 at most: 2036 / 300 asks for 6
        // seams.
        SeamPlan hatch = plan(straight(MDF, 1, 2), stock(2.44, 1.22), null, new Doorway(0.3, 0.3));
        assertThat(hatch.seams()).isEmpty();
        assertThat(hatch.obstacles()).hasSize(1);
        assertThat(hatch.obstacles().get(0).kind()).isEqualTo(Obstacle.Kind.PART_LENGTH);
        assertThat(hatch.obstacles().get(0).limit()).isEqualTo(0.3);
        // 1000 clear, 1036 outside: parts of 300 at most ask for three seams.
        SeamPlan short1 = plan(straight(MDF, 1, 1), stock(2.44, 1.22), null, new Doorway(0.3, 0.3));
        assertThat(short1.seams()).hasSize(3).allMatch(s -> s.kind() == Seam.Kind.PARTING);
    }

    @Test
    void aDoorTooLowForTheBoxIsTold() {
        // 336 x 236 outside; the door lets 230 by 230 through: the 236 is in the way.
        SeamPlan plan = plan(straight(MDF, 1, 2), stock(2.44, 1.22), null, new Doorway(0.23, 0.23));
        assertThat(plan.obstacles()).singleElement().satisfies(o -> {
            assertThat(o.kind()).isEqualTo(Obstacle.Kind.DOOR);
            assertThat(o.value()).isCloseTo(0.236, within(1e-9));
            assertThat(o.limit()).isEqualTo(0.23);
        });
    }

    @Test
    void aBoardTooWideForEverySheetIsToldAndTheRestIsMended() {
        // Front and back are 336 wide. Sheets 1000 x 310 give 990 x 300: no strip holds 336 unless it is at most 300
        // long;
        // of the sides, 200 high, pieces of 990 do, so 2000 + 36 asks for two seams.
        SeamPlan plan = plan(straight(MDF, 1, 2), stock(1.0, 0.21), null, null);
        assertThat(plan.obstacles())
                .extracting(Obstacle::kind, Obstacle::role)
                .contains(
                        org.assertj.core.groups.Tuple.tuple(Obstacle.Kind.BOARD, Role.FRONT),
                        org.assertj.core.groups.Tuple.tuple(Obstacle.Kind.BOARD, Role.BACK));
        assertThat(plan.obstacles()).allSatisfy(o -> {
            assertThat(o.value()).isGreaterThan(o.limit());
            assertThat(o.limit()).isCloseTo(0.2, within(1e-9));
        });
        assertThat(plan.seams()).hasSize(2).allMatch(s -> s.kind() == Seam.Kind.GLUED);
    }

    @Test
    void inchesAreRoundInHalves() {
        Box box = straight(MDF, 1, 3);
        SeamPlan plan = new SeamPlanner(construction(null, null), stock(2.44, 1.22), UnitSystem.INCH).plan(box);
        // 1518 mm is 59.76 in: 60 in is nearer than 59 1/2.
        assertThat(plan.seams()).containsExactly(new Seam(Seam.Kind.GLUED, 1.524));
    }
}
