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
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The places along a way of the air, one below the other in its order: how fast the air is at each, against the limit there,
 * and how much pressure it takes, as a filled range with its likely value.
 */
public final class WayChart {
    private static final Stroke LIMIT = new Stroke(true, Stroke.Pattern.DASHED, Ink.ALERT);
    private static final Stroke LIKELY = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.ACCENT);
    private static final double ROW = 18;
    private static final double LEAST_ROW = 4.4;
    private static final double HEAD = 6;
    /** Share of a row that its bar takes, and no more than so many mm. */
    private static final double BAR = 0.5;

    private static final double THICK = 5;

    private static final double GAP = 3;
    private static final int PARTS = 4;

    /**
     * Air at one place.
     *
     * @param value in the unit shown
     * @param limit in the same unit
     * @param kept whether the limit is kept
     * @param text of the value, without its unit
     */
    public record Speed(double value, double limit, boolean kept, String text) {}

    /**
     * What one place takes.
     *
     * @param low in the unit shown
     * @param likely in the same unit
     * @param high in the same unit
     * @param text of the likely value, without its unit
     */
    public record Pressure(double low, double likely, double high, String text) {}

    /**
     * A place.
     *
     * @param name as in the tables
     * @param speed null where none is told
     * @param pressure null where none is taken
     * @param told to who points at it; null for nothing
     */
    public record Place(String name, Speed speed, Pressure pressure, Told told) {}

    /**
     * What the chart says beside its figures.
     *
     * @param speed heading of the speeds, with their unit
     * @param pressure heading of the pressures, with their unit
     * @param range name of the filled range in the legend
     * @param likely name of the bars in the legend
     * @param limit name of the limit in the legend
     */
    public record Names(String speed, String pressure, String range, String likely, String limit) {}

    private final List<Place> places;
    private final Names names;
    private final TextMeasure measure;

    /** @param places in the order of the air, at least one */
    public WayChart(List<Place> places, Names names, TextMeasure measure) {
        this.places = List.copyOf(places);
        this.names = names;
        this.measure = measure;
    }

    /** Least height at which every place has a line of its own, mm. */
    public double leastHeight() {
        return 2 * HEAD + places.size() * LEAST_ROW + ChartFrame.BELOW;
    }

    /** The chart with its upper left corner at the origin; width and height in mm. Rows take no more height than they need. */
    public Sketch draw(double width, double height) {
        Sketch sketch = new Sketch();
        ChartFrame frame = new ChartFrame(sketch, measure);
        double top = frame.legend(
                names.range(),
                List.of(new Curve(names.likely(), LIKELY, List.of()), new Curve(names.limit(), LIMIT, List.of())),
                width);
        double first = top + HEAD;
        double row = Math.max(LEAST_ROW, Math.min(ROW, (height - first - ChartFrame.BELOW) / places.size()));
        double foot = first + places.size() * row;
        double left = widest(places.stream().map(Place::name)) + GAP;
        double each = (width - left - 2 * GAP) / 2;
        double speedText = widest(speeds().map(Speed::text));
        double pressureText = widest(pressures().map(Pressure::text));
        // half of the last figure stands to the right of the axis
        double beside = 2 * GAP;
        double second = left + each + 2 * GAP;
        EvenAxis speed =
                axis(speeds().flatMap(s -> Stream.of(s.value(), s.limit())), left, left + each - speedText - beside);
        EvenAxis pressure = axis(pressures().map(Pressure::high), second, second + each - pressureText - beside);
        panel(sketch, speed, names.speed(), top, first, foot);
        panel(sketch, pressure, names.pressure(), top, first, foot);
        for (int i = 0; i < places.size(); i++) {
            Place place = places.get(i);
            double y = first + i * row;
            double base = y + row / 2 + ChartFrame.SIZE * 0.33;
            sketch.text(left - GAP, base, place.name(), ChartFrame.SIZE, Anchor.END);
            Optional.ofNullable(place.speed()).ifPresent(s -> {
                bar(sketch, speed, y, row, s.value());
                Ink ink = s.kept() ? Ink.BLACK : Ink.ALERT;
                Weight weight = s.kept() ? Weight.REGULAR : Weight.SEMIBOLD;
                sketch.text(left + each, base, s.text(), ChartFrame.SIZE, weight, Anchor.END, ink);
            });
            Optional.ofNullable(place.pressure()).ifPresent(p -> {
                range(sketch, pressure, y, row, p);
                bar(sketch, pressure, y, row, p.likely());
                sketch.text(second + each, base, p.text(), ChartFrame.SIZE, Anchor.END);
            });
            if (place.told() != null) {
                sketch.add(new Shape.Hint(new Bounds(0, y, width, y + row), place.told()));
            }
        }
        limits(sketch, speed, first, row);
        return sketch;
    }

    /** One line for as many places as have the same limit. */
    private void limits(Sketch sketch, EvenAxis x, double first, double row) {
        int from = 0;
        for (int i = 1; i <= places.size(); i++) {
            if (i == places.size() || Double.compare(limit(i), limit(from)) != 0) {
                if (!Double.isNaN(limit(from))) {
                    double at = x.place(limit(from));
                    sketch.line(at, first + from * row, at, first + i * row, LIMIT);
                }
                from = i;
            }
        }
    }

    private double limit(int place) {
        Speed speed = places.get(place).speed();
        return speed == null ? Double.NaN : speed.limit();
    }

    /** Heading, grid and figures of one of the two. */
    private static void panel(Sketch sketch, EvenAxis x, String name, double top, double first, double foot) {
        sketch.text(x.from(), top + ChartFrame.SIZE, name, ChartFrame.SIZE, Weight.SEMIBOLD, Anchor.START, Ink.BLACK);
        for (int i = 0; i <= x.lines(); i++) {
            double at = x.place(i * x.step());
            sketch.line(at, first, at, foot + 1, i == 0 ? Stroke.THIN : Stroke.RULE);
            sketch.text(
                    at,
                    foot + 1.4 + ChartFrame.SIZE,
                    x.figure(i),
                    ChartFrame.SIZE,
                    Weight.REGULAR,
                    Anchor.MIDDLE,
                    Ink.GREY);
        }
    }

    private static void bar(Sketch sketch, EvenAxis x, double y, double row, double value) {
        double half = thickness(row) / 4;
        double mid = y + row / 2;
        sketch.rectangle(new Bounds(x.from(), mid - half, x.place(value), mid + half), null, Ink.ACCENT);
    }

    private static double thickness(double row) {
        return Math.min(THICK, row * BAR);
    }

    private static void range(Sketch sketch, EvenAxis x, double y, double row, Pressure of) {
        double half = thickness(row) / 2;
        double mid = y + row / 2;
        sketch.polygon(
                List.of(
                        new Point(x.place(of.low()), mid - half),
                        new Point(x.place(of.high()), mid - half),
                        new Point(x.place(of.high()), mid + half),
                        new Point(x.place(of.low()), mid + half)),
                null,
                Ink.ACCENT_PALE);
    }

    private static EvenAxis axis(Stream<Double> values, double from, double to) {
        double largest = values.mapToDouble(v -> v).max().orElse(0);
        return EvenAxis.upTo(largest > 0 ? largest : 1, PARTS, from, to);
    }

    private Stream<Speed> speeds() {
        return of(Place::speed);
    }

    private Stream<Pressure> pressures() {
        return of(Place::pressure);
    }

    private <T> Stream<T> of(Function<Place, T> part) {
        return places.stream().map(part).filter(Objects::nonNull);
    }

    private double widest(Stream<String> texts) {
        return texts.mapToDouble(t -> measure.width(t, ChartFrame.SIZE, Weight.SEMIBOLD))
                .max()
                .orElse(0);
    }
}
