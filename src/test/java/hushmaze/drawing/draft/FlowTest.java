package hushmaze.drawing.draft;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: blocks fill pages from the top, and a nearly empty last page is saved when smaller gaps can save it, or
 * shares with the page before. */
class FlowTest {
    private static final Bounds PAGE = new Bounds(0, 0, 100, 100);

    /** Blocks of 8 mm, each with a rule at its top, 2 mm apart. */
    private static List<Block> blocks(int count) {
        Block block = width -> List.of(new Row(2, 8, false, null, new Sketch().line(0, 0, width, 0, Stroke.RULE)));
        return Collections.nCopies(count, block);
    }

    private static List<Integer> counts(int blocks) {
        return Flow.pages(blocks(blocks), PAGE, 1).stream()
                .map(p -> p.shapes().size())
                .toList();
    }

    @Test
    void tenBlocksFillAPage() {
        // By hand: 10 blocks of 8 mm and 9 gaps of 2 mm are 98 mm.
        assertThat(counts(10)).containsExactly(10);
    }

    @Test
    void oneBlockMoreIsSavedBySmallerGaps() {
        // By hand: 11 * 8 + 10 * 2 = 108 mm; with gaps of 0.55 * 2 = 1.1 mm it is 99 mm.
        assertThat(counts(11)).containsExactly(11);
    }

    @Test
    void whatSmallerGapsCannotSaveTakesOverFromThePageBefore() {
        // By hand: 12 * 8 + 11 * 1.1 = 108 mm: two pages, set with whole gaps. Two blocks on the last take 18 mm of
        // 100, three
        // 28, four 38, which is more than 30.
        assertThat(counts(12)).containsExactly(8, 4);
        assertThat(counts(23)).containsExactly(10, 9, 4);
    }

    @Test
    void aLastPageWorthItsPaperStays() {
        assertThat(counts(15)).containsExactly(10, 5);
    }
}
