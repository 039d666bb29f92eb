package hushmaze.drawing.draft;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import java.util.ArrayList;
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

    /** Rules of the charts come out at their corners: how high each is. */
    private static List<Double> chartHeights(List<Block> blocks, int page) {
        return Flow.pages(blocks, PAGE, 1).get(page).shapes().stream()
                .filter(Shape.Line.class::isInstance)
                .map(Shape.Line.class::cast)
                .filter(line -> line.x1() == line.x2())
                .map(line -> line.y2() - line.y1())
                .toList();
    }

    private static Block upright(Blocks blocks) {
        return blocks.chart(2, 40, (width, height) -> new Sketch().line(0, 0, 0, height, Stroke.RULE));
    }

    @Test
    void aChartGetsLowerWhereThatPutsItOnThePage() {
        // By hand: 5 blocks are 48 mm, two charts with their gaps 84 mm: 132 mm. One chart, 90 mm, is the page's; of 10
        // mm
        // left it takes all. With 2 blocks, 18 mm, both want 102 mm: each gives 1 mm.
        Blocks blocks = new Blocks((text, size, weight) -> text.length() * size);
        List<Block> one = new ArrayList<>(blocks(5));
        one.addAll(List.of(upright(blocks), upright(blocks)));
        assertThat(chartHeights(one, 0)).containsExactly(50.0);
        assertThat(chartHeights(one, 1)).containsExactly(40.0);
        List<Block> two = new ArrayList<>(blocks(2));
        two.addAll(List.of(upright(blocks), upright(blocks)));
        assertThat(chartHeights(two, 0)).containsExactly(39.0, 39.0);
    }

    @Test
    void aChartGrowsNoHigherThanAsMuchAgain() {
        // By hand: a block and a chart are 8 + 42 = 50 mm; a block of 90 mm does not go below, and the chart takes 40
        // of 50 mm.
        Blocks blocks = new Blocks((text, size, weight) -> text.length() * size);
        List<Block> all = new ArrayList<>(blocks(1));
        all.add(upright(blocks));
        all.add(blocks.figure(0, 90, width -> new Sketch()));
        assertThat(chartHeights(all, 0)).containsExactly(80.0);
    }

    @Test
    void whatFillsAPageTakesWhatIsLeftOfTheLast() {
        Blocks blocks = new Blocks((text, size, weight) -> text.length() * size);
        List<Block> all = new ArrayList<>(blocks(3));
        all.add(blocks.filling(2, 20, (width, height) -> new Sketch().line(0, 0, 0, height, Stroke.RULE)));
        assertThat(chartHeights(all, 0)).containsExactly(70.0);
    }

    @Test
    void aLastPageWorthItsPaperStays() {
        assertThat(counts(15)).containsExactly(10, 5);
    }
}
