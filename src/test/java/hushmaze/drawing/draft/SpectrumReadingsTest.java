package hushmaze.drawing.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.draft.SpectrumChart.Readings;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Property: measured values stand on a chart of a spectrum with bars as long as they may be off, limits with a mark of their own. */
class SpectrumReadingsTest {
    private static final TextMeasure MEASURE = (text, size, weight) -> 0.5 * size * text.length();
    private static final double WIDTH = 160;
    private static final double HEIGHT = 60;
    private static final List<Band> BANDS = BandSet.OCTAVE.bands();

    private static SpectrumChart chart(List<Double> values, List<Double> off, List<Boolean> open) {
        return new SpectrumChart(
                BANDS, -10, null, List.of(), new Readings("read", "at least", values, off, open), MEASURE);
    }

    private static List<Double> same(double value) {
        return Collections.nCopies(BANDS.size(), value);
    }

    /** Lengths of the upright lines at a band's place that are no grid lines, mm. */
    private static List<Double> bars(SpectrumChart chart, int band) {
        double x = chart.frequencyAxis(WIDTH).place(BANDS.get(band).centreHz());
        return chart.draw(WIDTH, HEIGHT).shapes().stream()
                .flatMap(s -> s instanceof Shape.Line line ? Stream.of(line) : Stream.empty())
                .filter(line -> line.stroke().ink() == Ink.BLACK && line.x1() == line.x2())
                // the legend is above
                .filter(line -> Math.abs(line.x1() - x) < 1e-6 && line.y2() > 6)
                .map(line -> Math.abs(line.y2() - line.y1()))
                .toList();
    }

    private static long texts(Sketch sketch, String text) {
        return sketch.shapes().stream()
                .filter(s -> s instanceof Shape.Text t && t.text().equals(text))
                .count();
    }

    /** Triangles, filled with white. */
    private static long openMarks(Sketch sketch) {
        return sketch.shapes().stream()
                .filter(s -> s instanceof Shape.Path path && path.closed() && path.fill() == Ink.WHITE)
                .count();
    }

    @Test
    void barsAreAsLongAsAValueMayBeOff() {
        List<Double> off =
                IntStream.range(0, BANDS.size()).mapToObj(i -> 1.0 + i).toList();
        SpectrumChart chart = chart(same(20), off, Collections.nCopies(BANDS.size(), false));
        double first = bars(chart, 0).get(0);
        for (int i = 0; i < BANDS.size(); i++) {
            assertThat(bars(chart, i)).hasSize(1);
            assertThat(bars(chart, i).get(0)).as(BANDS.get(i).label()).isCloseTo((1 + i) * first, within(1e-9));
        }
        Sketch sketch = chart.draw(WIDTH, HEIGHT);
        assertThat(texts(sketch, "read")).isEqualTo(1);
        assertThat(texts(sketch, "at least")).isZero();
        assertThat(openMarks(sketch)).isZero();
    }

    @Test
    void aLimitHasAMarkOfItsOwnAndTheLowerHalfOfABar() {
        List<Boolean> open =
                IntStream.range(0, BANDS.size()).mapToObj(i -> i >= 6).toList();
        SpectrumChart chart = chart(same(20), same(4), open);
        assertThat(bars(chart, 7).get(0)).isCloseTo(bars(chart, 0).get(0) / 2, within(1e-9));
        Sketch sketch = chart.draw(WIDTH, HEIGHT);
        assertThat(texts(sketch, "at least")).isEqualTo(1);
        assertThat(openMarks(sketch)).as("two bands and the legend").isEqualTo(3);
    }

    @Test
    void aBandWithoutAValueIsLeftOut() {
        List<Double> values = IntStream.range(0, BANDS.size())
                .mapToObj(i -> i == 3 ? Double.NaN : 20.0)
                .toList();
        SpectrumChart chart = chart(values, values, Collections.nCopies(BANDS.size(), false));
        assertThat(bars(chart, 3)).isEmpty();
        assertThat(bars(chart, 4)).hasSize(1);
    }

    /** A line far above leaves the chart at its top, and the axis stays with what it was told. */
    @Test
    void aLineMayLeaveTheChartAtItsTop() {
        List<Double> steep =
                IntStream.range(0, BANDS.size()).mapToObj(i -> 20.0 * i).toList();
        SpectrumChart.Series series = new SpectrumChart.Series("steep", Stroke.THIN, false, steep);
        SpectrumChart chart = new SpectrumChart(
                BANDS, 0, 55, new SpectrumChart.Range("range", same(10), same(20)), List.of(series), MEASURE);
        Sketch sketch = chart.draw(WIDTH, HEIGHT);
        assertThat(texts(sketch, "60")).isEqualTo(1);
        assertThat(texts(sketch, "70")).isZero();
        assertThat(sketch.bounds(MEASURE).y0()).isGreaterThanOrEqualTo(0);
    }

    @Test
    void barsBeyondTheChartEndAtItsEdge() {
        SpectrumChart chart = chart(same(-8), same(30), Collections.nCopies(BANDS.size(), false));
        Bounds bounds = chart.draw(WIDTH, HEIGHT).bounds(MEASURE);
        assertThat(bounds.y1()).isLessThanOrEqualTo(HEIGHT);
        assertThat(bounds.y0()).isGreaterThanOrEqualTo(-1e-9);
        assertThat(bars(chart, 0)).hasSize(1);
    }
}
