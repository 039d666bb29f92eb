package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Stock;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Validation: the cut list of a small box worked by hand, and parts that are or are not the same piece. */
class CutListMakerTest {
    private static final Board MDF = new Board("MDF 18", 0.018, 750, 3.5e9, 0.02, false, "test");
    private static final Board OAK = new Board("oak 18", 0.018, 700, 10e9, 0.02, true, "test");
    private static final Liner LINER = new Liner("liner 25", 0.025, 48, 20000, 10000, 30000, 0.0009, "test");

    /** Two passes, clear 140 x 200 x 600, turn gap 150, two layers of 18, lined 25 on every face. */
    private static Solid twoPasses() {
        return SolidBuilder.build(new Box(
                Box.Form.MAZE,
                2,
                0.14,
                0.2,
                0.6,
                0.15,
                List.of(MDF, MDF),
                MDF,
                1,
                LINER,
                LinedFaces.ALL,
                new Port(PortFace.END, 0.1, 0.15, 0),
                new Port(PortFace.BACK, 0.2, 0.1, 0)));
    }

    /**
     * By hand. Cavity: width 2 x (25 + 140 + 25) + 18 = 398, length 600 + 2 x 25 = 650, height 200 + 2 x 25 = 250.
     *
     * <p>First layer outside: 650 + 36 = 686, 398 + 36 = 434, 250 + 36 = 286. Broad faces 686 x 434; sides 686 x 250; ends
     * 398 x 250.
     *
     * <p>Second layer outside: 722, 470, 322. Ends 470 x 322; sides between them 686 x 322; broad faces between all four 686
     * x 434, the same as in the first layer.
     *
     * <p>Baffle: 600 + 25 - 150 = 475 long, 250 high. The inlet pierces both near ends, the outlet both backs.
     *
     * <p>Screws keep 70 from the ends of a joint and are no further apart than 150: along the baffle 475 - 140 = 335 in 3
     * stretches, 4; up its end 250 - 140 = 110, 2; the cover 5 along each side (546 in 4), 3 along each end (258 in 2) and 4
     * along the baffle, 20. At the corners the edge is 9 from the edge of the face, less than 12: brads, no holes.
     */
    @Test
    void boardsOfATwoPassBox() {
        assertThat(lines(CutListMaker.of(twoPasses()).boards()))
                .containsExactly(
                        "B1 1 686.0 434.0 1 4", // back, first layer, with the outlet; screws into the baffle
                        "B2 2 686.0 434.0 0 20", // covers of both layers
                        "B3 1 686.0 434.0 1 0", // back, second layer, with the outlet
                        "B4 2 686.0 322.0 0 0", // sides, second layer
                        "B5 2 686.0 250.0 0 0", // sides, first layer
                        "B6 1 470.0 322.0 1 0", // near end, second layer, with the inlet
                        "B7 1 470.0 322.0 0 0", // far end, second layer
                        "B8 1 475.0 250.0 0 0", // baffle
                        "B9 1 398.0 250.0 1 2", // near end, first layer, with the inlet; screws into the baffle
                        "B10 1 398.0 250.0 0 0"); // far end, first layer
    }

    /**
     * By hand. The first pass with its liners is 190 wide between boards and the baffle 18, so a broad face carries 650 x
     * (190 + 18) with the baffle's foot 475 x 18 cut out, and 650 x 190. Between the broad liners there are 200: sides 600 x
     * 200; the baffle's faces from the end liner to its tip 475 - 25 = 450 x 200; the far end 398 x 200; the near end, parted
     * by the baffle, twice 190 x 200.
     */
    @Test
    void linersOfATwoPassBox() {
        assertThat(lines(CutListMaker.of(twoPasses()).liners()))
                .containsExactly(
                        "L1 2 650.0 208.0 1 0", // broad, first pass, cut out for the baffle
                        "L2 1 650.0 190.0 1 0", // back, last pass, with the outlet
                        "L3 1 650.0 190.0 0 0", // front, last pass
                        "L4 2 600.0 200.0 0 0", // sides
                        "L5 2 450.0 200.0 0 0", // baffle
                        "L6 1 398.0 200.0 0 0", // far end
                        "L7 1 200.0 190.0 1 0", // near end, with the inlet
                        "L8 1 200.0 190.0 0 0"); // near end
    }

    private static List<String> lines(List<CutItem> items) {
        return items.stream()
                .map(item -> String.format(
                        Locale.ROOT,
                        "%s %d %.1f %.1f %d %d",
                        item.mark(),
                        item.quantity(),
                        item.length() * 1000,
                        item.width() * 1000,
                        item.cutouts().size(),
                        item.holes().size()))
                .toList();
    }

    @Test
    void everyPartIsOnTheListOnceAndAreasAgree() {
        Solid solid = twoPasses();
        CutList list = CutListMaker.of(solid);
        List<Part> listed = list.items().flatMap(item -> item.parts().stream()).toList();
        assertThat(listed).containsExactlyInAnyOrderElementsOf(solid.parts().toList());
        list.items().forEach(item -> {
            double holes = item.cutouts().stream().mapToDouble(Cutout::area).sum();
            for (Part part : item.parts()) {
                assertThat(item.length() * item.width() - holes)
                        .isCloseTo(part.faceArea(), org.assertj.core.data.Offset.offset(1e-9));
            }
        });
        assertThat(list.markOf(solid.panels().get(0))).isEqualTo("B1");
    }

    @Test
    void turnedAndTurnedOverPiecesAreTheSame() {
        Cutout corner = new Cutout(0.02, 0.01, 0.12, 0.06);
        Part piece = panel(MDF, 0.5, 0.3, corner);
        // by 180 degrees: 500 - 120 = 380 .. 480 and 300 - 60 = 240 .. 290
        assertThat(together(piece, panel(MDF, 0.5, 0.3, new Cutout(0.38, 0.24, 0.48, 0.29))))
                .isTrue();
        // over its length, over its width
        assertThat(together(piece, panel(MDF, 0.5, 0.3, new Cutout(0.38, 0.01, 0.48, 0.06))))
                .isTrue();
        assertThat(together(piece, panel(MDF, 0.5, 0.3, new Cutout(0.02, 0.24, 0.12, 0.29))))
                .isTrue();
        // the same piece lying across: both directions exchanged
        assertThat(together(piece, panel(MDF, 0.3, 0.5, new Cutout(0.01, 0.02, 0.06, 0.12))))
                .isTrue();
        // a cut-out that is 10 mm off, one that lies across, none, another material, a size that is 2 micrometres off
        assertThat(together(piece, panel(MDF, 0.5, 0.3, new Cutout(0.03, 0.01, 0.13, 0.06))))
                .isFalse();
        assertThat(together(piece, panel(MDF, 0.5, 0.3, new Cutout(0.01, 0.02, 0.06, 0.12))))
                .isFalse();
        assertThat(together(piece, panel(MDF, 0.5, 0.3))).isFalse();
        assertThat(together(piece, panel(OAK, 0.5, 0.3, corner))).isFalse();
        assertThat(together(piece, panel(MDF, 0.500002, 0.3, corner))).isFalse();
    }

    @Test
    void aSquareMayAlsoTurnAQuarterUnlessItHasGrain() {
        Cutout along = new Cutout(0.02, 0.01, 0.12, 0.06);
        Cutout across = new Cutout(0.01, 0.02, 0.06, 0.12);
        assertThat(together(panel(MDF, 0.3, 0.3, along), panel(MDF, 0.3, 0.3, across)))
                .isTrue();
        assertThat(together(panel(OAK, 0.3, 0.3, along), panel(OAK, 0.3, 0.3, across)))
                .isFalse();
    }

    private static Panel panel(Board board, double u, double v, Cutout... cutouts) {
        return new Panel(Role.BACK, 0, 0, board, new Cuboid(0, 0, 0, u, v, 0.018), List.of(cutouts));
    }

    private static boolean together(Part p, Part q) {
        return CutListMaker.items("X", List.of(p, q), part -> List.of(), part -> List.of())
                        .size()
                == 1;
    }

    /** By hand: of the baffle's two liners each ends in the air at the tip alone, so one end of 200 is marked. */
    @Test
    void oneEndOfABaffleLinerIsInTheAir() {
        CutItem liner = CutListMaker.of(twoPasses()).liners().get(4);
        assertThat(liner.length()).isCloseTo(0.45, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(liner.quantity()).isEqualTo(2);
        assertThat(liner.airEdges()).hasSize(1);
        assertThat(liner.airEdges().get(0).length()).isCloseTo(0.2, org.assertj.core.data.Offset.offset(1e-9));
    }

    /** By hand: a groove stays in one face, so a mirror image of a board with a groove is another board. */
    @Test
    void groovesDoNotTurnOver() {
        Groove groove = new Groove(0.02, 0.01, 0.12, 0.06, 0.006, false);
        Panel piece = panel(MDF, 0.5, 0.3).grooved(List.of(groove));
        Panel turned = panel(MDF, 0.5, 0.3).grooved(List.of(new Groove(0.38, 0.24, 0.48, 0.29, 0.006, false)));
        Panel mirrored = panel(MDF, 0.5, 0.3).grooved(List.of(new Groove(0.38, 0.01, 0.48, 0.06, 0.006, false)));
        Panel below = panel(MDF, 0.5, 0.3).grooved(List.of(new Groove(0.38, 0.01, 0.48, 0.06, 0.006, true)));
        Panel deeper = panel(MDF, 0.5, 0.3).grooved(List.of(new Groove(0.02, 0.01, 0.12, 0.06, 0.007, false)));
        assertThat(together(piece, turned)).isTrue();
        assertThat(together(piece, mirrored)).isFalse();
        assertThat(together(piece, below)).isTrue();
        assertThat(together(piece, deeper)).isFalse();
    }

    @Test
    void layoutsPerMaterialWithKerfForBoardsOnly() {
        Sheet board = new Sheet("2440 x 1220", 2.44, 1.22, null, null, "test");
        Sheet liner = new Sheet("1200 x 600", 1.2, 0.6, null, null, "test");
        Stock stock = new Stock(
                List.of(board),
                List.of(liner),
                new Saw("saw", 0.0032, 0.005, "test"),
                new Screw("screw", 0.004, 0.045, 0.0025, "test"));
        List<SheetLayout> layouts = SheetLayouts.of(CutListMaker.of(twoPasses()), stock);
        assertThat(layouts).hasSize(2);
        assertThat(SheetLayouts.ofBoards(CutListMaker.of(twoPasses()), layouts)).containsExactly(layouts.get(0));
        assertThat(layouts.get(0).material()).isEqualTo("MDF 18");
        // Boards by hand: 4 x 0.297724 + 2 x 0.220892 + 2 x 0.1715 + 2 x 0.15134 + 0.11875 + 2 x 0.0995 = 2.596 m2, and
        // a
        // sheet has 2.43 x 1.21 = 2.940 m2.
        assertThat(layouts.get(0).sheets()).hasSize(1);
        assertThat(layouts.get(0).unplaced()).isEmpty();
        assertThat(layouts.get(1).material()).isEqualTo("liner 25");
        assertThat(layouts.get(1).sheets()).allSatisfy(plan -> {
            assertThat(plan.kerf()).isZero();
            assertThat(plan.trim()).isZero();
        });
    }
}
