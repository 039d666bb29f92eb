package hushmaze.drawing.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Point;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** <em>Property</em> tests of the charts on even axes: round grid lines, nothing outside the chart, units and labels there. */
class EvenChartsTest {
    private static final TextMeasure MEASURE = (text, size, weight) -> 0.5 * size * text.length();

    private static List<String> texts(Sketch sketch) {
        return sketch.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(s -> ((Shape.Text) s).text())
                .toList();
    }

    private static void fits(Sketch sketch, double width, double height) {
        Bounds bounds = sketch.bounds(MEASURE);
        assertThat(bounds.x0()).isGreaterThanOrEqualTo(0);
        assertThat(bounds.y0()).isGreaterThanOrEqualTo(-1e-9);
        assertThat(bounds.x1()).isLessThanOrEqualTo(width + 1e-9);
        assertThat(bounds.y1()).isLessThanOrEqualTo(height + 1e-9);
    }

    @Test
    void gridLinesAreRound() {
        for (double largest = 0.0013; largest < 1e5; largest *= 1.37) {
            EvenAxis axis = EvenAxis.upTo(largest, 6, 100, 10);
            assertThat(axis.high()).isGreaterThanOrEqualTo(largest * (1 - 1e-9));
            assertThat(axis.high() / axis.step()).isLessThanOrEqualTo(6 + 1e-9);
            double first = axis.step() / Math.pow(10, Math.floor(Math.log10(axis.step()) + 1e-9));
            assertThat(List.of(1.0, 2.0, 2.5, 5.0)).anyMatch(r -> Math.abs(r - first) < 1e-9);
            assertThat(axis.place(0)).isEqualTo(100);
            assertThat(axis.place(axis.high())).isCloseTo(10, within(1e-9));
        }
        assertThat(EvenAxis.upTo(2.3, 6, 0, 1).figure(3)).isEqualTo("1.5");
        assertThat(EvenAxis.upTo(2000, 6, 0, 1).figure(2)).isEqualTo("1000");
        assertThatThrownBy(() -> EvenAxis.upTo(0, 6, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void carbonDioxide() {
        Curve curve = new Curve("Air on", Stroke.OUTLINE, List.of(new Point(0, 4e-4), new Point(7200, 2.1e-3)));
        List<Co2Chart.Limit> limits = List.of(new Co2Chart.Limit("highest", 1.5e-3));
        Sketch minutes = new Co2Chart(List.of(curve), limits, MEASURE).draw(170, 90);
        fits(minutes, 170, 90);
        assertThat(texts(minutes)).contains("ppm", "min", "120", "2000", "highest", "Air on");
        Curve day = new Curve("Air on", Stroke.OUTLINE, List.of(new Point(0, 4e-4), new Point(28_800, 9e-4)));
        assertThat(texts(new Co2Chart(List.of(day), limits, MEASURE).draw(120, 60)))
                .contains("h", "8", "1500")
                .doesNotContain("min");
    }

    /** The path needs four times what the fan gives at the end: its curve and range are cut, not drawn over the edge. */
    @Test
    void fan() {
        FanChart.Line fan = new FanChart.Line("Fan", List.of(new Point(0, 45), new Point(0.05, 0)));
        List<Double> flows = List.of(0.0, 0.03, 0.06);
        FanChart.Path path = new FanChart.Path(
                "likely",
                "range",
                flows,
                List.of(0.0, 8.0, 32.0),
                List.of(0.0, 50.0, 200.0),
                List.of(0.0, 80.0, 320.0));
        for (double flow : new double[] {0.018, 0.0495}) {
            FanChart.Operating point = new FanChart.Operating("18 L/s at 29 Pa", flow, 29);
            Sketch sketch = new FanChart(fan, path, point, Unit.LITRE_PER_SECOND, Unit.PASCAL, MEASURE).draw(170, 90);
            fits(sketch, 170, 90);
            assertThat(texts(sketch)).contains("Pa", "L/s", "Fan", "likely", "range", "18 L/s at 29 Pa");
        }
        assertThat(texts(new FanChart(fan, path, null, Unit.LITRE_PER_SECOND, Unit.PASCAL, MEASURE).draw(170, 90)))
                .doesNotContain("18 L/s at 29 Pa");
    }
}
