package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.build.SheetPlan;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Page;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Scale;

/** Parts and sheets in true size on pages of their own, for machines and for laying on the piece itself. */
public final class TrueSize {
    private static final Scale FULL = new Scale(1);
    private static final double MARGIN = 10;
    private static final double THIN = 0.25;
    private static final double LARGEST = 40;

    private final TextMeasure measure;

    public TrueSize(TextMeasure measure) {
        this.measure = measure;
    }

    /** An item's outline with its cut-outs, grooves, screw holes and edges to seal, and its mark where nothing is in the way. */
    public Page part(CutItem item) {
        double length = FULL.paper(item.length());
        double width = FULL.paper(item.width());
        Sketch sketch = new Sketch();
        new PlateOutline(item.length(), item.width(), item.cutouts()).draw(sketch, FULL.paper(1), Stroke.OUTLINE);
        new PlateWork(item).draw(sketch, FULL);
        if (item.cutouts().isEmpty() && item.grooves().isEmpty()) {
            mark(sketch, item.mark(), new Bounds(0, -width, length, 0));
        }
        return page(Labels.of("partPages.one", item.mark()), sketch, length, width);
    }

    /** A sheet with the outlines and marks of its panels. */
    public Page sheet(String material, SheetPlan plan) {
        double length = FULL.paper(plan.sheet().length());
        double width = FULL.paper(plan.sheet().width());
        Sketch sketch = new Sketch();
        sketch.rectangle(new Bounds(0, -width, length, 0), Stroke.THIN, null);
        for (SheetPlan.Placed p : plan.panels()) {
            double x = FULL.paper(p.x());
            double y = -FULL.paper(p.y());
            Bounds box = new Bounds(x, y - FULL.paper(p.width()), x + FULL.paper(p.length()), y);
            sketch.rectangle(box, Stroke.OUTLINE, null);
            mark(sketch, p.mark(), box);
        }
        return page(material, sketch, length, width);
    }

    private void mark(Sketch sketch, String mark, Bounds box) {
        boolean upwards = box.height() > box.width();
        double along = Math.max(box.width(), box.height());
        double across = Math.min(box.width(), box.height());
        double perSize = measure.width(mark, 1, Weight.REGULAR);
        double size = Math.min(LARGEST, Math.min(along * 0.6 / perSize, across * 0.6));
        double drop = size * TextMeasure.CAPITAL / 2;
        sketch.add(new Shape.Text(
                box.centreX() + (upwards ? drop : 0),
                box.centreY() + (upwards ? 0 : drop),
                mark,
                size,
                Weight.REGULAR,
                Anchor.MIDDLE,
                upwards,
                Ink.GREY));
    }

    private static Page page(String title, Sketch sketch, double length, double width) {
        Sketch moved = new Sketch().add(sketch, MARGIN, MARGIN + width);
        return new Page(title, length + 2 * MARGIN, width + 2 * MARGIN, THIN, moved.shapes());
    }
}
