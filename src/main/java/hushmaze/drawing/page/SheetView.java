package hushmaze.drawing.page;

import hushmaze.build.SheetPlan;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.DimensionChain;
import hushmaze.drawing.draft.DimensionChain.Side;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A sheet with its panels, offcuts and numbered cuts. */
final class SheetView {
    private static final double LEAST = 1.9;
    private static final double SMALL = 2.4;

    private final Job job;
    private final SheetPlan plan;
    private final Scale scale;
    private final Sketch sketch = new Sketch();
    private final List<Bounds> taken = new ArrayList<>();
    private final CutRings rings = new CutRings(1, taken);

    SheetView(Job job, SheetPlan plan, Scale scale) {
        this.job = job;
        this.plan = plan;
        this.scale = scale;
    }

    /** The view; the sheet's low corner is at the origin, its width runs upwards. */
    Sketch draw() {
        double length = plan.sheet().length();
        double width = plan.sheet().width();
        Bounds whole = picture(0, 0, length, width);
        sketch.rectangle(whole, null, Ink.PALE);
        SheetGeometry geometry = new SheetGeometry(plan);
        double trim = plan.trim();
        if (trim > 0) {
            sketch.rectangle(
                    picture(trim, trim, length - 2 * trim, width - 2 * trim), Stroke.HIDDEN.in(Ink.GREY), null);
        }
        for (SheetPlan.Placed panel : plan.panels()) {
            Bounds box = box(panel);
            sketch.rectangle(box, Stroke.THIN, Ink.WHITE);
            panelWords(panel, box);
        }
        for (SheetGeometry.Offcut offcut : geometry.offcuts()) {
            offcutWords(offcut);
        }
        sketch.rectangle(whole, Stroke.OUTLINE, null);
        Places.of(0, length)
                .draw(
                        new DimensionChain(sketch, job.measure(), Side.BELOW, 0, DimensionChain.FIRST),
                        scale::paper,
                        job);
        Places.of(0, width)
                .draw(
                        new DimensionChain(sketch, job.measure(), Side.LEFT, 0, DimensionChain.FIRST),
                        m -> -scale.paper(m),
                        job);
        sketch.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .forEach(text -> taken.add(text.bounds(job.measure())));
        for (SheetGeometry.Line line : geometry.lines()) {
            rings.put(sketch, line, scale);
        }
        return sketch;
    }

    private Bounds picture(double x, double y, double length, double width) {
        return new Bounds(scale.paper(x), -scale.paper(y + width), scale.paper(x + length), -scale.paper(y));
    }

    /** Whether every panel takes its mark and sizes in letters that are read without effort. */
    boolean legible() {
        return plan.panels().stream().allMatch(this::legible);
    }

    private boolean legible(SheetPlan.Placed panel) {
        Bounds box = box(panel);
        return wordings(panel)
                .limit(2)
                .anyMatch(lines -> fits(lines, box, SMALL, false) || fits(lines, box, SMALL, true));
    }

    private Bounds box(SheetPlan.Placed panel) {
        return picture(panel.x(), panel.y(), panel.length(), panel.width());
    }

    /** Mark and sizes below each other, beside each other, the mark alone. */
    private Stream<List<String>> wordings(SheetPlan.Placed panel) {
        String sizes = job.bare(panel.length()) + " × " + job.bare(panel.width());
        return Stream.of(List.of(panel.mark(), sizes), List.of(panel.mark() + "  " + sizes), List.of(panel.mark()));
    }

    private void panelWords(SheetPlan.Placed panel, Bounds box) {
        words(wordings(panel).toList(), box, Ink.BLACK);
    }

    private void offcutWords(SheetGeometry.Offcut offcut) {
        Bounds box = picture(offcut.x(), offcut.y(), offcut.length(), offcut.width());
        String sizes = job.bare(offcut.length()) + " × " + job.bare(offcut.width());
        words(List.of(List.of(Labels.of("sheet.offcut"), sizes), List.of(sizes)), box, Ink.GREY);
    }

    /** Writes the first of several wordings that fits at all, as large as it fits, level or upright. */
    private void words(List<List<String>> wordings, Bounds box, Ink ink) {
        for (List<String> lines : wordings) {
            for (double size : new double[] {Lettering.DIMENSION, Lettering.TABLE, SMALL, LEAST}) {
                for (boolean upwards : new boolean[] {false, true}) {
                    if (fits(lines, box, size, upwards)) {
                        write(lines, box, size, upwards, ink);
                        return;
                    }
                }
            }
        }
    }

    private boolean fits(List<String> lines, Bounds box, double size, boolean upwards) {
        double widest = lines.stream()
                .mapToDouble(l -> job.measure().width(l, size, Weight.REGULAR))
                .max()
                .orElse(0);
        double tall = lines.size() * size * 1.25;
        double along = upwards ? box.height() : box.width();
        double across = upwards ? box.width() : box.height();
        return widest + 2 <= along && tall + 0.4 <= across;
    }

    private void write(List<String> lines, Bounds box, double size, boolean upwards, Ink ink) {
        double step = size * 1.25;
        double first = -(lines.size() - 1) * step / 2 + size * TextMeasure.CAPITAL / 2;
        for (int i = 0; i < lines.size(); i++) {
            double drop = first + i * step;
            Shape.Text text = new Shape.Text(
                    box.centreX() + (upwards ? drop : 0),
                    box.centreY() + (upwards ? 0 : drop),
                    lines.get(i),
                    size,
                    Weight.REGULAR,
                    Anchor.MIDDLE,
                    upwards,
                    ink);
            sketch.add(text);
        }
    }
}
