package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.material.Sheet;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Validation: small random layouts against the true least number of sheets, from a search through everything and, for cuts
 * that may run anywhere, from a general constraint solver.
 */
class SmallLayoutsTest {
    private static final Effort SHORT = Effort.rounds(1_500);

    private static int[][] pieces(SplittableRandom random, int count, int from, int to) {
        int[][] pieces = new int[count][2];
        for (int[] piece : pieces) {
            piece[0] = from + random.nextInt(to - from + 1);
            piece[1] = from + random.nextInt(to - from + 1);
        }
        return pieces;
    }

    /** Sizes in mm. */
    private static SheetLayout nest(int[][] pieces, int length, int width, int kerf) {
        List<NestPart> parts = new ArrayList<>();
        for (int i = 0; i < pieces.length; i++) {
            parts.add(new NestPart("P" + i, 1, pieces[i][0] / 1000.0, pieces[i][1] / 1000.0, false));
        }
        Sheet sheet = new Sheet("sheet", length / 1000.0, width / 1000.0, null, null, "test");
        NestJob job = new NestJob("board", 0.018, parts, List.of(sheet), kerf / 1000.0, 0);
        SheetLayout layout = GuillotineNester.nest(job, SHORT, Progress.NONE);
        assertThat(LayoutCheck.faults(layout, job)).isEmpty();
        assertThat(layout.unplaced()).isEmpty();
        return layout;
    }

    @Test
    void theLeastNumberOfSheetsIsFoundWithKerf() {
        SplittableRandom random = new SplittableRandom(21);
        for (int i = 0; i < 150; i++) {
            int[][] pieces = pieces(random, 4 + random.nextInt(4), 60, 500);
            int kerf = random.nextInt(3) * 3;
            int least = ExactGuillotine.sheets(pieces, 800, 600, kerf);
            SheetLayout layout = nest(pieces, 800, 600, kerf);
            assertThat(layout.sheets()).as("case %d", i).hasSize(least);
            assertThat(layout.lowerBound()).as("case %d", i).isLessThanOrEqualTo(least);
            assertThat(layout.provedBest()).isEqualTo(layout.lowerBound() == least);
        }
    }

    /** Where a search through everything knows a first cut along the sheet, the layout begins with one. */
    @Test
    void theFirstCutRunsAlongTheSheetWhereItCan() {
        SplittableRandom random = new SplittableRandom(23);
        int along = 0;
        int found = 0;
        for (int i = 0; i < 150; i++) {
            int[][] pieces = pieces(random, 3 + random.nextInt(4), 60, 450);
            int kerf = random.nextInt(3) * 3;
            if (ExactGuillotine.oneSheetWithAStripLeft(pieces, 800, 600, kerf)) {
                along++;
                SheetPlan plan = nest(pieces, 800, 600, kerf).sheets().get(0);
                CutNode.Cut first = (CutNode.Cut) plan.cuts();
                found += first.along() == CutNode.Along.LENGTH ? 1 : 0;
            }
        }
        assertThat(along).isGreaterThan(60);
        assertThat(found).isEqualTo(along);
    }

    @Test
    void cutsThatMayRunAnywhereNeedNoMoreSheets() {
        SplittableRandom random = new SplittableRandom(22);
        int equal = 0;
        int cases = 60;
        for (int i = 0; i < cases; i++) {
            int[][] pieces = pieces(random, 4 + random.nextInt(3), 2, 7);
            int free = FreeCutting.sheets(pieces, 10, 10);
            int[][] millimetres = new int[pieces.length][2];
            for (int k = 0; k < pieces.length; k++) {
                millimetres[k][0] = 10 * pieces[k][0];
                millimetres[k][1] = 10 * pieces[k][1];
            }
            SheetLayout layout = nest(millimetres, 100, 100, 0);
            assertThat(layout.sheets().size()).as("case %d", i).isGreaterThanOrEqualTo(free);
            assertThat(layout.lowerBound()).as("case %d", i).isLessThanOrEqualTo(free);
            equal += layout.sheets().size() == free ? 1 : 0;
        }
        // cuts from edge to edge seldom cost a sheet: four pieces round a hole are the least example
        assertThat(equal).isGreaterThan(cases * 9 / 10);
    }

    @Test
    void theSolverKnowsThatThePinwheelFitsOneSheet() {
        // 3 x 2 four times round a hole of 1 x 1 in 5 x 5, which no cut from edge to edge can make
        int[][] pinwheel = {{3, 2}, {3, 2}, {3, 2}, {3, 2}};
        assertThat(FreeCutting.sheets(pinwheel, 5, 5)).isEqualTo(1);
        assertThat(ExactGuillotine.sheets(pinwheel, 5, 5, 0)).isEqualTo(2);
    }
}
