package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Validation: pages of bare rectangles on 200 × 100 mm, 9 mm between them, counted by hand. Property: seeded random rectangles
 * are each on one page, inside it, apart from the others, and pages follow the order of their first ones.
 */
class ShelvesTest {
    private static final TextMeasure NO_TEXT = (text, size, weight) -> 0;
    private static final Bounds AREA = new Bounds(20, 10, 220, 110);

    private static Sketch view(double width, double height) {
        Sketch sketch = new Sketch();
        sketch.rectangle(new Bounds(0, 0, width, height), Stroke.OUTLINE, null);
        return sketch;
    }

    private static List<List<Integer>> groups(Sketch... views) {
        List<Integer> numbers = IntStream.range(0, views.length).boxed().toList();
        return new Shelves(AREA, NO_TEXT).groups(numbers, List.of(views));
    }

    @Test
    void aSmallOneGoesOnAnEarlierPageThatHasRoom() {
        // 60 + 9 + 60 is too high for 100; the last, 180 wide and 25 high, goes under the first: 60 + 9 + 25.
        assertThat(groups(view(180, 60), view(180, 80), view(180, 25))).containsExactly(List.of(0, 2), List.of(1));
    }

    @Test
    void theOrderStaysWhereNoPageIsSaved() {
        // The third would go under the first too, but the fourth takes a page with it or without.
        assertThat(groups(view(180, 60), view(180, 80), view(180, 25), view(180, 60)))
                .containsExactly(List.of(0), List.of(1), List.of(2, 3));
    }

    @Test
    void theHighestFirstWhereThatSavesAPage() {
        // In order: 30 with 30, then 61 and 61 alone. The highest first: 61 with 30, twice.
        assertThat(groups(view(180, 30), view(180, 30), view(180, 61), view(180, 61)))
                .containsExactly(List.of(0, 2), List.of(1, 3));
    }

    @Test
    void nothingOverlapsOrIsLost() {
        Random random = new Random(5);
        Shelves shelves = new Shelves(AREA, NO_TEXT);
        for (int i = 0; i < 500; i++) {
            List<Sketch> views = new ArrayList<>();
            List<Integer> numbers = new ArrayList<>();
            for (int k = 0; k <= random.nextInt(14); k++) {
                views.add(view(5 + 195 * random.nextDouble(), 5 + 95 * random.nextDouble()));
                numbers.add(k);
            }
            List<List<Integer>> groups = shelves.groups(numbers, views);
            assertThat(groups.stream().flatMap(List::stream)).containsExactlyInAnyOrderElementsOf(numbers);
            assertThat(groups).extracting(g -> g.get(0)).isSorted();
            List<Sketch> pages = shelves.set(views);
            assertThat(pages).hasSameSizeAs(groups);
            for (int page = 0; page < pages.size(); page++) {
                List<Bounds> all = pages.get(page).shapes().stream()
                        .map(s -> s.bounds(NO_TEXT))
                        .toList();
                assertThat(all).hasSize(groups.get(page).size());
                apartInside(all);
            }
        }
    }

    private static void apartInside(List<Bounds> all) {
        double same = 1e-9;
        for (int i = 0; i < all.size(); i++) {
            Bounds b = all.get(i);
            assertThat(b.x0()).isGreaterThanOrEqualTo(AREA.x0() - same);
            assertThat(b.x1()).isLessThanOrEqualTo(AREA.x1() + same);
            assertThat(b.y0()).isGreaterThanOrEqualTo(AREA.y0() - same);
            assertThat(b.y1()).isLessThanOrEqualTo(AREA.y1() + same);
            for (Bounds other : all.subList(0, i)) {
                assertThat(b.x1() < other.x0() + same
                                || other.x1() < b.x0() + same
                                || b.y1() < other.y0() + same
                                || other.y1() < b.y0() + same)
                        .as("%s and %s", b, other)
                        .isTrue();
            }
        }
    }
}
