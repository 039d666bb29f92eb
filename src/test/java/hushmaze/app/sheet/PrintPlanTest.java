package hushmaze.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.app.sheet.PrintPlan.Sheet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: a page is printed at true size wherever the printer has its paper, and only otherwise shrunk. */
class PrintPlanTest {
    // ISO 216:2007 and ANSI/ASME Y14.1 sizes; printers give them in whole points.
    private static final Sheet A4 = new Sheet("A4", 210, 297);
    private static final Sheet A3 = new Sheet("A3", 297, 420);
    private static final Sheet LETTER = new Sheet("Letter", 215.9, 279.4);

    @Test
    void theChosenPaperIsTakenIfItIsThePages() {
        assertThat(PrintPlan.of(210, 297, new Sheet("A4", 209.9, 297.0), List.of(A3), 5))
                .isEqualTo(new PrintPlan(new Sheet("A4", 209.9, 297.0), false, 1));
        assertThat(PrintPlan.of(297, 210, A4, List.of(), 5)).isEqualTo(new PrintPlan(A4, true, 1));
    }

    @Test
    void elseThePrintersOwnPaperOfTheSize() {
        PrintPlan plan = PrintPlan.of(420, 297, A4, List.of(LETTER, A4, A3), 5);
        assertThat(plan).isEqualTo(new PrintPlan(A3, true, 1));
        assertThat(plan.trueSize()).isTrue();
    }

    @Test
    void elseItIsShrunkToWhatCanBePrintedOn() {
        PrintPlan plan = PrintPlan.of(420, 297, A4, List.of(LETTER, A4), 5);
        // (297 - 10) / 420 and (210 - 10) / 297: the smaller one.
        assertThat(plan.scale()).isEqualTo(200.0 / 297, within(1e-12));
        assertThat(plan.sheet()).isEqualTo(A4);
        assertThat(plan.across()).isTrue();
        assertThat(plan.trueSize()).isFalse();
    }

    @Test
    void aSmallPageIsNeverEnlarged() {
        assertThat(PrintPlan.of(100, 150, A4, List.of(), 5).scale()).isEqualTo(1);
    }

    @Test
    void letterIsNotTakenForA4() {
        PrintPlan plan = PrintPlan.of(210, 297, LETTER, List.of(LETTER), 6);
        assertThat(plan.trueSize()).isFalse();
        assertThat(plan.scale()).isEqualTo((279.4 - 12) / 297, within(1e-12));
    }
}
