package hushmaze.drawing.page;

import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.axon.Edge;
import hushmaze.drawing.axon.Form;
import hushmaze.drawing.axon.Isometric;
import hushmaze.drawing.axon.Marks;
import hushmaze.drawing.axon.Picture;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The box so far, on its back, seen from above into its open front; what a step adds is tinted and marked.
 */
final class StepPicture {
    /** Lettering of the marks, mm. */
    static final double MARK = 3.0;

    /** What runs along the joints. */
    enum Kind {
        GLUE(new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.ACCENT)),
        SEALANT(new Stroke(true, Stroke.Pattern.DOTTED, Ink.ACCENT)),
        GASKET(new Stroke(true, Stroke.Pattern.DASHED, Ink.ACCENT));

        private final Stroke stroke;

        Kind(Stroke stroke) {
            this.stroke = stroke;
        }

        Stroke stroke() {
            return stroke;
        }
    }

    /** How the box lies. */
    enum Lie {
        /** On its back. */
        BACK,
        /** On its back, the cover held above it. */
        LIFTED,
        /** On its cover. */
        FRONT,
        /** On its back, in the parts it is carried in. */
        PARTED
    }

    /**
     * Timber on the outside of the box.
     *
     * @param added whether the step puts it on
     */
    record Timber(List<Cuboid> blocks, boolean added) {
        Timber {
            blocks = List.copyOf(blocks);
        }
    }

    private final Set<Part> added;
    private final List<Edge> lines;
    private final Kind kind;
    private final Lie lie;
    private final Timber timber;
    private final BoxPicture picture;

    /**
     * @param so parts that are there, those added among them
     * @param added parts the step adds
     * @param lines glue, sealant or gasket of the step
     * @param kind how those lines are drawn
     * @param lie how the box lies and where its cover is
     * @param timber on its outside
     */
    StepPicture(Solid solid, List<Part> so, Set<Part> added, List<Edge> lines, Kind kind, Lie lie, Timber timber) {
        this.added = Set.copyOf(added);
        this.lines = List.copyOf(lines);
        this.kind = kind;
        this.lie = lie;
        this.timber = timber;
        this.picture = picture(solid, so, lie, timber);
    }

    private static BoxPicture picture(Solid solid, List<Part> so, Lie lie, Timber timber) {
        List<BoxPicture.Shown> shown = new ArrayList<>();
        for (Part part : so) {
            boolean lifted = lie == Lie.LIFTED && part.role() == Role.FRONT;
            int module = lie == Lie.PARTED ? module(part, solid) : 0;
            Form form = Form.of(part);
            if (lie == Lie.FRONT) {
                form = form.turnedOver();
            }
            form = form.moved(module * 0.25 * solid.outer().size(Axis.X), 0, lifted ? lift(solid) : 0);
            shown.add(new BoxPicture.Shown(part, form, lifted ? 1 : module));
        }
        for (Cuboid block : timber.blocks()) {
            Form form = Form.of(block);
            shown.add(new BoxPicture.Shown(null, lie == Lie.FRONT ? form.turnedOver() : form, 0));
        }
        return new BoxPicture(shown);
    }

    /** Timber is no part of the box and has no mark. */
    private boolean isAdded(Part part) {
        return part == null ? timber.added() : added.contains(part);
    }

    /** How the box lies. */
    Lie lie() {
        return lie;
    }

    /** How far above the box a lifted cover is held, m. */
    static double lift(Solid solid) {
        return 0.25 * (solid.outer().size(Axis.X) + solid.outer().size(Axis.Y));
    }

    private static int module(Part part, Solid solid) {
        double x = part.bounds().centre(Axis.X);
        return solid.modules().stream()
                .filter(m -> m.bounds().x0() <= x && x <= m.bounds().x1())
                .mapToInt(hushmaze.solid.Module::number)
                .findFirst()
                .orElse(0);
    }

    /**
     * Draws it.
     *
     * @param view all steps have the same
     * @param mark of a part
     */
    Sketch draw(Isometric view, Function<Part, String> mark) {
        Sketch sketch = new Sketch();
        Picture drawn = picture.draw(sketch, view, part -> isAdded(part) ? Ink.ACCENT_PALE : null);
        drawn.lines(lie == Lie.FRONT ? lines.stream().map(Edge::turnedOver).toList() : lines, kind.stroke());
        Set<String> hidden = hidden(mark);
        List<Marks.Mark> marks = picture.marks(view, ofAdded(mark)).stream()
                .filter(m -> !hidden.contains(m.text()))
                .toList();
        new Marks(picture.hull(view), MARK).draw(sketch, marks);
        return sketch;
    }

    /** Marks of the parts it adds that nothing is seen of; they are not in the picture. */
    Set<String> hidden(Function<Part, String> mark) {
        return picture.hidden(ofAdded(mark));
    }

    private Function<Part, String> ofAdded(Function<Part, String> mark) {
        return part -> part != null && added.contains(part) ? mark.apply(part) : null;
    }

    /** Width without marks at 1 mm for a metre. */
    double width() {
        List<Point> hull = picture.hull(new Isometric(1));
        return hull.stream().mapToDouble(Point::x).max().orElseThrow()
                - hull.stream().mapToDouble(Point::x).min().orElseThrow();
    }

    /** Height without marks at 1 mm for a metre. */
    double height() {
        List<Point> hull = picture.hull(new Isometric(1));
        return hull.stream().mapToDouble(Point::y).max().orElseThrow()
                - hull.stream().mapToDouble(Point::y).min().orElseThrow();
    }

    /** Room marks take beside a picture, mm. */
    static double beside(TextMeasure measure) {
        return Marks.room(List.of("B00"), MARK, measure);
    }
}
