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

    private static SheetLayout layout(Supply supply, int parts) {
        NestJob job = new NestJob(
                "MDF",
                0.018,
                List.of(new NestPart("B1", parts, 0.9, 0.5, false)),
                supply.left(supply.stock().boardSheets()),
                0.003,
                0);
        return GuillotineNester.nest(job, Effort.rounds(0), Progress.NONE);
    }

    @Test
    void whatIsTakenIsGone() {
        Supply all = supply(PIECE, BOUGHT);
        assertThat(all.isLimited()).isTrue();
        assertThat(supply(BOUGHT).isLimited()).isFalse();
        // a piece of 1000 x 600 holds one part of 900 x 500 and no more
        SheetLayout first = layout(all, 1);
        assertThat(first.sheets()).extracting(SheetPlan::sheet).containsExactly(PIECE);
        Supply left = all.after(List.of(first));
        assertThat(left.left(List.of(PIECE, BOUGHT))).containsExactly(PIECE.having(1), BOUGHT);
        Supply none = left.after(List.of(first));
        assertThat(none.left(List.of(PIECE, BOUGHT))).containsExactly(PIECE.having(0), BOUGHT);
        assertThat(layout(none, 1).sheets()).extracting(SheetPlan::sheet).containsExactly(BOUGHT);
        Supply nothing = supply(PIECE).after(List.of(first, first));
        assertThat(layout(nothing, 1).unplaced()).containsExactly("B1");
        // those bought as needed are not counted
        SheetLayout big = layout(none, 6);
        assertThat(none.after(List.of(big))).isEqualTo(none);
    }

    /** The same sheets in two lines of the list: the second serves when the first is used up. */
    @Test
    void linesOfTheSameSheetsAddUp() {
        Supply twice = supply(PIECE, PIECE);
        SheetLayout one = layout(twice, 1);
        Supply left = twice.after(List.of(one, one, one));
        assertThat(left.left(List.of(PIECE, PIECE))).containsExactly(PIECE.having(0), PIECE.having(1));
        assertThat(left.after(List.of(one)).left(List.of(PIECE, PIECE)))
                .containsExactly(PIECE.having(0), PIECE.having(0));
    }
}
