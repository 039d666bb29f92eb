package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Levels or losses over frequency, third octaves on a logarithmic axis, with a legend above. */
public final class SpectrumChart {
    private static final double LEFT = 9;
    private static final double RIGHT = 6;
    private static final double BELOW = 8;
    private static final double LEGEND_LINE = 4.6;
    private static final double SAMPLE = 9;
    private static final double SIZE = Lettering.TABLE;
    private static final double MARK = 0.75;

    /**
     * A line.
     *
     * @param name in the legend
     * @param stroke of the line
     * @param marked whether each band has a mark
     * @param values one for each band; infinite ones leave a gap
     */
    public record Series(String name, Stroke stroke, boolean marked, List<Double> values) {}

    /**
     * A filled range.
     *
     * @param name in the legend
     * @param low one for each band
     * @param high one for each band
     */
    public record Range(String name, List<Double> low, List<Double> high) {}

    private final List<Band> bands;
    private final double lowest;
    private final Range range;
    private final List<Series> series;
    private final TextMeasure measure;

    /**
     * @param bands of all values
     * @param lowest the axis goes no lower, dB; what lies under it is left out
     * @param range filled behind the lines
     */
    public SpectrumChart(List<Band> bands, double lowest, Range range, List<Series> series, TextMeasure measure) {
        this.bands = List.copyOf(bands);
        this.lowest = lowest;
        this.range = range;
        this.series = List.copyOf(series);
        this.measure = measure;
    }

    /** The horizontal axis of a chart of some width. */
    public LogAxis frequencyAxis(double width) {
        return new LogAxis(bands.get(0).lowerHz(), bands.get(bands.size() - 1).upperHz(), LEFT, width - RIGHT);
    }

    /** The chart with its upper left corner at the origin. */
    public Sketch draw(double width, double height) {
        Sketch sketch = new Sketch();
        double top = legend(sketch, width) + 3.5;
        LogAxis x = frequencyAxis(width);
        DoubleStream all =
                series.stream().flatMapToDouble(s -> s.values().stream().mapToDouble(Double::doubleValue));
        DoubleStream ends = DoubleStream.concat(
                range.low().stream().mapToDouble(Double::doubleValue),
                range.high().stream().mapToDouble(Double::doubleValue));
        LevelAxis y = LevelAxis.around(DoubleStream.concat(all, ends), lowest, height - BELOW, top);
        band(sketch, x, y);
        grid(sketch, x, y);
        for (Series one : series) {
            curve(sketch, x, y, one);
        }
        return sketch;
    }

    private double legend(Sketch sketch, double width) {
        double x = LEFT;
        double y = LEGEND_LINE * 0.7;
        List<String> names = new ArrayList<>();
        names.add(range.name());
        series.forEach(s -> names.add(s.name()));
        for (int i = 0; i < names.size(); i++) {
            double need = SAMPLE + 1.5 + measure.width(names.get(i), SIZE, Weight.REGULAR);
            if (x > LEFT && x + need > width) {
                x = LEFT;
                y += LEGEND_LINE;
            }
            double mid = y - SIZE * 0.3;
            if (i == 0) {
                sketch.rectangle(new Bounds(x, mid - 1.3, x + SAMPLE, mid + 1.3), null, Ink.ACCENT_PALE);
            } else {
                Series one = series.get(i - 1);
                sketch.line(x, mid, x + SAMPLE, mid, one.stroke());
                if (one.marked()) {
                    mark(sketch, x + SAMPLE / 2, mid, one.stroke().ink());
                }
            }
            sketch.text(x + SAMPLE + 1.5, y, names.get(i), SIZE, Anchor.START);
            x += need + 6;
        }
        return y;
    }

    private void grid(Sketch sketch, LogAxis x, LevelAxis y) {
        for (double db = y.low(); db <= y.high() + 1e-9; db += y.grid()) {
            boolean foot = db == y.low();
            sketch.line(x.from(), y.place(db), x.to(), y.place(db), foot ? Stroke.THIN : Stroke.RULE);
            String label = String.valueOf(Math.round(db)).replace('-', '−');
            double at = y.place(db) + SIZE * 0.33;
            sketch.text(x.from() - 1.5, at, label, SIZE, Weight.REGULAR, Anchor.END, Ink.GREY);
        }
        for (Band octave : BandSet.OCTAVE.bands()) {
            double at = x.place(octave.centreHz());
            sketch.line(at, y.top(), at, y.bottom() + 1, Stroke.RULE);
            double foot = y.bottom() + 1.4 + SIZE;
            sketch.text(at, foot, octave.label(), SIZE, Weight.REGULAR, Anchor.MIDDLE, Ink.GREY);
        }
        sketch.text(x.from() - 1.5, y.top() - 2.6, "dB", SIZE, Weight.REGULAR, Anchor.END, Ink.GREY);
        double foot = y.bottom() + 1.4 + SIZE;
        sketch.text(x.to() + RIGHT, foot, "Hz", SIZE, Weight.REGULAR, Anchor.END, Ink.GREY);
    }

    private void band(Sketch sketch, LogAxis x, LevelAxis y) {
        List<Point> upper = new ArrayList<>();
        List<Point> lower = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            double at = x.place(bands.get(i).centreHz());
            upper.add(new Point(at, y.place(held(range.high().get(i), y))));
            lower.add(0, new Point(at, y.place(held(range.low().get(i), y))));
        }
        upper.addAll(lower);
        sketch.polygon(upper, null, Ink.ACCENT_PALE);
    }

    private static double held(double value, LevelAxis y) {
        return Math.max(y.low(), Math.min(y.high(), value));
    }

    private void curve(Sketch sketch, LogAxis x, LevelAxis y, Series one) {
        List<Point> run = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            double value = one.values().get(i);
            double at = x.place(bands.get(i).centreHz());
            boolean inside = value >= y.low() && value <= y.high();
            if (i > 0) {
                edge(run, x, y, one, i, inside);
            }
            if (inside) {
                run.add(new Point(at, y.place(value)));
                if (one.marked()) {
                    mark(sketch, at, y.place(value), one.stroke().ink());
                }
            } else {
                finish(sketch, run, one.stroke());
            }
        }
        finish(sketch, run, one.stroke());
    }

    /** Where the line between a band and the one before crosses the lower or upper edge of the chart, one end inside. */
    private void edge(List<Point> run, LogAxis x, LevelAxis y, Series one, int i, boolean inside) {
        double before = one.values().get(i - 1);
        double value = one.values().get(i);
        boolean wasInside = before >= y.low() && before <= y.high();
        if (inside == wasInside || !Double.isFinite(before) || !Double.isFinite(value)) {
            return;
        }
        double limit = Math.min(before, value) < y.low() ? y.low() : y.high();
        double share = (limit - before) / (value - before);
        double x0 = x.place(bands.get(i - 1).centreHz());
        double x1 = x.place(bands.get(i).centreHz());
        run.add(new Point(x0 + share * (x1 - x0), y.place(limit)));
    }

    private static void finish(Sketch sketch, List<Point> run, Stroke stroke) {
        if (run.size() > 1) {
            sketch.path(run, stroke);
        }
        run.clear();
    }

    private static void mark(Sketch sketch, double x, double y, Ink ink) {
        sketch.rectangle(new Bounds(x - MARK, y - MARK, x + MARK, y + MARK), null, ink);
    }
}
