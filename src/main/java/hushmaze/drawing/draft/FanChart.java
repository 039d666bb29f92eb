package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Told;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Pressure over flow: what a fan or a register gives, what the path takes as a filled range with its likely line, and the
 * point where they meet.
 */
public final class FanChart {
    private static final Stroke FAN = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.BLACK);
    private static final Stroke SYSTEM = new Stroke(true, Stroke.Pattern.DASHED, Ink.ACCENT);
    private static final Stroke EDGE = new Stroke(false, Stroke.Pattern.CONTINUOUS, Ink.ACCENT);
    private static final double DOT = 1.1;
    private static final int PARTS_UP = 6;
    private static final int PARTS_ACROSS = 8;

    /**
     * A line of pressures.
     *
     * @param name in the legend
     * @param points flows in m³/s across, pressures in Pa up, from left to right
     */
    public record Line(String name, List<Point> points) {
        public Line {
            points = List.copyOf(points);
        }
    }

    /**
     * What the path takes.
     *
     * @param name of the likely line in the legend
     * @param rangeName of the filled range in the legend
     * @param flows m³/s, rising
     * @param low Pa at each flow
     * @param likely Pa at each flow
     * @param high Pa at each flow
     */
    public record Path(
            String name,
            String rangeName,
            List<Double> flows,
            List<Double> low,
            List<Double> likely,
            List<Double> high) {}

    /**
     * Where fan and path meet.
     *
     * @param name beside the point
     * @param flow m³/s
     * @param pressure Pa
     */
    public record Operating(String name, double flow, double pressure) {}

    private final Line fan;
    private final Path system;
    private final Operating operating;
    private final Unit unit;
    private final Unit pressureUnit;
    private final TextMeasure measure;

    /**
     * @param fan the fan, or the pressure available; null for the path alone
     * @param system the path
     * @param operating the point, or null if they do not meet
     * @param unit of the flows
     * @param pressureUnit of the pressures
     */
    public FanChart(Line fan, Path system, Operating operating, Unit unit, Unit pressureUnit, TextMeasure measure) {
        this.fan = fan;
        this.system = system;
        this.operating = operating;
        this.unit = unit;
        this.pressureUnit = pressureUnit;
        this.measure = measure;
    }

    /** The chart with its upper left corner at the origin; width and height in mm. */
    public Sketch draw(double width, double height) {
        return draw(width, height, null);
    }

    /**
     * The same, which tells more where it is pointed at.
     *
     * @param told at a flow by its number in the path; null for nothing
     */
    public Sketch draw(double width, double height, IntFunction<Told> told) {
        Sketch sketch = new Sketch();
        ChartFrame frame = new ChartFrame(sketch, measure);
        Curve fanCurve = fan == null ? null : new Curve(fan.name(), FAN, scaled(fan.points()));
        Curve likely = new Curve(system.name(), SYSTEM, points(system.likely()));
        Curve low = new Curve("", EDGE, points(system.low()));
        Curve high = new Curve("", EDGE, points(system.high()));
        double top = frame.legend(system.rangeName(), fan == null ? List.of(likely) : List.of(likely, fanCurve), width);
        double flow = Math.max(fan == null ? 0 : largest(fanCurve, true), largest(likely, true));
        // the path's high edge may leave the chart: what the fan cannot give is of no interest
        double pressure = Math.max(
                largest(fan == null ? high : fanCurve, false),
                operating == null ? 0 : pressureUnit.fromSi(operating.pressure()));
        EvenAxis x = EvenAxis.upTo(flow, PARTS_ACROSS, ChartFrame.LEFT, width - ChartFrame.RIGHT);
        EvenAxis y = EvenAxis.upTo(1.1 * pressure, PARTS_UP, height - ChartFrame.BELOW, top);
        band(sketch, x, y, low, high);
        frame.grid(x, y, unit.symbol(), pressureUnit.symbol());
        frame.curve(x, y, low);
        frame.curve(x, y, high);
        frame.curve(x, y, likely);
        if (fan != null) {
            frame.curve(x, y, fanCurve);
        }
        if (operating != null) {
            mark(frame, sketch, x, y);
        }
        if (told != null) {
            frame.hints(x, y, likely.points(), told);
        }
        return sketch;
    }

    /** The filled range; a rise above the chart is cut where it leaves it. */
    private static void band(Sketch sketch, EvenAxis x, EvenAxis y, Curve low, Curve high) {
        List<Point> outline = new ArrayList<>(cut(high, y));
        List<Point> back = new ArrayList<>(cut(low, y));
        Collections.reverse(back);
        outline.addAll(back);
        sketch.polygon(
                outline.stream()
                        .map(p -> new Point(x.place(p.x()), y.place(p.y())))
                        .toList(),
                null,
                Ink.ACCENT_PALE);
    }

    /** The points of a curve held below the top, with one more where it goes through the top. */
    private static List<Point> cut(Curve curve, EvenAxis y) {
        List<Point> held = new ArrayList<>();
        List<Point> points = curve.points();
        for (int i = 0; i < points.size(); i++) {
            Point p = points.get(i);
            if (i > 0 && (points.get(i - 1).y() > y.high()) != (p.y() > y.high())) {
                Point before = points.get(i - 1);
                double share = (y.high() - before.y()) / (p.y() - before.y());
                held.add(new Point(before.x() + share * (p.x() - before.x()), y.high()));
            }
            held.add(new Point(p.x(), Math.max(0, Math.min(y.high(), p.y()))));
        }
        return held;
    }

    private void mark(ChartFrame frame, Sketch sketch, EvenAxis x, EvenAxis y) {
        double atX = x.place(unit.fromSi(operating.flow()));
        double atY = y.place(pressureUnit.fromSi(operating.pressure()));
        sketch.line(atX, atY, atX, y.from(), Stroke.CENTRE);
        sketch.line(x.from(), atY, atX, atY, Stroke.CENTRE);
        sketch.rectangle(new Bounds(atX - DOT, atY - DOT, atX + DOT, atY + DOT), Stroke.OUTLINE, Ink.WHITE);
        // above the point both lines leave room, left of it a rising one alone does
        boolean alone = fan == null;
        frame.label(alone ? atX - 2 : atX, atY - 3.2, operating.name(), alone ? Anchor.END : Anchor.MIDDLE, Ink.BLACK);
    }

    private List<Point> points(List<Double> pressures) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < system.flows().size(); i++) {
            points.add(new Point(unit.fromSi(system.flows().get(i)), pressureUnit.fromSi(pressures.get(i))));
        }
        return points;
    }

    private List<Point> scaled(List<Point> points) {
        return points.stream()
                .map(p -> new Point(unit.fromSi(p.x()), pressureUnit.fromSi(p.y())))
                .toList();
    }

    private static double largest(Curve curve, boolean across) {
        return curve.points().stream()
                .mapToDouble(p -> across ? p.x() : p.y())
                .max()
                .orElseThrow(() -> new IllegalArgumentException("a chart without points"));
    }
}
