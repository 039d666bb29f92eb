package hushmaze.drawing.page;

import hushmaze.build.fixing.CentreOfMass;
import hushmaze.build.fixing.PortFrame;
import hushmaze.build.fixing.Rows;
import hushmaze.build.fixing.Way;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Point;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.draft.DimensionChain;
import hushmaze.drawing.draft.DimensionChain.Side;
import hushmaze.drawing.draft.Hatching;
import hushmaze.drawing.draft.Scale;
import hushmaze.project.Opening.Surface;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/** A box on its surface: the surface seen from the room, the box seen through; and a section across the surface. */
final class FixingViews {
    /** Depth of the surface that is shown hatched, mm on paper. */
    private static final double DEEP = 6;
    /** How far it goes on beyond the box, mm on paper. */
    private static final double BEYOND = 9;
    /** Arm of a screw's cross, mm on paper. */
    private static final double CROSS = 1.6;
    /** How far the line of a stud goes on beyond the box, mm on paper. */
    private static final double STUD = 4;
    /** Width of a gasket that is drawn, m. */
    private static final double GASKET_WIDE = 0.01;
    /** Gasket where the box lies on its surface itself, mm on paper. */
    private static final double GASKET = 0.9;

    private final Job job;
    private final Solid solid;
    private final Rows rows;
    private final Surface surface;
    private final PortPlace port;
    private final Optional<PortFrame> frame;

    FixingViews(Job job) {
        this.job = job;
        this.solid = job.result().solid();
        this.rows = job.result().rows();
        this.surface = job.result().path().brief().opening().surface();
        this.port = solid.openingPort();
        this.frame = PortFrame.of(solid, rows);
    }

    /** The surface seen from the room; the box and its cleats are outlines. */
    Sketch surface(Scale scale) {
        PlanarView view = new PlanarView(job, rows.along(), rows.between(), mirrored(), scale);
        Sketch sketch = view.sketch();
        for (Rows.Cleat cleat : rows.cleats()) {
            sketch.rectangle(cleat(view, cleat), Stroke.THIN, Ink.PALE);
        }
        sketch.rectangle(view.picture(solid.outer()), Stroke.OUTLINE, null);
        view.port(port, Stroke.HIDDEN);
        studs(view);
        rows.screwed().forEach(cleat -> screws(view, cleat));
        weight(sketch, view.x(CentreOfMass.along(solid, rows.along())), view.y(middle(rows.between())));
        surfaceDimensions(view);
        Caption.under(sketch, job.measure(), word("view.fixing."), surfaceWords());
        return sketch;
    }

    /** Whether the surface shows high places along the rows on the left. */
    private boolean mirrored() {
        // Seen against the direction away from the surface, right and up make a right-handed frame with it.
        boolean cyclic = (rows.along().ordinal() + 1) % 3 == rows.between().ordinal();
        return cyclic != port.role().isLow();
    }

    private double middle(Axis axis) {
        return CentreOfMass.along(solid, axis);
    }

    private String word(String key) {
        return Labels.of(key + surface.name().toLowerCase(Locale.ROOT));
    }

    private boolean hooked() {
        return job.result().fixing().hangs(Way.HOOKED);
    }

    private List<String> surfaceWords() {
        List<String> words = new ArrayList<>();
        Axis up = rows.between();
        Axis right = rows.along();
        double fromLeft = mirrored()
                ? solid.outer().high(right) - middle(right)
                : middle(right) - solid.outer().low(right);
        words.add(Labels.of(
                "view.fixing.through",
                job.length(fromLeft),
                side(right, mirrored()),
                job.length(middle(up) - solid.outer().low(up)),
                side(up, false)));
        words.add(Labels.of(
                "view.fixing.sides",
                side(rows.along(), mirrored()),
                side(rows.along(), !mirrored()),
                side(rows.between(), false),
                side(rows.between(), true),
                side(rows.away(), port.role().isLow())));
        if (!rows.cleats().isEmpty()) {
            boolean spaced =
                    job.result().path().brief().construction().mounting().studSpacing() != null;
            words.add(Labels.of(spaced ? "view.fixing.studs" : "view.fixing.noStuds"));
            if (hooked()) {
                words.add(Labels.of("view.fixing.rows.hook"));
            }
        }
        return words;
    }

    private static String side(Axis axis, boolean high) {
        return PartNames.role(SeenEdges.side(axis, high));
    }

    private static Bounds cleat(PlanarView view, Rows.Cleat cleat) {
        double x0 = view.x(cleat.from());
        double x1 = view.x(cleat.to());
        return new Bounds(Math.min(x0, x1), view.y(cleat.high()), Math.max(x0, x1), view.y(cleat.low()));
    }

    /** Two in a stud stand one above the other. */
    private static void screws(PlanarView view, Rows.Cleat cleat) {
        for (double at : new TreeSet<>(cleat.screws())) {
            boolean two = Collections.frequency(cleat.screws(), at) > 1;
            double[] rows = two
                    ? new double[] {cleat.at() - cleat.half(), cleat.at() + cleat.half()}
                    : new double[] {cleat.at()};
            for (double row : rows) {
                cross(view.sketch(), view.x(at), view.y(row));
            }
        }
    }

    private void studs(PlanarView view) {
        if (rows.screwed().isEmpty()
                || job.result().path().brief().construction().mounting().studSpacing() == null) {
            return;
        }
        Bounds outer = view.picture(solid.outer());
        rows.screwed().get(0).screws().stream()
                .distinct()
                .forEach(at -> view.sketch()
                        .line(view.x(at), outer.y0() - STUD, view.x(at), outer.y1() + STUD, Stroke.CENTRE));
    }

    private static void cross(Sketch sketch, double x, double y) {
        sketch.line(x - CROSS, y, x + CROSS, y, Stroke.OUTLINE);
        sketch.line(x, y - CROSS, x, y + CROSS, Stroke.OUTLINE);
    }

    /** Where the weight acts. */
    private static void weight(Sketch sketch, double x, double y) {
        sketch.add(new Shape.Circle(x, y, CROSS, Stroke.THIN, null));
        sketch.dot(x, y, CROSS / 3, Ink.BLACK);
    }

    private void surfaceDimensions(PlanarView view) {
        Cuboid outer = solid.outer();
        Axis right = rows.along();
        Axis up = rows.between();
        Bounds drawn = view.sketch().bounds(job.measure());
        Places ports =
                Places.of(outer.low(right), port.hole().low(right), port.hole().high(right), outer.high(right));
        chain(view.sketch(), Side.BELOW, drawn.y1(), DimensionChain.FIRST, ports, view::x);
        Places length = Places.of(DoubleStream.concat(
                        DoubleStream.of(outer.low(right), outer.high(right)),
                        rows.screwed().stream().flatMapToDouble(cleat -> DoubleStream.of(cleat.from(), cleat.to())))
                .toArray());
        double next = chain(view.sketch(), Side.ABOVE, drawn.y0(), DimensionChain.FIRST, length, view::x);
        if (length.stretches() > 1) {
            Rows.Cleat cleat = rows.screwed().get(0);
            chain(view.sketch(), Side.ABOVE, drawn.y0(), next, Places.of(cleat.from(), cleat.to()), view::x);
        }
        chain(
                view.sketch(),
                Side.LEFT,
                drawn.x0(),
                DimensionChain.FIRST,
                Places.of(outer.low(up), port.hole().low(up), port.hole().high(up), outer.high(up)),
                view::y);
        chain(view.sketch(), Side.RIGHT, drawn.x1(), DimensionChain.FIRST, rowPlaces(), view::y);
    }

    /** The box's edges and the rows. */
    private Places rowPlaces() {
        Cuboid outer = solid.outer();
        return Places.of(DoubleStream.concat(
                        DoubleStream.of(outer.low(rows.between()), outer.high(rows.between())),
                        rows.cleats().stream().mapToDouble(Rows.Cleat::mark))
                .toArray());
    }

    private double chain(
            Sketch sketch, Side side, double outline, double distance, Places places, DoubleUnaryOperator toPaper) {
        return places.draw(new DimensionChain(sketch, job.measure(), side, outline, distance), toPaper, job);
    }

    /** A section across the surface, turned as the surface is: a wall upright on the left, a ceiling above. */
    Sketch section(Scale scale) {
        Across across = new Across(scale);
        Sketch sketch = new Sketch();
        Axis up = rows.between();
        double low = solid.outer().low(up);
        double high = solid.outer().high(up);
        double off = job.result().fits().standOff();
        double depth = solid.outer().size(rows.away());
        double shell = solid.box().shellThickness();
        across.surface(sketch, low, high);
        for (Rows.Cleat cleat : rows.cleats()) {
            across.timber(sketch, cleat);
        }
        across.packing(sketch, off);
        Bounds box = across.box(off, low, off + depth, high);
        sketch.rectangle(box, Stroke.OUTLINE, null);
        for (double edge : new double[] {port.hole().low(up), port.hole().high(up)}) {
            across.line(sketch, 0, edge, off + shell, edge, Stroke.HIDDEN);
        }
        for (Rows.Cleat cleat : rows.screwed()) {
            double head = cleat.kind() == Rows.Kind.CLEAT ? off + shell : off;
            across.line(sketch, head, cleat.at(), -DEEP / scale.paper(1), cleat.at(), Stroke.CENTRE);
        }
        double centre = off + rows.centre();
        weight(sketch, across.x(centre, middle(up)), across.y(centre, middle(up)));
        across.dimensions(sketch, off, depth, centre);
        Caption.under(sketch, job.measure(), Labels.of("view.fixing.section"), sectionWords());
        return sketch;
    }

    private List<String> sectionWords() {
        List<String> words = new ArrayList<>();
        words.add(word("view.fixing.hatched."));
        words.add(Labels.of(rows.cleats().isEmpty() ? "view.fixing.gasket" : "view.fixing.packing"));
        if (hooked()) {
            words.add(Labels.of("view.fixing.hook"));
        }
        words.add(Labels.of("view.fixing.weight"));
        return words;
    }

    /** The section's own directions: away from the surface, and from one row to the other. */
    private final class Across {
        private final Scale scale;

        Across(Scale scale) {
            this.scale = scale;
        }

        double x(double away, double between) {
            return surface == Surface.WALL ? scale.paper(away) : scale.paper(between);
        }

        double y(double away, double between) {
            return switch (surface) {
                case WALL -> -scale.paper(between);
                case FLOOR -> -scale.paper(away);
                case CEILING -> scale.paper(away);
            };
        }

        Bounds box(double away0, double between0, double away1, double between1) {
            double x0 = x(away0, between0);
            double x1 = x(away1, between1);
            double y0 = y(away0, between0);
            double y1 = y(away1, between1);
            return new Bounds(Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1));
        }

        void line(Sketch sketch, double a0, double b0, double a1, double b1, Stroke stroke) {
            sketch.line(x(a0, b0), y(a0, b0), x(a1, b1), y(a1, b1), stroke);
        }

        /** The building, with a gap where the opening is. */
        void surface(Sketch sketch, double low, double high) {
            double metre = scale.paper(1);
            double deep = DEEP / metre;
            double beyond = BEYOND / metre;
            double gap0 = port.hole().low(rows.between());
            double gap1 = port.hole().high(rows.between());
            for (double[] part : new double[][] {{low - beyond, gap0}, {gap1, high + beyond}}) {
                Hatching.FALLING.fill(sketch, box(-deep, part[0], 0, part[1]), Stroke.THIN.in(Ink.GREY));
                line(sketch, 0, part[0], 0, part[1], Stroke.OUTLINE);
            }
            line(sketch, -deep, gap0, 0, gap0, Stroke.OUTLINE);
            line(sketch, -deep, gap1, 0, gap1, Stroke.OUTLINE);
        }

        /** A cleat cut across: the diagonals are the usual sign of timber. */
        void timber(Sketch sketch, Rows.Cleat cleat) {
            double thick = cleat.thickness();
            // Where its edges are at the surface and at the box.
            double high = cleat.kind() == Rows.Kind.WALL_HOOK ? cleat.high() - thick : cleat.high();
            double low = cleat.kind() == Rows.Kind.BOX_HOOK ? cleat.low() + thick : cleat.low();
            List<Point> outline =
                    List.of(point(0, cleat.low()), point(thick, low), point(thick, cleat.high()), point(0, high));
            line(sketch, 0, cleat.low(), thick, cleat.high(), Stroke.THIN);
            line(sketch, 0, high, thick, low, Stroke.THIN);
            sketch.polygon(outline, Stroke.OUTLINE, null);
        }

        private Point point(double away, double between) {
            return new Point(x(away, between), y(away, between));
        }

        /** What fills the gap around the port. */
        void packing(Sketch sketch, double off) {
            double thick = Math.max(off, GASKET / scale.paper(1));
            double low = port.hole().low(rows.between());
            double high = port.hole().high(rows.between());
            double below = Math.min(GASKET_WIDE, low - solid.outer().low(rows.between()));
            double above = Math.min(GASKET_WIDE, solid.outer().high(rows.between()) - high);
            if (frame.isPresent()) {
                below = frame.get().along().low();
                above = frame.get().along().high();
            }
            for (double[] part : new double[][] {{low - below, low}, {high, high + above}}) {
                if (part[1] > part[0]) {
                    sketch.rectangle(box(0, part[0], thick, part[1]), null, Ink.BLACK);
                }
            }
        }

        void dimensions(Sketch sketch, double off, double depth, double centre) {
            Bounds drawn = sketch.bounds(job.measure());
            boolean wall = surface == Surface.WALL;
            DoubleUnaryOperator away = wall ? s -> x(s, 0) : s -> y(s, 0);
            DoubleUnaryOperator between = wall ? t -> y(0, t) : t -> x(0, t);
            double before = wall ? drawn.y1() : drawn.x0();
            double after = wall ? drawn.y0() : drawn.x1();
            chain(
                    sketch,
                    wall ? Side.BELOW : Side.LEFT,
                    before,
                    DimensionChain.FIRST,
                    Places.of(0, off, off + depth),
                    away);
            chain(sketch, wall ? Side.ABOVE : Side.RIGHT, after, DimensionChain.FIRST, Places.of(0, centre), away);
            Side along = wall ? Side.RIGHT : surface == Surface.FLOOR ? Side.ABOVE : Side.BELOW;
            double outline = wall ? drawn.x1() : surface == Surface.FLOOR ? drawn.y0() : drawn.y1();
            chain(sketch, along, outline, DimensionChain.FIRST, rowPlaces(), between);
        }
    }
}
