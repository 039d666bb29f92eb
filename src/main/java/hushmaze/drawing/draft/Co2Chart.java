package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Told;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;

/** Carbon dioxide in a room over time, with limits as labelled lines and a legend above. */
public final class Co2Chart {
    private static final Stroke LIMIT = new Stroke(false, Stroke.Pattern.DASHED, Ink.ALERT);
    private static final double PPM = 1e6;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    /** Longer courses are shown in hours. */
    private static final double LONG = 3 * HOUR;

    private static final int PARTS_UP = 6;
    private static final int PARTS_ACROSS = 8;

    /**
     * A line that should not be crossed.
     *
     * @param name beside the line
     * @param level as a fraction
     */
    public record Limit(String name, double level) {}

    private final List<Curve> curves;
    private final List<Limit> limits;
    private final TextMeasure measure;

    /**
     * @param curves times in s across, levels as fractions up; at least one, longer than nothing
     * @param limits drawn thin and dashed, each with its name
     */
    public Co2Chart(List<Curve> curves, List<Limit> limits, TextMeasure measure) {
        this.curves = List.copyOf(curves);
        this.limits = List.copyOf(limits);
        this.measure = measure;
    }

    /** The chart with its upper left corner at the origin; width and height in mm. */
    public Sketch draw(double width, double height) {
        return draw(width, height, null);
    }

    /**
     * The same, which tells more where it is pointed at.
     *
     * @param told at a time by its number in the first curve; null for nothing
     */
    public Sketch draw(double width, double height, IntFunction<Told> told) {
        Sketch sketch = new Sketch();
        ChartFrame frame = new ChartFrame(sketch, measure);
        double top = frame.legend(null, curves, width);
        double seconds = largest(Point::x);
        boolean hours = seconds > LONG;
        double unit = hours ? HOUR : MINUTE;
        double level = limits.stream().mapToDouble(Limit::level).reduce(largest(Point::y), Math::max);
        EvenAxis x = EvenAxis.endingAt(seconds / unit, PARTS_ACROSS, ChartFrame.LEFT, width - ChartFrame.RIGHT);
        // a little higher, so that the label of the uppermost limit stays on the chart
        EvenAxis y = EvenAxis.upTo(level * PPM * 1.08, PARTS_UP, height - ChartFrame.BELOW, top);
        frame.grid(x, y, hours ? "h" : "min", "ppm");
        for (Limit limit : limits) {
            double at = y.place(limit.level() * PPM);
            sketch.line(x.from(), at, x.to(), at, LIMIT);
        }
        for (Curve curve : curves) {
            frame.curve(x, y, inUnits(curve, unit));
        }
        double lowest = limits.stream().mapToDouble(Limit::level).min().orElse(0);
        for (Limit limit : limits) {
            double at = y.place(limit.level() * PPM);
            // the lowest below its line, so that two lines close together keep their labels apart
            boolean below = limits.size() > 1 && limit.level() == lowest;
            double baseline = below ? at + 1 + ChartFrame.SIZE * 0.8 : at - 1.2;
            frame.label(x.to() - 1.5, baseline, limit.name(), Anchor.END, Ink.ALERT);
        }
        if (told != null) {
            frame.hints(x, y, inUnits(curves.get(0), unit).points(), told);
        }
        return sketch;
    }

    private double largest(ToDoubleFunction<Point> of) {
        return curves.stream()
                .flatMap(c -> c.points().stream())
                .mapToDouble(of)
                .max()
                .orElseThrow(() -> new IllegalArgumentException("a chart without points"));
    }

    private static Curve inUnits(Curve curve, double unit) {
        return new Curve(
                curve.name(),
                curve.stroke(),
                curve.points().stream()
                        .map(p -> new Point(p.x() / unit, p.y() * PPM))
                        .toList());
    }
}
