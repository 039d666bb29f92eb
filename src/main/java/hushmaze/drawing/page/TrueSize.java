package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.build.CutList;
import hushmaze.build.SheetPlan;
import hushmaze.build.joint.Hole;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Layer;
import hushmaze.drawing.Page;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Scale;
import hushmaze.material.Screw;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts and sheets in true size on pages of their own, for machines and for laying on the piece itself. What is to be done in
 * one go is a layer of its own.
 */
public final class TrueSize {
    private static final Scale FULL = new Scale(1);
    private static final double MARGIN = 10;
    private static final double THIN = 0.25;
    private static final double LARGEST = 40;
    /** Rings with the numbers of cuts, against those on a printed page. */
    private static final double RINGS_ENLARGED = 4;

    private final TextMeasure measure;
    private final double holeDiameter;

    /** One page in the making. */
    private static final class Layers {
        private final List<Layer> layers = new ArrayList<>();
        private final double length;
        private final double width;

        Layers(double length, double width) {
            this.length = FULL.paper(length);
            this.width = FULL.paper(width);
        }

        /** A layer, unless nothing is in it. */
        void add(String id, String title, Sketch sketch) {
            if (!sketch.isEmpty()) {
                Sketch moved = new Sketch().add(sketch, MARGIN, MARGIN + width);
                layers.add(new Layer(id, title, moved.shapes()));
            }
        }

        Page page(String title) {
            return new Page(title, length + 2 * MARGIN, width + 2 * MARGIN, THIN, layers);
        }
    }

    /**
     * @param measure widths of texts
     * @param screw that goes through the holes
     */
    public TrueSize(TextMeasure measure, Screw screw) {
        this.measure = measure;
        this.holeDiameter = screw.clearanceHole();
    }

    /**
     * An item in layers: its outline, into which cut-outs at the edge make notches; cut-outs within it; grooves; screw holes as
     * circles; edges to seal; and its mark where nothing is in the way.
     */
    public Page part(CutItem item) {
        Layers layers = new Layers(item.length(), item.width());
        PlateOutline outline = new PlateOutline(item.length(), item.width(), item.cutouts());
        Sketch around = new Sketch();
        PlateOutline.draw(around, FULL.paper(1), Stroke.OUTLINE, outline.outer());
        layers.add("outline", Labels.of("layer.outline"), around);
        Sketch within = new Sketch();
        PlateOutline.draw(within, FULL.paper(1), Stroke.OUTLINE, outline.inner());
        layers.add("cutouts", Labels.of("layer.cutouts"), within);
        Sketch grooves = new Sketch();
        new PlateWork(item).grooves(grooves, FULL);
        layers.add("grooves", grooves(item.grooves()), grooves);
        Sketch holes = new Sketch();
        item.holes().forEach(hole -> hole(holes, hole));
        layers.add("holes", Labels.of("layer.holes"), holes);
        Sketch seal = new Sketch();
        new PlateWork(item).edgesToSeal(seal, FULL);
        layers.add("seal", Labels.of("layer.seal"), seal);
        Sketch labels = new Sketch();
        if (item.cutouts().isEmpty() && item.grooves().isEmpty()) {
            mark(labels, item.mark(), new Bounds(0, -FULL.paper(item.width()), FULL.paper(item.length()), 0));
        }
        layers.add("labels", Labels.of("layer.labels"), labels);
        return layers.page(Labels.of("partPages.one", item.mark()));
    }

    /**
     * A sheet in layers: its edge, the rectangles of its panels as they are cut out, the middles of the cuts with their numbers,
     * what is done to each panel afterwards, and the panels' marks.
     */
    public Page sheet(String material, SheetPlan plan, CutList cutList) {
        Layers layers = new Layers(plan.sheet().length(), plan.sheet().width());
        Sketch edge = new Sketch();
        edge.rectangle(
                new Bounds(
                        0,
                        -FULL.paper(plan.sheet().width()),
                        FULL.paper(plan.sheet().length()),
                        0),
                Stroke.THIN,
                null);
        layers.add("sheet", Labels.of("layer.sheet"), edge);
        Sketch outlines = new Sketch();
        Sketch labels = new Sketch();
        List<Bounds> taken = new ArrayList<>();
        for (SheetPlan.Placed p : plan.panels()) {
            Bounds box = new PlacedWork(p).whole();
            outlines.rectangle(box, Stroke.OUTLINE, null);
            taken.add(mark(labels, p.mark(), box));
        }
        layers.add("outline", Labels.of("layer.panels"), outlines);
        work(layers, plan, cutList);
        cuts(layers, plan, labels, taken);
        return layers.page(material);
    }

    /** The cuts, then the marks, then the numbers of the cuts, which keep clear of what is taken. */
    private static void cuts(Layers layers, SheetPlan plan, Sketch labels, List<Bounds> taken) {
        Sketch cuts = new Sketch();
        Sketch numbers = new Sketch();
        CutRings rings = new CutRings(RINGS_ENLARGED, taken);
        for (SheetGeometry.Line line : new SheetGeometry(plan).lines()) {
            cuts.line(
                    FULL.paper(line.x0()),
                    -FULL.paper(line.y0()),
                    FULL.paper(line.x1()),
                    -FULL.paper(line.y1()),
                    Stroke.CENTRE.in(Ink.ACCENT));
            rings.put(numbers, line, FULL);
        }
        layers.add("cuts", Labels.of("layer.cuts"), cuts);
        layers.add("labels", Labels.of("layer.labels"), labels);
        layers.add("cut-numbers", Labels.of("layer.cutNumbers"), numbers);
    }

    /** What is done to the panels of a sheet besides sawing them out. */
    private void work(Layers layers, SheetPlan plan, CutList cutList) {
        Sketch cutouts = new Sketch();
        Sketch grooves = new Sketch();
        Sketch holes = new Sketch();
        List<Groove> all = new ArrayList<>();
        for (SheetPlan.Placed p : plan.panels()) {
            PlacedWork placed = new PlacedWork(p);
            CutItem item = cutList.items()
                    .filter(i -> i.mark().equals(p.mark()))
                    .findFirst()
                    .orElseThrow();
            item.cutouts().forEach(c -> cutouts.rectangle(placed.bounds(c), Stroke.OUTLINE, null));
            for (Groove g : item.grooves()) {
                grooves.rectangle(placed.bounds(new Cutout(g.u0(), g.v0(), g.u1(), g.v1())), Stroke.THIN, null);
                all.add(g);
            }
            item.holes().forEach(hole -> hole(holes, placed.onSheet(hole)));
        }
        layers.add("cutouts", Labels.of("layer.cutouts"), cutouts);
        layers.add("grooves", grooves(all), grooves);
        layers.add("holes", Labels.of("layer.holes"), holes);
    }

    private void hole(Sketch sketch, Hole hole) {
        sketch.circle(FULL.paper(hole.u()), -FULL.paper(hole.v()), FULL.paper(holeDiameter) / 2, Stroke.THIN);
    }

    private static String grooves(List<Groove> grooves) {
        String depths = String.join(
                ", ",
                grooves.stream()
                        .mapToDouble(Groove::depth)
                        .distinct()
                        .mapToObj(depth -> LengthFormat.withUnit(depth, UnitSystem.METRIC))
                        .toList());
        return Labels.of("layer.grooves", depths);
    }

    /** Writes a mark into a rectangle, as large as it goes; what it takes of it. */
    private Bounds mark(Sketch sketch, String mark, Bounds box) {
        boolean upwards = box.height() > box.width();
        double along = Math.max(box.width(), box.height());
        double across = Math.min(box.width(), box.height());
        double perSize = measure.width(mark, 1, Weight.REGULAR);
        double size = Math.min(LARGEST, Math.min(along * 0.6 / perSize, across * 0.6));
        double drop = size * TextMeasure.CAPITAL / 2;
        Shape.Text text = new Shape.Text(
                box.centreX() + (upwards ? drop : 0),
                box.centreY() + (upwards ? 0 : drop),
                mark,
                size,
                Weight.REGULAR,
                Anchor.MIDDLE,
                upwards,
                Ink.GREY);
        sketch.add(text);
        return text.bounds(measure);
    }
}
