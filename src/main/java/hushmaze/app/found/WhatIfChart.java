package hushmaze.app.found;

import hushmaze.app.model.EntryText;
import hushmaze.app.model.Swept;
import hushmaze.app.model.Texts;
import hushmaze.app.model.WhatIfModel.Course;
import hushmaze.app.model.WhatIfModel.Point;
import hushmaze.app.sheet.PageSource;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Page;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Lettering;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Margin to the target above, pressure drop below, both over the values of one number, with the limits dashed and the present value
 * as an upright line. Full dots are values at which every verdict of the path is good, rings the others.
 */
final class WhatIfChart implements PageSource {
    private static final double LINE = 0.2;
    private static final double SIZE = Lettering.TABLE;
    private static final double LEFT = 13;
    private static final double RIGHT = 5;
    private static final double HEAD = 6.5;
    private static final double NOW = 5;
    private static final double FOOT = 10;
    private static final double DOT = 0.8;
    private static final Stroke CURVE = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.ACCENT);
    private static final Stroke LIMIT = new Stroke(false, Stroke.Pattern.DASHED, Ink.ALERT);
    private static final Stroke PRESENT = new Stroke(false, Stroke.Pattern.CHAIN, Ink.GREY);
    /** Shares of a panel between two lines of its grid, and of the width. */
    private static final int LINES_UP = 5;

    private static final int LINES_ACROSS = 9;
    /** Margins beyond these are no longer told apart, dB. */
    private static final double FURTHEST = 40;
    /** Pressures beyond so many times the limit and the present one are not shown. */
    private static final double TIMES_LIMIT = 2.5;

    private final Course course;
    private final Unit unit;
    private final UnitSystem units;
    private final TextMeasure measure;

    WhatIfChart(Course course, UnitSystem units, TextMeasure measure) {
        this.course = course;
        this.units = units;
        this.unit = EntryText.unit(course.number().unit(), units);
        this.measure = measure;
    }

    /** A stretch of values on a stretch of paper. */
    private record Axis(double low, double high, double from, double to) {
        double at(double value) {
            return from + (value - low) / (high - low) * (to - from);
        }

        double step(int lines) {
            return Swept.even((high - low) / lines);
        }
    }

    /** What one panel shows. */
    private record Panel(Axis across, Axis up, ToDoubleFunction<Point> value, ToDoubleFunction<Point> limit) {}

    @Override
    public Page page(double width, double height) {
        Sketch sketch = new Sketch();
        double first = shown(course.range().from());
        double last = shown(course.range().to());
        double inset = 0.02 * (last - first);
        Axis across = new Axis(first - inset, last + inset, LEFT, width - RIGHT);
        double tall = (height - NOW - FOOT - 2 * HEAD) / 2;
        double upper = NOW + HEAD;
        double lower = upper + tall + HEAD;
        present(sketch, across, lower + tall);
        draw(sketch, new Panel(across, margins(upper, tall), p -> within(p.margin()), p -> 0), "whatif.margin");
        draw(sketch, new Panel(across, drops(lower, tall), this::drop, p -> pressure(p.allowed())), "whatif.drop");
        figures(sketch, across, lower + tall);
        return Page.of(Texts.of("whatif.chart"), width, height, LINE, sketch.shapes());
    }

    private double shown(double value) {
        return unit.fromSi(course.number().unit().toSi(value));
    }

    private double pressure(double pascal) {
        return EntryText.unit(Unit.PASCAL, units).fromSi(pascal);
    }

    private double drop(Point point) {
        return pressure(point.drop());
    }

    private static double within(double margin) {
        return Math.max(-FURTHEST, Math.min(FURTHEST, margin));
    }

    private Axis margins(double top, double tall) {
        double least = -1;
        double most = 1;
        for (Point point : course.points()) {
            least = Math.min(least, within(point.margin()));
            most = Math.max(most, within(point.margin()));
        }
        double room = 0.06 * (most - least);
        return new Axis(least - room, most + room, top + tall, top);
    }

    private Axis drops(double top, double tall) {
        double most = 0;
        double cap = 0;
        for (Point point : course.points()) {
            most = Math.max(most, Math.max(point.drop(), point.allowed()));
            double present = course.isNow(point) ? point.drop() : 0;
            cap = Math.max(cap, TIMES_LIMIT * Math.max(point.allowed(), present));
        }
        double high = pressure(most == 0 ? 1 : 1.06 * Math.min(most, cap == 0 ? most : cap));
        return new Axis(0, high, top + tall, top);
    }

    private void draw(Sketch sketch, Panel panel, String name) {
        Axis across = panel.across();
        Axis up = panel.up();
        double step = up.step(LINES_UP);
        for (int i = (int) Math.ceil(up.low() / step - 1e-9); i * step <= up.high() * (1 + 1e-9); i++) {
            double y = up.at(i * step);
            sketch.line(across.from(), y, across.to(), y, Stroke.RULE);
            text(sketch, across.from() - 1.5, y + SIZE * 0.33, number(i * step), Anchor.END, Ink.GREY);
        }
        sketch.line(across.from(), up.to(), across.from(), up.from(), Stroke.RULE);
        String unitUp =
                name.equals("whatif.drop") ? EntryText.unit(Unit.PASCAL, units).symbol() : Unit.DECIBEL.symbol();
        name(sketch, across.from(), up.to() - 2, Texts.of(name, unitUp));
        curve(sketch, panel, panel.limit(), LIMIT);
        curve(sketch, panel, panel.value(), CURVE);
        limitName(sketch, panel, name + ".limit");
        for (Point point : course.points()) {
            double y = panel.value().applyAsDouble(point);
            if (Double.isFinite(point.margin()) && y <= up.high()) {
                dot(sketch, across.at(shown(point.value())), up.at(y), point.good());
            }
        }
    }

    /** On paper, so that no line runs through it. */
    private void name(Sketch sketch, double x, double y, String words) {
        double wide = measure.width(words, SIZE, Weight.SEMIBOLD);
        sketch.rectangle(new Bounds(x, y - SIZE * 0.85, x + wide + 1, y + SIZE * 0.28), null, Ink.WHITE);
        sketch.text(x, y, words, SIZE, Weight.SEMIBOLD, Anchor.START, Ink.BLACK);
    }

    private static void dot(Sketch sketch, double x, double y, boolean good) {
        if (good) {
            sketch.dot(x, y, DOT, Ink.ACCENT);
        } else {
            sketch.dot(x, y, DOT, Ink.WHITE);
            sketch.circle(x, y, DOT, Stroke.THIN.in(Ink.ACCENT));
        }
    }

    /** Lines between neighbours; none over values that make no box, and none beyond the panel. */
    private void curve(Sketch sketch, Panel panel, ToDoubleFunction<Point> value, Stroke stroke) {
        List<Point> points = course.points();
        double step =
                (course.range().to() - course.range().from()) / (course.range().steps() - 1);
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            if (Math.abs(b.value() - a.value()) < 1.5 * Math.abs(step)) {
                piece(sketch, panel, stroke, new double[] {
                    shown(a.value()), value.applyAsDouble(a), shown(b.value()), value.applyAsDouble(b)
                });
            }
        }
    }

    private static void piece(Sketch sketch, Panel panel, Stroke stroke, double[] ab) {
        double high = panel.up().high();
        if (ab[1] > high && ab[3] > high) {
            return;
        }
        if (ab[1] > high || ab[3] > high) {
            int out = ab[1] > high ? 0 : 2;
            double share = (high - ab[1]) / (ab[3] - ab[1]);
            ab[out] = ab[0] + share * (ab[2] - ab[0]);
            ab[out + 1] = high;
        }
        sketch.line(
                panel.across().at(ab[0]),
                panel.up().at(ab[1]),
                panel.across().at(ab[2]),
                panel.up().at(ab[3]),
                stroke);
    }

    /** At the end of the panel's name, so that it lies on no curve. */
    private void limitName(Sketch sketch, Panel panel, String name) {
        double end = panel.across().to();
        double y = panel.up().to() - 2;
        String words = Texts.of(name);
        double from = end - measure.width(words, SIZE, Weight.REGULAR);
        sketch.line(from - 9, y - SIZE * 0.3, from - 1.5, y - SIZE * 0.3, LIMIT);
        text(sketch, end, y, words, Anchor.END, Ink.ALERT);
    }

    private void figures(Sketch sketch, Axis across, double foot) {
        double step = across.step(LINES_ACROSS);
        if (course.number() == Swept.PASSES) {
            step = Math.max(1, step);
        }
        for (int i = (int) Math.ceil(across.low() / step); i * step <= across.high(); i++) {
            double x = across.at(i * step);
            sketch.line(x, foot, x, foot + 1, Stroke.THIN.in(Ink.GREY));
            text(sketch, x, foot + 1.3 + SIZE, number(i * step), Anchor.MIDDLE, Ink.GREY);
        }
        String symbol = unit.symbol();
        String words = Texts.of("whatif." + course.number());
        text(
                sketch,
                (across.from() + across.to()) / 2,
                foot + 1.3 + SIZE * (1 + Lettering.LEADING),
                symbol.isEmpty() ? words : Texts.of("whatif.across", words, symbol),
                Anchor.MIDDLE,
                Ink.BLACK);
    }

    private void present(Sketch sketch, Axis across, double foot) {
        double x = across.at(shown(course.now()));
        sketch.line(x, NOW, x, foot, PRESENT);
        String words = Texts.of("whatif.present");
        double half = measure.width(words, SIZE, Weight.SEMIBOLD) / 2;
        Bounds room = new Bounds(across.from() + half, 0, across.to() - half, NOW);
        double middle = Math.max(room.x0(), Math.min(room.x1(), x));
        sketch.text(middle, NOW - 1.2, words, SIZE, Weight.SEMIBOLD, Anchor.MIDDLE, Ink.BLACK);
    }

    private String number(double value) {
        return EntryText.brief(value);
    }

    private static void text(Sketch sketch, double x, double y, String words, Anchor anchor, Ink ink) {
        sketch.text(x, y, words, SIZE, Weight.REGULAR, anchor, ink);
    }
}
