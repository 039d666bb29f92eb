package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Told;
import hushmaze.drawing.Weight;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Levels or losses over frequency, bands on a logarithmic axis, with a legend above. */
public final class SpectrumChart {
    private static final double LEFT = 9;
    private static final double RIGHT = 6;
    private static final double BELOW = 8;
    private static final double LEGEND_LINE = 4.6;
    private static final double SAMPLE = 9;
    private static final double SIZE = Lettering.TABLE;
    private static final double MARK = 0.75;
    /** Half the width of the ends of a bar, and half the size of the mark of a limit, mm. */
    private static final double CAP = 0.9;

    private static final double OPEN = 1.2;
    private static final Stroke MEASURED = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.BLACK);

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

    /**
     * Measured values, each with how far it may be off.
     *
     * @param name in the legend
     * @param openName in the legend, of values that may be more; it stands there only if there are such
     * @param values one for each band; infinite ones and those that are no number leave a gap
     * @param off how far a value may be off either way, one for each band, dB
     * @param open whether the value may be more, one for each band
     */
    public record Readings(String name, String openName, List<Double> values, List<Double> off, List<Boolean> open) {}

    /** What stands in the legend, and its sample, drawn from a place to the right. */
    private record Entry(String name, Sample sample) {}

    @FunctionalInterface
    private interface Sample {
        void draw(double x, double mid);
    }

    private final List<Band> bands;
    private final double lowest;
    private final double highest;
    private final Range range;
    private final List<Series> series;
    private final Readings readings;
    private final TextMeasure measure;

    /**
     * @param bands of all values
     * @param lowest the axis goes no lower, dB; what lies under it is left out
     * @param range filled behind the lines
     */
    public SpectrumChart(List<Band> bands, double lowest, Range range, List<Series> series, TextMeasure measure) {
        this(bands, lowest, range, series, null, measure);
    }

    /**
     * @param bands of all values
     * @param lowest the axis goes no lower, dB; what lies under it is left out
     * @param highest the axis goes no higher than the next ten above, dB; lines that do leave the chart there
     * @param range filled behind the lines
     */
    public SpectrumChart(
            List<Band> bands, double lowest, double highest, Range range, List<Series> series, TextMeasure measure) {
        this(bands, lowest, highest, range, series, null, measure);
    }

    /**
     * @param bands of all values
     * @param lowest the axis goes no lower, dB; what lies under it is left out
     * @param range filled behind the lines; null for none
     * @param readings in front of the lines; null for none
     */
    public SpectrumChart(
            List<Band> bands, double lowest, Range range, List<Series> series, Readings readings, TextMeasure measure) {
        this(bands, lowest, Double.POSITIVE_INFINITY, range, series, readings, measure);
    }

    private SpectrumChart(
            List<Band> bands,
            double lowest,
            double highest,
            Range range,
            List<Series> series,
            Readings readings,
            TextMeasure measure) {
        this.bands = List.copyOf(bands);
        this.lowest = lowest;
        this.highest = highest;
        this.range = range;
        this.series = List.copyOf(series);
        this.readings = readings;
        this.measure = measure;
    }

    /** A value of each row, for a series; those that there are not leave a gap. */
    public static <T> List<Double> each(List<T> rows, Function<T, Double> value) {
        return rows.stream()
                .map(value)
                .map(v -> v == null ? Double.valueOf(Double.NaN) : v)
                .toList();
    }

    /** The horizontal axis of a chart of some width. */
    public LogAxis frequencyAxis(double width) {
        return new LogAxis(bands.get(0).lowerHz(), bands.get(bands.size() - 1).upperHz(), LEFT, width - RIGHT);
    }

    /** The chart with its upper left corner at the origin. */
    public Sketch draw(double width, double height) {
        return draw(width, height, null);
    }

    /**
     * The same, which tells more where it is pointed at.
     *
     * @param told of a band by its number; null for nothing
     */
    public Sketch draw(double width, double height, IntFunction<Told> told) {
        Sketch sketch = new Sketch();
        double top = legend(sketch, width) + 3.5;
        LogAxis x = frequencyAxis(width);
        LevelAxis y = LevelAxis.around(values(), lowest, height - BELOW, top);
        if (range != null) {
            band(sketch, x, y);
        }
        grid(sketch, x, y);
        for (Series one : series) {
            curve(sketch, x, y, one);
        }
        if (readings != null) {
            readings(sketch, x, y);
        }
        if (told != null) {
            hints(sketch, x, y, told);
        }
        return sketch;
    }

    private void hints(Sketch sketch, LogAxis x, LevelAxis y, IntFunction<Told> told) {
        for (int i = 0; i < bands.size(); i++) {
            double from = x.place(bands.get(i).lowerHz());
            double to = x.place(bands.get(i).upperHz());
            sketch.add(new Shape.Hint(new Bounds(from, y.top(), to, y.bottom()), told.apply(i)));
        }
    }

    /** All that the axis should show. */
    private DoubleStream values() {
        DoubleStream all = series.stream().flatMapToDouble(s -> stream(s.values()));
        if (range != null) {
            all = DoubleStream.concat(all, DoubleStream.concat(stream(range.low()), stream(range.high())));
        }
        if (readings != null) {
            List<Double> values = readings.values();
            DoubleStream ends = IntStream.range(0, values.size())
                    .filter(i -> Double.isFinite(values.get(i)))
                    .mapToObj(i -> new double[] {
                        values.get(i) - readings.off().get(i),
                        values.get(i) + readings.off().get(i)
                    })
                    .flatMapToDouble(DoubleStream::of);
            all = DoubleStream.concat(all, ends);
        }
        return all.filter(Double::isFinite).map(value -> Math.min(value, highest));
    }

    private static DoubleStream stream(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue);
    }

    private double legend(Sketch sketch, double width) {
        double x = LEFT;
        double y = LEGEND_LINE * 0.7;
        for (Entry entry : entries(sketch)) {
            double need = SAMPLE + 1.5 + measure.width(entry.name(), SIZE, Weight.REGULAR);
            if (x > LEFT && x + need > width) {
                x = LEFT;
                y += LEGEND_LINE;
            }
            entry.sample().draw(x, y - SIZE * 0.3);
            sketch.text(x + SAMPLE + 1.5, y, entry.name(), SIZE, Anchor.START);
            x += need + 6;
        }
        return y;
    }

    private List<Entry> entries(Sketch sketch) {
        List<Entry> entries = new ArrayList<>();
        if (range != null) {
            entries.add(new Entry(
                    range.name(),
                    (x, mid) ->
                            sketch.rectangle(new Bounds(x, mid - 1.3, x + SAMPLE, mid + 1.3), null, Ink.ACCENT_PALE)));
        }
        for (Series one : series) {
            entries.add(new Entry(one.name(), (x, mid) -> {
                sketch.line(x, mid, x + SAMPLE, mid, one.stroke());
                if (one.marked()) {
                    mark(sketch, x + SAMPLE / 2, mid, one.stroke().ink());
                }
            }));
        }
        if (readings != null) {
            entries.add(new Entry(readings.name(), (x, mid) -> {
                sketch.line(x, mid, x + SAMPLE, mid, MEASURED);
                bar(sketch, x + SAMPLE / 2, mid - 1.6, mid + 1.6);
                mark(sketch, x + SAMPLE / 2, mid, MEASURED.ink());
            }));
        }
        if (readings != null && readings.open().contains(true)) {
            entries.add(new Entry(readings.openName(), (x, mid) -> openMark(sketch, x + SAMPLE / 2, mid)));
        }
        return entries;
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

    /** Marks with bars, a line through those that are values and no limits, and arrow heads upwards for limits. */
    private void readings(Sketch sketch, LogAxis x, LevelAxis y) {
        List<Double> known = IntStream.range(0, bands.size())
                .mapToObj(i -> readings.open().get(i)
                        ? Double.valueOf(Double.NaN)
                        : readings.values().get(i))
                .toList();
        curve(sketch, x, y, new Series("", MEASURED, false, known));
        for (int i = 0; i < bands.size(); i++) {
            double value = readings.values().get(i);
            if (!(value >= y.low() && value <= y.high())) {
                continue;
            }
            double at = x.place(bands.get(i).centreHz());
            double place = y.place(value);
            double lower = y.place(held(value - readings.off().get(i), y));
            if (readings.open().get(i)) {
                bar(sketch, at, place, lower);
                openMark(sketch, at, place);
            } else {
                bar(sketch, at, y.place(held(value + readings.off().get(i), y)), lower);
                mark(sketch, at, place, MEASURED.ink());
            }
        }
    }

    private static void bar(Sketch sketch, double x, double top, double bottom) {
        sketch.line(x, top, x, bottom, Stroke.THIN);
        sketch.line(x - CAP, top, x + CAP, top, Stroke.THIN);
        sketch.line(x - CAP, bottom, x + CAP, bottom, Stroke.THIN);
    }

    private static void openMark(Sketch sketch, double x, double y) {
        sketch.polygon(
                List.of(new Point(x - OPEN, y + OPEN), new Point(x + OPEN, y + OPEN), new Point(x, y - OPEN)),
                Stroke.THIN,
                Ink.WHITE);
    }

    private static void mark(Sketch sketch, double x, double y, Ink ink) {
        sketch.rectangle(new Bounds(x - MARK, y - MARK, x + MARK, y + MARK), null, ink);
    }
}
