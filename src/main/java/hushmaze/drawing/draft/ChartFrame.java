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
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** What charts on two even axes have in common: legend above, grid with figures and units, curves cut at the edges. */
final class ChartFrame {
    static final double LEFT = 12;
    static final double RIGHT = 9;
    static final double BELOW = 8;
    static final double SIZE = Lettering.TABLE;

    private static final double LEGEND_LINE = 4.6;
    private static final double SAMPLE = 9;
    /** Room between legend and grid: the unit of the upright axis stands in it. */
    private static final double UNDER_LEGEND = 5;

    private final Sketch sketch;
    private final TextMeasure measure;

    ChartFrame(Sketch sketch, TextMeasure measure) {
        this.sketch = sketch;
        this.measure = measure;
    }

    /**
     * Draws the legend and says where the grid begins, mm from the top.
     *
     * @param range name of a filled range, or null
     */
    double legend(String range, List<Curve> curves, double width) {
        double x = LEFT;
        double y = LEGEND_LINE * 0.7;
        List<String> names = new ArrayList<>();
        List<Stroke> strokes = new ArrayList<>();
        if (range != null) {
            names.add(range);
            strokes.add(null);
        }
        for (Curve curve : curves) {
            names.add(curve.name());
            strokes.add(curve.stroke());
        }
        for (int i = 0; i < names.size(); i++) {
            double need = SAMPLE + 1.5 + measure.width(names.get(i), SIZE, Weight.REGULAR);
            if (x > LEFT && x + need > width) {
                x = LEFT;
                y += LEGEND_LINE;
            }
            double mid = y - SIZE * 0.3;
            if (strokes.get(i) == null) {
                sketch.rectangle(new Bounds(x, mid - 1.3, x + SAMPLE, mid + 1.3), null, Ink.ACCENT_PALE);
            } else {
                sketch.line(x, mid, x + SAMPLE, mid, strokes.get(i));
            }
            sketch.text(x + SAMPLE + 1.5, y, names.get(i), SIZE, Anchor.START);
            x += need + 6;
        }
        return y + UNDER_LEGEND;
    }

    /** Draws grid, figures and units. */
    void grid(EvenAxis x, EvenAxis y, String unitAcross, String unitUp) {
        for (int i = 0; i <= y.lines(); i++) {
            double at = y.place(i * y.step());
            sketch.line(x.from(), at, x.to(), at, i == 0 ? Stroke.THIN : Stroke.RULE);
            grey(x.from() - 1.5, at + SIZE * 0.33, y.figure(i), Anchor.END);
        }
        double foot = y.from() + 1.4 + SIZE;
        for (int i = 0; i <= x.lines(); i++) {
            double at = x.place(i * x.step());
            sketch.line(at, y.to(), at, y.from() + 1, Stroke.RULE);
            grey(at, foot, x.figure(i), Anchor.MIDDLE);
        }
        grey(x.from() - 1.5, y.to() - 2.6, unitUp, Anchor.END);
        grey(x.to() + RIGHT, foot, unitAcross, Anchor.END);
    }

    private void grey(double x, double y, String text, Anchor anchor) {
        sketch.text(x, y, text, SIZE, Weight.REGULAR, anchor, Ink.GREY);
    }

    /** A label on white, so that no line runs through it. */
    void label(double x, double baseline, String text, Anchor anchor, Ink ink) {
        double width = measure.width(text, SIZE, Weight.REGULAR);
        double left = x - anchor.share() * width;
        sketch.rectangle(
                new Bounds(left - 0.6, baseline - SIZE * 0.85, left + width + 0.6, baseline + SIZE * 0.28),
                null,
                Ink.WHITE);
        sketch.text(x, baseline, text, SIZE, Weight.REGULAR, anchor, ink);
    }

    /** Draws a curve as far as it lies on the chart. */
    void curve(EvenAxis x, EvenAxis y, Curve curve) {
        List<Point> run = new ArrayList<>();
        List<Point> points = curve.points();
        for (int i = 1; i < points.size(); i++) {
            double[] cut = inside(x, y, points.get(i - 1), points.get(i));
            if (cut.length == 0) {
                finish(run, curve.stroke());
                continue;
            }
            Point a = between(x, y, points.get(i - 1), points.get(i), cut[0]);
            if (run.isEmpty() || cut[0] > 0) {
                finish(run, curve.stroke());
                run.add(a);
            }
            run.add(between(x, y, points.get(i - 1), points.get(i), cut[1]));
        }
        finish(run, curve.stroke());
    }

    /** Places along the axis that tell more: around each value of a curve across, half way to the next ones. */
    void hints(EvenAxis x, EvenAxis y, List<Point> at, IntFunction<Told> told) {
        for (int i = 0; i < at.size(); i++) {
            double here = at.get(i).x();
            double from = i == 0 ? here : (at.get(i - 1).x() + here) / 2;
            double to = i == at.size() - 1 ? here : (here + at.get(i + 1).x()) / 2;
            if (from <= x.high()) {
                double end = x.place(Math.min(to, x.high()));
                sketch.add(new Shape.Hint(new Bounds(x.place(from), y.to(), end, y.from()), told.apply(i)));
            }
        }
    }

    private void finish(List<Point> run, Stroke stroke) {
        if (run.size() > 1) {
            sketch.path(List.copyOf(run), stroke);
        }
        run.clear();
    }

    /** First and last share of the way from a to b that lies on the chart; empty if none does. */
    private static double[] inside(EvenAxis x, EvenAxis y, Point a, Point b) {
        double[] share = {0, 1};
        boolean some = cut(share, a.x(), b.x(), x.high()) && cut(share, a.y(), b.y(), y.high());
        return some && share[0] < share[1] ? share : new double[0];
    }

    private static boolean cut(double[] share, double a, double b, double high) {
        double way = b - a;
        if (way == 0) {
            return a >= 0 && a <= high;
        }
        double first = (way > 0 ? -a : high - a) / way;
        double last = (way > 0 ? high - a : -a) / way;
        share[0] = Math.max(share[0], first);
        share[1] = Math.min(share[1], last);
        return share[0] < share[1];
    }

    private static Point between(EvenAxis x, EvenAxis y, Point a, Point b, double share) {
        return new Point(x.place(a.x() + share * (b.x() - a.x())), y.place(a.y() + share * (b.y() - a.y())));
    }
}
