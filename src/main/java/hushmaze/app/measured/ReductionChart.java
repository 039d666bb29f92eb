package hushmaze.app.measured;

import hushmaze.app.model.ComparedModel.Held;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PageSource;
import hushmaze.assess.ComparedBand;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.draft.SpectrumChart;
import hushmaze.drawing.draft.SpectrumChart.Range;
import hushmaze.drawing.draft.SpectrumChart.Series;
import java.util.List;
import java.util.function.Function;

/** Measured reduction over the predicted range. */
final class ReductionChart implements PageSource {
    private static final double MARGIN = 4;
    private static final double LOWEST = -10;
    private static final Stroke MEASURED = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.BLACK);
    private static final Stroke LIKELY = new Stroke(false, Stroke.Pattern.DASHED, Ink.ACCENT);

    private final List<ComparedBand> rows;
    private final TextMeasure measure;

    ReductionChart(Held held, TextMeasure measure) {
        this.rows = held.comparison().rows();
        this.measure = measure;
    }

    @Override
    public Page page(double width, double height) {
        SpectrumChart chart = new SpectrumChart(
                rows.stream().map(ComparedBand::band).toList(),
                LOWEST,
                new Range(Texts.of("measured.chart.range"), each(ComparedBand::low), each(ComparedBand::high)),
                List.of(
                        new Series(Texts.of("measured.chart.likely"), LIKELY, false, each(ComparedBand::likely)),
                        new Series(Texts.of("measured.chart.measured"), MEASURED, true, each(ComparedBand::reduction))),
                measure);
        Sketch sketch = new Sketch().add(chart.draw(width - 2 * MARGIN, height - 2 * MARGIN), MARGIN, MARGIN);
        return Page.of(Texts.of("measured.chart"), width, height, Paper.A4.thinLine(), sketch.shapes());
    }

    private List<Double> each(Function<ComparedBand, Double> value) {
        return rows.stream()
                .map(value)
                .map(v -> v == null ? Double.valueOf(Double.NaN) : v)
                .toList();
    }
}
