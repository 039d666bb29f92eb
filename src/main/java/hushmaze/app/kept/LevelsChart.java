package hushmaze.app.kept;

import hushmaze.app.model.KeptModel.Column;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PageSource;
import hushmaze.assess.BandResult;
import hushmaze.assess.PathResult;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Stroke.Pattern;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.draft.SpectrumChart;
import hushmaze.drawing.draft.SpectrumChart.Range;
import hushmaze.drawing.draft.SpectrumChart.Series;
import hushmaze.quantity.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Levels at the listener through each of several boxes, at the pessimistic edge, over what is allowed. */
final class LevelsChart implements PageSource {
    private static final double MARGIN = 4;
    private static final double LOWEST = 0;
    private static final Stroke LIMIT = new Stroke(true, Pattern.DASHED, Ink.ALERT);
    /** The box in the path first. Told apart by width and pattern. */
    private static final List<Stroke> STROKES = List.of(
            new Stroke(true, Pattern.CONTINUOUS, Ink.ACCENT),
            new Stroke(false, Pattern.CONTINUOUS, Ink.BLACK),
            new Stroke(false, Pattern.DASHED, Ink.BLACK),
            new Stroke(false, Pattern.DOTTED, Ink.BLACK),
            new Stroke(false, Pattern.CHAIN, Ink.BLACK),
            new Stroke(true, Pattern.CONTINUOUS, Ink.GREY),
            new Stroke(true, Pattern.DASHED, Ink.GREY),
            new Stroke(true, Pattern.DOTTED, Ink.GREY),
            new Stroke(true, Pattern.CHAIN, Ink.GREY));

    private final List<Column> columns;
    private final TextMeasure widths;

    /** @param columns with results, at least one */
    LevelsChart(List<Column> columns, TextMeasure widths) {
        this.columns = columns;
        this.widths = widths;
    }

    @Override
    public Page page(double width, double height) {
        PathResult first = columns.get(0).result();
        List<Band> bands = first.thirds().stream().map(BandResult::band).toList();
        List<Series> series = new ArrayList<>();
        series.add(new Series(Texts.of("kept.chart.allowed"), LIMIT, true, each(first, BandResult::allowed)));
        for (int i = 0; i < columns.size(); i++) {
            series.add(new Series(
                    columns.get(i).name(),
                    STROKES.get(i % STROKES.size()),
                    false,
                    each(columns.get(i).result(), BandResult::level)));
        }
        Range range = new Range(
                Texts.of("kept.chart.range", columns.get(0).name()),
                each(first, b -> b.noise() - b.high()),
                each(first, BandResult::level));
        Sketch chart =
                new SpectrumChart(bands, LOWEST, range, series, widths).draw(width - 2 * MARGIN, height - 2 * MARGIN);
        Sketch sketch = new Sketch().add(chart, MARGIN, MARGIN);
        return Page.of(Texts.of("kept.chart"), width, height, Paper.A4.thinLine(), sketch.shapes());
    }

    private static List<Double> each(PathResult result, Function<BandResult, Double> value) {
        return SpectrumChart.each(result.thirds(), value);
    }
}
