package hushmaze.app.found;

import hushmaze.app.model.SizingModel;
import hushmaze.app.model.Swept;
import hushmaze.app.model.Texts;
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
import hushmaze.size.Design;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The designs found as dots: the further right, the quieter; the higher, the more it costs. Every dot has its words beside it, and
 * what is left of the target is shaded and said to be too loud.
 */
final class TradeOff implements PageSource {
    private static final double LINE = 0.2;
    private static final double SIDE = 3;
    /** Room above for the words on quiet and loud. */
    private static final double ABOVE = 6;

    private static final double BELOW = 10.5;
    private static final double DOT = 1.1;
    private static final double ROW = Lettering.TABLE * Lettering.LEADING;
    /** Most values written along the axis. */
    private static final int MOST_TICKS = 9;
    /** Of the margins shown, for the words on what is too loud where nothing is. */
    private static final double LOUD_SHARE = 0.15;
    /** Between words and the target's line. */
    private static final double BESIDE = 1.5;

    private final SizingModel model;
    private final List<Design> designs;
    private final Design chosen;
    private final Cost cost;
    private final TextMeasure measure;

    TradeOff(SizingModel model, Cost cost, TextMeasure measure) {
        this.model = model;
        this.designs = model.designsProperty().get();
        this.chosen = model.selectedProperty().get();
        this.cost = cost;
        this.measure = measure;
    }

    /** Margins across and costs up, in mm of the page. */
    private record Frame(double low, double high, double width, double foot, double least, double most) {
        double x(double margin) {
            return SIDE + (margin - low) / (high - low) * (width - 2 * SIDE);
        }

        double y(double cost) {
            double share = most - least < 1e-9 ? 0.5 : (cost - least) / (most - least);
            return foot - ROW - share * (foot - ABOVE - 2 * ROW);
        }
    }

    @Override
    public Page page(double width, double height) {
        Sketch sketch = new Sketch();
        double low = Math.min(0, least(Design::margin));
        double high = Math.max(1, most(Design::margin));
        double room = 0.08 * (high - low);
        double left = low == 0 ? LOUD_SHARE * (high - low) : room;
        Frame frame = new Frame(low - left, high + room, width, height - BELOW, least(cost::of), most(cost::of));
        target(sketch, frame);
        axis(sketch, frame);
        dots(sketch, frame);
        return Page.of(Texts.of("found.chart"), width, height, LINE, sketch.shapes());
    }

    private double least(ToDoubleFunction<Design> of) {
        return designs.stream().mapToDouble(of).min().orElse(0);
    }

    private double most(ToDoubleFunction<Design> of) {
        return designs.stream().mapToDouble(of).max().orElse(1);
    }

    /** The target as a line, with a word on each of its sides where there is room for it. */
    private void target(Sketch sketch, Frame frame) {
        double x = frame.x(0);
        double left = frame.x(frame.low());
        sketch.rectangle(new Bounds(left, 1, x, frame.foot()), null, Ink.PALE);
        sketch.line(x, 1, x, frame.foot(), Stroke.THIN.in(Ink.ALERT));
        String quiet = Texts.of("found.chart.quiet");
        String loud = Texts.of("found.chart.loud");
        if (x - BESIDE - measure.width(loud, Lettering.TABLE, Weight.REGULAR) > left) {
            text(sketch, x - BESIDE, ABOVE - 1.5, loud, Anchor.END, Ink.ALERT);
        }
        if (x + BESIDE + measure.width(quiet, Lettering.TABLE, Weight.REGULAR) < frame.width()) {
            text(sketch, x + BESIDE, ABOVE - 1.5, quiet, Anchor.START, Ink.GREY);
        }
    }

    private void axis(Sketch sketch, Frame frame) {
        double foot = frame.foot();
        double end = frame.width() - SIDE;
        sketch.line(SIDE, foot, end, foot, Stroke.THIN.in(Ink.GREY));
        double step = Math.max(1, Swept.even((frame.high() - frame.low()) / MOST_TICKS));
        for (int i = (int) Math.ceil(frame.low() / step); i * step <= frame.high(); i++) {
            double x = frame.x(i * step);
            sketch.line(x, foot, x, foot + 1, Stroke.THIN.in(Ink.GREY));
            String words = i == 0 ? Texts.of("found.chart.target") : (i > 0 ? "+" : "") + Math.round(i * step);
            text(sketch, x, foot + 1 + Lettering.TABLE, words, Anchor.MIDDLE, i == 0 ? Ink.ALERT : Ink.GREY);
        }
        double below = foot + 1 + Lettering.TABLE * (1 + Lettering.LEADING);
        text(sketch, end, below, Texts.of("found.chart.margin"), Anchor.END, Ink.GREY);
        text(sketch, SIDE, below, Texts.of("found.chart." + cost), Anchor.START, Ink.GREY);
    }

    private void dots(Sketch sketch, Frame frame) {
        LabelPlaces places = new LabelPlaces(new Bounds(0.5, ABOVE - 1, frame.width() - 0.5, frame.foot() - 0.2), ROW);
        double line = frame.x(0);
        for (Design design : designs) {
            double x = frame.x(design.margin());
            double y = frame.y(cost.of(design));
            places.keepFree(new Bounds(x - 1.5 * DOT, y - 1.5 * DOT, x + 1.5 * DOT, y + 1.5 * DOT));
        }
        List<Design> order = new ArrayList<>(designs);
        order.sort(Comparator.comparingDouble(cost::of).reversed());
        for (Design design : order) {
            label(sketch, design, frame.x(design.margin()), frame.y(cost.of(design)), line, places);
        }
        for (Design design : order) {
            boolean now = design.equals(chosen);
            sketch.dot(
                    frame.x(design.margin()),
                    frame.y(cost.of(design)),
                    now ? 1.5 * DOT : DOT,
                    now ? Ink.ACCENT : Ink.GREY);
        }
    }

    /** Beside the dot where there is room, else elsewhere with a line to it; on paper where the target's line runs through. */
    private void label(Sketch sketch, Design design, double x, double y, double line, LabelPlaces places) {
        boolean now = design.equals(chosen);
        Weight weight = now ? Weight.SEMIBOLD : Weight.REGULAR;
        String words = Texts.of("found.chart.dot", model.wording().kinds(design), cost.words(design, model));
        Bounds place = places.place(x, y, measure.width(words, Lettering.TABLE, weight));
        boolean beside = Math.abs(place.centreY() - y) <= ROW / 3;
        if (!beside) {
            double to = Math.max(place.x0(), Math.min(place.x1(), x));
            sketch.line(x, y, to, place.centreY() > y ? place.y0() + 0.4 : place.y1() - 0.6, Stroke.RULE);
        }
        if (place.x0() < line && place.x1() > line) {
            sketch.rectangle(new Bounds(place.x0(), place.y0() + 0.4, place.x1(), place.y1() - 0.2), null, Ink.WHITE);
        }
        double base = place.y1() - (ROW - Lettering.TABLE) * 0.9;
        sketch.text(place.x0(), base, words, Lettering.TABLE, weight, Anchor.START, now ? Ink.ACCENT : Ink.BLACK);
    }

    private static void text(Sketch sketch, double x, double y, String words, Anchor anchor, Ink ink) {
        sketch.text(x, y, words, Lettering.TABLE, Weight.REGULAR, anchor, ink);
    }
}
