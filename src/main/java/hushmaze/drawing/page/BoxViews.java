package hushmaze.drawing.page;

import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.draft.DimensionChain.Side;
import hushmaze.drawing.draft.Scale;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Panel;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** The views of the general arrangement, each at any scale. */
final class BoxViews {
    /** How far from a seam a section is laid, m. */
    private static final double BESIDE = 0.03;

    /** Lines under the plan are at least so long before they wrap, mm. */
    private static final double PLAN_WORDS = 120;

    /** Rule over the plan's words where they stand beside it, mm. */
    private static final double WORDS_BESIDE = 70;

    private final Job job;
    private final Solid solid;

    BoxViews(Job job) {
        this.job = job;
        this.solid = job.result().solid();
    }

    /** Section through the fold plane at mid height, seen from the front. */
    Sketch plan(Scale scale) {
        PlanarView view = planOnly(scale);
        Caption.under(view.sketch(), job.measure(), PLAN_WORDS, Labels.of("view.plan"), planWords(new SeamLines(view)));
        HatchKey.under(view.sketch(), job);
        return view.sketch();
    }

    /** The same without the words under it. */
    Sketch planWithoutWords(Scale scale) {
        PlanarView view = planOnly(scale);
        Caption.under(view.sketch(), job.measure(), Labels.of("view.plan"), List.of());
        return view.sketch();
    }

    /** The words that belong to the plan. */
    Sketch wordsOfPlan(Scale scale) {
        Sketch words = new Sketch();
        words.line(0, 0, WORDS_BESIDE, 0, Stroke.RULE);
        SeamLines seams = new SeamLines(new PlanarView(job, Axis.X, Axis.Y, false, scale));
        Caption.under(words, job.measure(), Labels.of("view.plan"), planWords(seams));
        HatchKey.under(words, job);
        return words;
    }

    private PlanarView planOnly(Scale scale) {
        PlanarView view = new PlanarView(job, Axis.X, Axis.Y, false, scale);
        view.cut(Axis.Z, solid.cavity().centre(Axis.Z));
        view.gaskets(Axis.Z, solid.cavity().centre(Axis.Z));
        new AirLine(view).draw();
        Cuboid outer = solid.outer();
        SeamLines seams = new SeamLines(view);
        seams.draw();
        view.dimension(Side.ABOVE, lengths(true));
        seams.dimension();
        view.dimension(Side.ABOVE, Places.of(outer.x0(), outer.x1()));
        view.dimension(Side.BELOW, lengths(false));
        view.dimension(Side.LEFT, widths());
        view.dimension(Side.RIGHT, Places.of(outer.y0(), outer.y1()));
        return view;
    }

    private List<String> planWords(SeamLines seams) {
        List<String> words = new ArrayList<>(List.of(Labels.of("view.plan.cut"), Labels.of("view.plan.sides")));
        if (!solid.turns().isEmpty()) {
            words.add(Labels.of("view.plan.turns"));
        }
        words.addAll(seams.words());
        return words;
    }

    /** Outer faces and the liner faces of every pass. */
    private Places widths() {
        DoubleStream faces =
                solid.passes().stream().map(Pass::clear).flatMapToDouble(c -> DoubleStream.of(c.y0(), c.y1()));
        Cuboid outer = solid.outer();
        return Places.of(DoubleStream.concat(DoubleStream.of(outer.y0(), outer.y1()), faces)
                .toArray());
    }

    /**
     * Along the passes: walls, a baffle from the bare board to its tip, and its gap; without a baffle that turns at the
     * given end the clear length.
     */
    private Places lengths(boolean farEnd) {
        Cuboid outer = solid.outer();
        Cuboid cavity = solid.cavity();
        Cuboid clear = solid.passes().get(0).clear();
        return solid.turns().stream()
                .filter(t -> t.atFarEnd() == farEnd)
                .findFirst()
                .map(Turn::clear)
                .map(gap -> farEnd
                        ? Places.of(outer.x0(), cavity.x0(), gap.x0(), gap.x1(), outer.x1())
                        : Places.of(outer.x0(), gap.x0(), gap.x1(), cavity.x1(), outer.x1()))
                .orElseGet(() -> Places.of(outer.x0(), clear.x0(), clear.x1(), outer.x1()));
    }

    /** Section across the passes at mid length, seen from the far end. */
    Sketch crossSection(Scale scale) {
        PlanarView view = new PlanarView(job, Axis.Y, Axis.Z, false, scale);
        double at = middle();
        view.cut(Axis.X, at);
        view.gaskets(Axis.X, at);
        Cuboid outer = solid.outer();
        Cuboid clear = solid.passes().get(0).clear();
        view.dimension(Side.BELOW, widths());
        view.dimension(Side.ABOVE, Places.of(outer.y0(), outer.y1()));
        view.dimension(Side.LEFT, Places.of(outer.z0(), clear.z0(), clear.z1(), outer.z1()));
        view.dimension(Side.RIGHT, Places.of(outer.z0(), outer.z1()));
        Caption.under(view.sketch(), job.measure(), Labels.of("view.section"), List.of(Labels.of("view.section.cut")));
        return view.sketch();
    }

    /** The middle of the length, or a little beside it if a seam is there. */
    private double middle() {
        double middle = solid.cavity().centre(Axis.X);
        boolean atSeam = solid.box().seams().stream()
                .anyMatch(s -> Math.abs(solid.outer().x0() + s.position() - middle) < BESIDE / 2);
        return atSeam ? middle + BESIDE : middle;
    }

    /** The faces with ports in them. */
    List<Role> facesWithPorts() {
        return List.of(solid.openingPort(), solid.roomPort()).stream()
                .map(PortPlace::role)
                .distinct()
                .toList();
    }

    /** A face of the box from outside. */
    Sketch elevation(Role face, Scale scale) {
        Axis right = face.normal().u();
        Axis up = face.normal().v();
        // From outside, the directions run as in the box on these faces, and mirrored on the opposite ones.
        boolean mirrored = face == Role.BACK || face == Role.LAST_SIDE || face == Role.NEAR_END;
        PlanarView view = new PlanarView(job, right, up, mirrored, scale);
        joints(view, face);
        view.sketch().rectangle(view.picture(solid.outer()), Stroke.OUTLINE, null);
        double[] across = {solid.outer().low(right), solid.outer().high(right)};
        double[] along = {solid.outer().low(up), solid.outer().high(up)};
        view.dimension(Side.BELOW, Places.of(with(across, face, right)));
        view.dimension(Side.ABOVE, Places.of(across));
        view.dimension(Side.LEFT, Places.of(with(along, face, up)));
        view.dimension(Side.RIGHT, Places.of(along));
        ports(view, face);
        Caption.under(
                view.sketch(),
                job.measure(),
                Labels.of("view.elevation", PartNames.role(face)),
                List.of(Labels.of("view.elevation.seen")));
        return view.sketch();
    }

    private double[] with(double[] ends, Role face, Axis axis) {
        DoubleStream edges = List.of(solid.openingPort(), solid.roomPort()).stream()
                .filter(p -> p.role() == face)
                .flatMapToDouble(
                        p -> DoubleStream.of(p.hole().low(axis), p.hole().high(axis)));
        return DoubleStream.concat(DoubleStream.of(ends), edges).toArray();
    }

    /** Thin lines where the outermost panels meet. */
    private void joints(PlanarView view, Role face) {
        Axis n = face.normal();
        boolean low = face.isLow();
        double plane = low ? solid.outer().low(n) : solid.outer().high(n);
        double same = 1e-9;
        for (Panel panel : solid.panels()) {
            double reach = low ? panel.bounds().low(n) : panel.bounds().high(n);
            if (Math.abs(reach - plane) < same) {
                view.sketch().rectangle(view.picture(panel.bounds()), Stroke.THIN, null);
            }
        }
    }

    private void ports(PlanarView view, Role face) {
        for (PortPlace port : List.of(solid.openingPort(), solid.roomPort())) {
            if (port.role() == face) {
                view.port(port, Stroke.OUTLINE);
            }
        }
    }
}
