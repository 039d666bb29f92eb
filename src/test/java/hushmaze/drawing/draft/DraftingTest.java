package hushmaze.drawing.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.DimensionChain.Side;
import hushmaze.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Validation: scales against the series 1-2-5 of ISO 5455, distances of dimension lines against textbook rules after ISO 129,
 * axis places worked by hand. Property: labels never overlap, over a seeded grid of random chains.
 */
class DraftingTest {
    /** Every letter half as wide as the size: easy to reckon with. */
    private static final TextMeasure HALF = (text, size, weight) -> text.length() * size / 2;

    @Test
    void scalesAreThoseOfTheSeries() {
        assertThat(Scale.SERIES)
                .extracting(Scale::label)
                .containsExactly("1:1", "1:2", "1:5", "1:10", "1:20", "1:50", "1:100");
    }

    /** By hand: at 1:10 a square of 100 mm is 10 mm on paper, one of 5 in 12.7; at 1:20 200 mm are 10 and 10 in 12.7. */
    @Test
    void theSquareToCheckThePrint() {
        assertSquare(10, UnitSystem.METRIC, 10, "100 mm", "on paper 10 mm");
        assertSquare(20, UnitSystem.METRIC, 10, "200 mm", "on paper 10 mm");
        assertSquare(1, UnitSystem.METRIC, 10, "10 mm", "on paper 10 mm");
        assertSquare(10, UnitSystem.INCH, 12.7, "5 in", "on paper 0.5 in");
        assertSquare(20, UnitSystem.INCH, 12.7, "10 in", "on paper 0.5 in");
        assertSquare(1, UnitSystem.INCH, 12.7, "0.5 in", "on paper 0.5 in");
    }

    private static void assertSquare(int denominator, UnitSystem units, double side, String words, String paper) {
        Sketch square = CheckSquare.of(new Scale(denominator), units);
        Shape.Path path = (Shape.Path) square.shapes().get(0);
        assertThat(path.points().get(2).x()).isCloseTo(side, within(1e-9));
        assertThat(path.points().get(2).y()).isCloseTo(side, within(1e-9));
        assertThat(((Shape.Text) square.shapes().get(1)).text()).isEqualTo(words);
        assertThat(((Shape.Text) square.shapes().get(2)).text()).isEqualTo(paper);
    }

    @Test
    void theScaleIsTheLargestPictureThatFits() {
        // 1.22 m on 122 mm is exactly 1:10; one millimetre less of room and it must be 1:20.
        assertThat(Scale.fitting(1.22, 0.6, 122, 100)).isEqualTo(new Scale(10));
        assertThat(Scale.fitting(1.22, 0.6, 121, 100)).isEqualTo(new Scale(20));
        // The height decides: 0.6 m on 29 mm needs 1:20.7, so 1:50.
        assertThat(Scale.fitting(1.22, 0.6, 200, 29)).isEqualTo(new Scale(50));
        assertThat(Scale.fitting(0.05, 0.05, 200, 200)).isEqualTo(new Scale(1));
        assertThatThrownBy(() -> Scale.fitting(100, 1, 100, 100)).hasMessageContaining("100.0 m");
    }

    @Test
    void frequencyAxisIsLogarithmic() {
        // Three decades over 90 mm: 100 Hz is a third of the way from 10 Hz to 10 kHz.
        LogAxis axis = new LogAxis(10, 10_000, 5, 95);
        assertThat(axis.place(10)).isCloseTo(5, within(1e-12));
        assertThat(axis.place(100)).isCloseTo(35, within(1e-12));
        assertThat(axis.place(10_000)).isCloseTo(95, within(1e-12));
        // One octave is lg 2 of a decade's 30 mm: 9.0309 mm.
        assertThat(axis.place(200) - axis.place(100)).isCloseTo(9.0309, within(1e-4));
    }

    @Test
    void levelAxisRunsUpwards() {
        LevelAxis axis = new LevelAxis(0, 80, 100, 20);
        assertThat(axis.place(0)).isEqualTo(100);
        assertThat(axis.place(80)).isEqualTo(20);
        assertThat(axis.place(30)).isEqualTo(70);
    }

    @Test
    void dimensionLinesKeepTenAndEightMillimetres() {
        Sketch sketch = new Sketch();
        double next = chain(sketch, Side.BELOW, 0, DimensionChain.FIRST).draw(List.of(0.0, 60.0), List.of("600"));
        assertThat(next).isEqualTo(18);
        assertThat(horizontals(sketch)).contains(10.0);
    }

    @Test
    void tinyStretchesGetDotsAndFiguresBeyondTheLine() {
        Sketch sketch = new Sketch();
        double next = chain(sketch, Side.BELOW, 0, 10)
                .draw(List.of(0.0, 2.0, 4.0, 60.0, 62.0), List.of("20", "20", "560", "20"));
        assertThat(texts(sketch)).filteredOn(Shape.Text::upwards).hasSize(3);
        assertThat(texts(sketch))
                .filteredOn(Shape.Text::upwards)
                .allSatisfy(t -> assertThat(t.bounds(HALF).y0()).isGreaterThan(10));
        // Dots at 0, 2 and 62; heads of the long stretch at 4 and 60.
        assertThat(sketch.shapes()).filteredOn(s -> s instanceof Shape.Circle).hasSize(3);
        assertThat(sketch.shapes()).filteredOn(s -> s instanceof Shape.Path).hasSize(2);
        double deepest = texts(sketch).stream()
                .mapToDouble(t -> t.bounds(HALF).y1())
                .max()
                .orElseThrow();
        assertThat(next).isGreaterThan(deepest);
    }

    @Test
    void figuresNeverOverlap() {
        Random random = new Random(7);
        for (int n = 0; n < 300; n++) {
            List<Double> places = new ArrayList<>(List.of(0.0));
            List<String> figures = new ArrayList<>();
            for (int i = 1 + random.nextInt(9); i > 0; i--) {
                places.add(places.get(places.size() - 1) + 0.4 + random.nextDouble() * (random.nextBoolean() ? 3 : 40));
                figures.add(random.nextBoolean() ? "23 17/32" : "18");
            }
            Sketch sketch = new Sketch();
            Side side = Side.values()[random.nextInt(4)];
            chain(sketch, side, 0, 10).draw(places, figures);
            assertThat(texts(sketch)).hasSize(figures.size());
            List<Bounds> boxes = texts(sketch).stream().map(t -> t.bounds(HALF)).toList();
            for (int i = 0; i < boxes.size(); i++) {
                for (int k = 0; k < i; k++) {
                    assertThat(boxes.get(i).overlaps(boxes.get(k)))
                            .as("chain %d on %s", n, side)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void spreadMovesLabelsAsLittleAsTheyAllow() {
        // Two labels wished at the same place part evenly; a third far away stays.
        assertThat(Spread.apart(new double[] {10, 10, 40}, 4, 0, 50)).containsExactly(8, 12, 40);
        assertThat(Spread.apart(new double[] {1, 20}, 4, 2, 50)).containsExactly(2, 20);
    }

    @Test
    void wordsWrapAtSpaces() {
        // Size 2: one letter is 1 mm wide.
        assertThat(Wrap.lines("aa bbb cc", 6, 2, Weight.REGULAR, HALF)).containsExactly("aa bbb", "cc");
        // a whole number keeps with its fraction and its unit, 9 letters of 1 mm, as long as there is room
        assertThat(Wrap.lines("about 36 7/8 in", 9, 2, Weight.REGULAR, HALF)).containsExactly("about", "36 7/8 in");
        assertThat(Wrap.lines("about 36 7/8 in", 8, 2, Weight.REGULAR, HALF)).containsExactly("about", "36 7/8", "in");
        assertThat(Wrap.lines("abcdefgh", 3, 2, Weight.REGULAR, HALF)).containsExactly("abc", "def", "gh");
        assertThat(Wrap.shrunk("abcdefgh", 4, 2, Weight.REGULAR, HALF)).isEqualTo(1);
    }

    @Test
    void hatchingStaysInside() {
        Bounds area = new Bounds(3.3, -7.1, 14.9, 2.2);
        for (Hatching hatching : Hatching.values()) {
            Sketch sketch = new Sketch();
            hatching.fill(sketch, area, hushmaze.drawing.Stroke.THIN);
            assertThat(sketch.shapes()).isNotEmpty();
            assertThat(area.contains(sketch.bounds(HALF))).isTrue();
        }
    }

    private static DimensionChain chain(Sketch sketch, Side side, double outline, double distance) {
        return new DimensionChain(sketch, HALF, side, outline, distance);
    }

    private static List<Shape.Text> texts(Sketch sketch) {
        return sketch.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .toList();
    }

    private static List<Double> horizontals(Sketch sketch) {
        return sketch.shapes().stream()
                .filter(Shape.Line.class::isInstance)
                .map(Shape.Line.class::cast)
                .filter(l -> l.y1() == l.y2())
                .map(Shape.Line::y1)
                .toList();
    }
}
