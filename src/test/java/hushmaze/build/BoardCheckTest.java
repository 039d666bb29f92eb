package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Seam;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What moves when the real board is not as thick as thought. */
class BoardCheckTest {
    private static final Board MDF = new Board("MDF 18", 0.018, 750, 3.5e9, 0.02, false, "test");

    private static Box twoPasses(Board board, int layers) {
        Port end = new Port(PortFace.END, 0.1, 0.15, 0);
        return new Box(
                Box.Form.MAZE,
                2,
                0.14,
                0.2,
                0.6,
                0.15,
                Collections.nCopies(layers, board),
                board,
                1,
                null,
                LinedFaces.NONE,
                end,
                end);
    }

    /**
     * Validation, by hand. Bare passes of 140 x 200 x 600, one layer, t thick: cavity 600 x (280 + t) x 200. Broad faces (600 +
     * 2t) x (280 + 3t); sides (600 + 2t) x 200; ends (280 + t) x 200; the baffle 450 x 200 does not move. Outside 600 + 2t, 280 + 3t, 200 + 2t. From 18.0 to
     * 18.4: broad faces 636 x 334 become 636.8 x 335.2, ends 298 becomes 298.4.
     */
    @Test
    void oneLayerByHand() {
        Solid solid = SolidBuilder.build(twoPasses(MDF, 1));
        CutList list = CutListMaker.of(solid);
        List<BoardCheck> checks = BoardCheck.of(solid, list);
        assertThat(checks).hasSize(1);
        BoardCheck check = checks.get(0);
        assertThat(check.outer()).isEqualTo(new BoardCheck.Outside(2, 3, 2));
        assertThat(check.between()).isEqualTo(1);
        // Cut for 18.0 from 18.4: the back must cover 298 - 18 = 280 + 18 + 2 x 18.4 = 334.8 and is 334.
        assertThat(check.ignored(solid, 0.0004).step()).isCloseTo(0.0008, within(1e-9));
        assertThat(check.ignored(solid, 0.0004).closes()).isTrue();
        assertThat(check.ignored(solid, 0).step()).isZero();
        for (BoardCheck.Change change : check.changes()) {
            double length = change.item().length() + 0.0004 * change.length();
            double width = change.item().width() + 0.0004 * change.width();
            switch (change.parts().get(0).role()) {
                case BACK, FRONT -> {
                    assertThat(length).isCloseTo(0.6368, within(1e-9));
                    assertThat(width).isCloseTo(0.3352, within(1e-9));
                }
                case FIRST_SIDE, LAST_SIDE -> {
                    assertThat(length).isCloseTo(0.6368, within(1e-9));
                    assertThat(width).isCloseTo(0.2, within(1e-9));
                }
                case NEAR_END, FAR_END -> {
                    assertThat(length).isCloseTo(0.2984, within(1e-9));
                    assertThat(width).isCloseTo(0.2, within(1e-9));
                }
                case BAFFLE -> throw new AssertionError("the baffle does not move");
            }
        }
        assertThat(check.changes().stream().flatMap(c -> c.parts().stream())).hasSize(6);
    }

    /**
     * Validation, by hand: four passes, two layers. Outside 4t along and up; across 4t and three baffles. Cut for 18.0 from 18.4,
     * the outer layer's ends must reach over four boards, 1.6 more; three baffles take 1.2 from the passes.
     */
    @Test
    void twoLayersByHand() {
        Port end = new Port(PortFace.END, 0.1, 0.15, 0);
        Box box = new Box(
                Box.Form.MAZE, 4, 0.14, 0.2, 0.6, 0.15, List.of(MDF, MDF), MDF, 1, null, LinedFaces.NONE, end, end);
        Solid solid = SolidBuilder.build(box);
        BoardCheck check = BoardCheck.of(solid, CutListMaker.of(solid)).get(0);
        assertThat(check.outer()).isEqualTo(new BoardCheck.Outside(4, 7, 4));
        assertThat(check.between()).isEqualTo(3);
        assertThat(check.ignored(solid, 0.0004).step()).isCloseTo(0.0016, within(1e-9));
    }

    /**
     * Regression: between ports that leave a seam just one place there is no room for a thicker board, and still the check is
     * made. Outside 18 + 300 + 30: the ports end at 318 and begin at 378.
     */
    @Test
    void aSeamWithoutRoomToSpare() {
        Port first = new Port(PortFace.SIDE, 0.3, 0.15, 0);
        Port last = new Port(PortFace.SIDE, 0.24, 0.15, 0);
        Box box = new Box(Box.Form.MAZE, 1, 0.14, 0.2, 0.6, 0, List.of(MDF), MDF, 1, null, LinedFaces.NONE, first, last)
                .joined(Joinery.PLAIN, List.of(new Seam(Seam.Kind.PARTING, 0.348)));
        Solid solid = SolidBuilder.build(box);
        assertThat(BoardCheck.of(solid, CutListMaker.of(solid)).get(0).outer())
                .isEqualTo(new BoardCheck.Outside(2, 2, 2));
    }

    /** Property: every size of any box is linear in the thickness: predicted and built sizes agree for boards far off. */
    @Test
    void sizesAreLinear() {
        RandomBoxes boxes = new RandomBoxes(71);
        int compared = 0;
        int moved = 0;
        for (int i = 0; i < 400; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            CutList list = CutListMaker.of(solid);
            Board first = solid.box().shell().get(0);
            BoardCheck check = BoardCheck.of(solid, list).get(0);
            assertThat(check.board()).isEqualTo(first);
            double more = 0.0007;
            Board measured = BoardCheck.withThickness(first, first.thickness() + more);
            List<Board> shell = solid.box().shell().stream()
                    .map(b -> b.equals(first) ? measured : b)
                    .toList();
            Board baffle = solid.box().baffleBoard().equals(first)
                    ? measured
                    : solid.box().baffleBoard();
            Solid built;
            try {
                built = SolidBuilder.build(solid.box().ofBoards(shell, baffle));
            } catch (InvalidValue aSeamThatFindsNoPlace) {
                assertThat(aSeamThatFindsNoPlace.field()).startsWith("seams");
                continue;
            }
            for (BoardCheck.Change change : check.changes()) {
                for (Part part : change.parts()) {
                    Panel panel = built.panels().get(solid.panels().indexOf((Panel) part));
                    int number = change.item().parts().indexOf(part);
                    boolean exchanged = change.item().turnings().get(number).exchange();
                    double length = exchanged ? panel.vSize() : panel.uSize();
                    double width = exchanged ? panel.uSize() : panel.vSize();
                    assertThat(change.item().length() + more * change.length()).isCloseTo(length, within(1e-9));
                    assertThat(change.item().width() + more * change.width()).isCloseTo(width, within(1e-9));
                    Plate laid = Plate.of(panel, List.of())
                            .turned(change.item().turnings().get(number));
                    assertThat(places(laid.cutouts(), laid.grooves()))
                            .usingElementComparator(SAME_PLACE)
                            .containsExactlyInAnyOrderElementsOf(expected(change, more));
                    moved += change.features().size();
                }
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(1000);
        assertThat(moved).isGreaterThan(300);
    }

    private static final Comparator<Cutout> SAME_PLACE =
            (p, q) -> Stream.of(p.u0() - q.u0(), p.v0() - q.v0(), p.u1() - q.u1(), p.v1() - q.v1())
                            .allMatch(d -> Math.abs(d) < 1e-9)
                    ? 0
                    : 1;

    private static List<Cutout> places(List<Cutout> cutouts, List<Groove> grooves) {
        return Stream.concat(cutouts.stream(), grooves.stream().map(g -> new Cutout(g.u0(), g.v0(), g.u1(), g.v1())))
                .toList();
    }

    /** Where the cut-outs and grooves of an item are to be, moved or not. */
    private static List<Cutout> expected(BoardCheck.Change change, double more) {
        List<Cutout> all =
                new ArrayList<>(places(change.item().cutouts(), change.item().grooves()));
        change.features().forEach(feature -> {
            all.remove(feature.place());
            all.add(feature.at(more));
        });
        return all;
    }
}
