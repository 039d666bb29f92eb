package hushmaze.app.found;

import hushmaze.app.model.SizingModel;
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

/** The designs found as dots, margin to the target against what it costs; every dot has its words beside it. */
final class TradeOff implements PageSource {
    private static final double LINE = 0.2;
    private static final double SIDE = 3;
    private static final double ABOVE = 6;
    private static final double BELOW = 8;
    private static final double DOT = 1.1;
    private static final double ROW = Lettering.TABLE * Lettering.LEADING;
    private static final double GAP = 2.2;
    /** Most values written along the axis. */
    private static final int MOST_TICKS = 9;

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

    @Override
    public Page page(double width, double height) {
        Sketch sketch = new Sketch();
        double low =
                Math.min(0, designs.stream().mapToDouble(Design::margin).min().orElse(0)) - 0.5;
        double high =
                Math.max(1, designs.stream().mapToDouble(Design::margin).max().orElse(1)) + 0.5;
        double per = (width - 2 * SIDE) / (high - low);
        double foot = height - BELOW;
        axis(sketch, low, high, per, foot);
        double target = SIDE - low * per;
        sketch.line(target, ABOVE - 4, target, foot, Stroke.THIN.in(Ink.ALERT));
        text(sketch, target + 1, ABOVE - 1.5, Texts.of("found.chart.target"), Anchor.START, Ink.ALERT);
        dots(sketch, low, per, width, foot);
        return Page.of(Texts.of("found.chart"), width, height, LINE, sketch.shapes());
    }

    private void axis(Sketch sketch, double low, double high, double per, double foot) {
        sketch.line(SIDE, foot, SIDE + (high - low) * per, foot, Stroke.THIN.in(Ink.GREY));
        int step = 1;
        while ((high - low) / step > MOST_TICKS) {
            step = step == 1 ? 2 : step == 2 ? 5 : step * 2;
        }
        for (int db = (int) Math.ceil(low / step) * step; db <= high; db += step) {
            double x = SIDE + (db - low) * per;
            sketch.line(x, foot, x, foot + 1, Stroke.THIN.in(Ink.GREY));
            text(sketch, x, foot + 1 + Lettering.TABLE, (db > 0 ? "+" : "") + db, Anchor.MIDDLE, Ink.GREY);
        }
        double end = foot + 1 + Lettering.TABLE * (1 + Lettering.LEADING) - 0.6;
        text(sketch, SIDE + (high - low) * per, end, Texts.of("found.chart.margin"), Anchor.END, Ink.GREY);
        text(sketch, SIDE, end, Texts.of("found.chart." + cost), Anchor.START, Ink.GREY);
    }

    private void dots(Sketch sketch, double low, double per, double width, double foot) {
        double least = designs.stream().mapToDouble(cost::of).min().orElse(0);
        double most = designs.stream().mapToDouble(cost::of).max().orElse(1);
        double tall = foot - ABOVE - 2 * ROW;
        List<Bounds> taken = new ArrayList<>();
        for (Design design : designs) {
            double x = SIDE + (design.margin() - low) * per;
            double y = y(design, least, most, foot, tall);
            taken.add(new Bounds(x - DOT, y - DOT, x + DOT, y + DOT));
        }
        List<Design> order = new ArrayList<>(designs);
        order.sort(Comparator.comparingDouble(cost::of).reversed());
        for (Design design : order) {
            double x = SIDE + (design.margin() - low) * per;
            double y = y(design, least, most, foot, tall);
            boolean now = design.equals(chosen);
            sketch.dot(x, y, now ? 1.5 * DOT : DOT, now ? Ink.ACCENT : Ink.GREY);
            label(sketch, design, x, y, width, foot, taken);
        }
    }

    private double y(Design design, double least, double most, double foot, double tall) {
        double share = most - least < 1e-9 ? 0.5 : (cost.of(design) - least) / (most - least);
        return foot - ROW - share * tall;
    }

    /** Beside the dot where there is room, else a row lower or higher with a line to it. */
    private void label(
            Sketch sketch, Design design, double x, double y, double width, double foot, List<Bounds> taken) {
        boolean now = design.equals(chosen);
        Weight weight = now ? Weight.SEMIBOLD : Weight.REGULAR;
        String words = Texts.of("found.chart.dot", model.wording().kinds(design), cost.words(design, model));
        double wide = measure.width(words, Lettering.TABLE, weight);
        Bounds place = place(x, y, wide, width, foot, taken);
        taken.add(place);
        boolean right = place.x0() > x;
        double base = place.y1() - (ROW - Lettering.TABLE) * 0.9;
        if (Math.abs(place.centreY() - y) > ROW / 3) {
            double to = right ? place.x0() - 0.4 : place.x1() + 0.4;
            sketch.line(x, y, to, place.centreY(), Stroke.RULE);
        }
        sketch.text(
                right ? place.x0() : place.x1(),
                base,
                words,
                Lettering.TABLE,
                weight,
                right ? Anchor.START : Anchor.END,
                now ? Ink.ACCENT : Ink.BLACK);
    }

    private static Bounds place(double x, double y, double wide, double width, double foot, List<Bounds> taken) {
        Bounds first = null;
        for (int step = 0; step < 24; step++) {
            int halfRows = (step + 1) / 2;
            double at = y + (step % 2 == 0 ? -halfRows : halfRows) * ROW / 2;
            for (boolean right : new boolean[] {true, false}) {
                double x0 = right ? x + GAP : x - GAP - wide;
                Bounds b = new Bounds(x0, at - ROW / 2, x0 + wide, at + ROW / 2);
                boolean inside = b.x0() >= 0 && b.x1() <= width && b.y0() >= ABOVE - 1 && b.y1() <= foot;
                if (inside && first == null) {
                    first = b;
                }
                if (inside && taken.stream().noneMatch(b::overlaps)) {
                    return b;
                }
            }
        }
        return first == null ? new Bounds(x + GAP, y - ROW / 2, x + GAP + wide, y + ROW / 2) : first;
    }

    private static void text(Sketch sketch, double x, double y, String words, Anchor anchor, Ink ink) {
        sketch.text(x, y, words, Lettering.TABLE, Weight.REGULAR, anchor, ink);
    }
}
