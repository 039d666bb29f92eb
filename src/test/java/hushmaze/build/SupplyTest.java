package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.Stock;
import hushmaze.work.Progress;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property tests: sheets there are only so many of are taken once, whoever comes first; those bought as needed never run out. */
class SupplyTest {
    private static final Sheet BOUGHT = new Sheet("2440 x 1220", 2.44, 1.22, 40.0, null, "test");
    private static final Sheet PIECE = new Sheet("piece", 1.0, 0.6, null, 2, "test");
    private static final Sheet LINER = new Sheet("1200 x 600", 1.2, 0.6, null, null, "test");

    private static Supply supply(Sheet... boards) {
        return Supply.of(new Stock(
                List.of(boards),
                List.of(LINER),
                new Saw("saw", 0.003, 0, "test"),
                new Screw("screw", 0.004, 0.045, 0.0025, "test")));
    }

    private static NestJob job(Supply supply, int parts) {
        return new NestJob(
                "MDF",
                0.018,
                List.of(new NestPart("B1", parts, 0.9, 0.5, false)),
                supply.stock().boardSheets(),
                0.003,
                0);
    }

    private static SheetLayout layout(Supply supply, NestJob job) {
        Supply.Offer offer = supply.left(job);
        return offer.named(GuillotineNester.nest(offer.whole(), Effort.rounds(0), Progress.NONE));
    }

    private static SheetLayout layout(Supply supply, int parts) {
        return layout(supply, job(supply, parts));
    }

    private static List<Sheet> left(Supply supply) {
        return supply.left(job(supply, 1)).whole().sheets();
    }

    @Test
    void whatIsTakenIsGone() {
        Supply all = supply(PIECE, BOUGHT);
        // a piece of 1000 x 600 holds one part of 900 x 500 and no more
        SheetLayout first = layout(all, 1);
        assertThat(first.sheets()).extracting(SheetPlan::sheet).containsExactly(PIECE);
        Supply left = all.without(first);
        assertThat(left(left)).containsExactly(PIECE.having(1), BOUGHT);
        Supply none = left.without(first);
        assertThat(left(none)).containsExactly(PIECE.having(0), BOUGHT);
        assertThat(layout(none, 1).sheets()).extracting(SheetPlan::sheet).containsExactly(BOUGHT);
        Supply nothing = supply(PIECE).without(first).without(first);
        assertThat(layout(nothing, 1).unplaced()).containsExactly("B1");
        // those bought as needed are not counted
        SheetLayout big = layout(none, 6);
        assertThat(none.without(big)).isEqualTo(none);
    }

    /** The same sheets in two lines of the list: the second serves when the first is used up. */
    @Test
    void linesOfTheSameSheetsAddUp() {
        Supply twice = supply(PIECE, PIECE);
        SheetLayout one = layout(twice, 1);
        Supply gone = twice.without(one).without(one).without(one);
        assertThat(left(gone)).containsExactly(PIECE.having(0), PIECE.having(1));
        assertThat(left(gone.without(one))).containsExactly(PIECE.having(0), PIECE.having(0));
    }

    /** By hand: one part of 900 x 500 leaves most of a sheet of 2440 x 1220, on which there is room for three more at least. */
    @Test
    void theNextBoxIsCutFromWhatTheOneBeforeLeaves() {
        Supply all = supply(BOUGHT);
        SheetLayout first = layout(all, 1);
        Supply after = all.after(List.of(first), "first");
        assertThat(after.keptOffcuts()).isNotEmpty().allMatch(o -> o.path().equals("first") && o.sheet() == 1);
        assertThat(after.keptOffcuts())
                .extracting(KeptOffcut::length)
                .containsExactlyElementsOf(
                        first.offcuts().stream().map(SheetLayout.Offcut::length).toList());
        SheetLayout second = layout(after, 1);
        assertThat(second.unplaced()).isEmpty();
        assertThat(second.sheets()).hasSize(1);
        KeptOffcut used = second.sheets().get(0).from();
        assertThat(after.keptOffcuts()).contains(used);
        assertThat(second.keptOffcuts()).containsExactly(used);
        assertThat(second.sheets().get(0).sheet().length()).isEqualTo(used.length());
        assertThat(second.sheets().get(0).sheet().width()).isEqualTo(used.width());
        assertThat(second.cost()).hasValue(0);
        // what is cut up is gone; what it leaves is there for the third
        Supply third = after.after(List.of(second), "second");
        assertThat(third.keptOffcuts()).doesNotContain(used);
        assertThat(third.keptOffcuts())
                .filteredOn(o -> o.path().equals("second"))
                .hasSameSizeAs(second.offcuts());
        // five parts go on one sheet; box by box, two are enough
        SheetLayout fifth = null;
        Supply left = all;
        int bought = 0;
        for (int box = 0; box < 5; box++) {
            fifth = layout(left, 1);
            bought += fifth.sheets().size() - fifth.keptOffcuts().size();
            left = left.after(List.of(fifth), "box " + box);
        }
        assertThat(bought).isBetween(1, 2);
        assertThat(fifth.unplaced()).isEmpty();
    }

    @Test
    void offcutsAreOfTheirBoardAndThickness() {
        Supply all = supply(BOUGHT);
        Supply after = all.after(List.of(layout(all, 1)), "first");
        List<NestPart> parts = List.of(new NestPart("B1", 1, 0.9, 0.5, false));
        NestJob other = new NestJob("plywood", 0.018, parts, List.of(BOUGHT), 0.003, 0);
        NestJob thin = new NestJob("MDF", 0.012, parts, List.of(BOUGHT), 0.003, 0);
        for (NestJob job : List.of(other, thin)) {
            assertThat(after.left(job).keptOffcuts()).isEmpty();
            assertThat(layout(after, job).sheets()).extracting(SheetPlan::sheet).containsExactly(BOUGHT);
        }
    }

    /** A sheet is not begun for what an offcut holds, whatever the sheet costs, and without any price too. */
    @Test
    void offcutsComeFirst() {
        for (Double price : new Double[] {null, 0.5, 40.0}) {
            Supply all = supply(new Sheet("2440 x 1220", 2.44, 1.22, price, null, "test"));
            Supply after = all.after(List.of(layout(all, 1)), "first");
            assertThat(layout(after, 2).sheets()).allMatch(plan -> plan.from() != null);
        }
    }
}
