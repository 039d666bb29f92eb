package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.build.NarrowStrip;
import hushmaze.build.Plate;
import hushmaze.build.Turning;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.DimensionChain;
import hushmaze.drawing.draft.DimensionChain.Side;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.Scale;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/** The drawing of one item of the cut list, as its sizes are printed: outline, cut-outs, sizes, and what a person at the saw must know of it. */
final class PartView {
    /** Sizes nearer than this are one size as printed, m. */
    private static final double SAME = 0.002;

    private final Job job;
    private final CutItem item;
    private final Plate plate;

    /** @param plate what is printed for the item */
    PartView(Job job, CutItem item, Plate plate) {
        this.job = job;
        this.item = item;
        this.plate = plate;
    }

    /** The view with its words, at some place. */
    Sketch at(Scale scale) {
        Sketch sketch = new Sketch();
        double w = scale.paper(plate.length());
        double h = scale.paper(plate.width());
        crosses(sketch, scale);
        new PlateOutline(plate.length(), plate.width(), plate.cutouts()).draw(sketch, scale.paper(1), Stroke.OUTLINE);
        new PlateWork(item).draw(sketch, scale);
        mark(sketch, scale);
        Places u = places(plate.length(), c -> DoubleStream.of(c.u0(), c.u1()), g -> DoubleStream.of(g.u0(), g.u1()));
        Places v = places(plate.width(), c -> DoubleStream.of(c.v0(), c.v1()), g -> DoubleStream.of(g.v0(), g.v1()));
        chain(sketch, Side.BELOW, 0).with(u, scale::paper);
        chain(sketch, Side.LEFT, 0).with(v, m -> -scale.paper(m));
        if (u.stretches() > 1) {
            chain(sketch, Side.ABOVE, -h).with(Places.of(0, plate.length()), scale::paper);
        }
        if (v.stretches() > 1) {
            chain(sketch, Side.RIGHT, w).with(Places.of(0, plate.width()), m -> -scale.paper(m));
        }
        Caption.under(sketch, job.measure(), heading(), words());
        return sketch;
    }

    /** The ends of a side, and those of the cut-outs and grooves along it. */
    private Places places(
            double side, Function<Cutout, DoubleStream> ofCutout, Function<Groove, DoubleStream> ofGroove) {
        return Places.of(DoubleStream.concat(
                        DoubleStream.of(0, side),
                        DoubleStream.concat(
                                plate.cutouts().stream().flatMapToDouble(ofCutout),
                                plate.grooves().stream().flatMapToDouble(ofGroove)))
                .toArray());
    }

    private interface Drawn {
        void with(Places places, java.util.function.DoubleUnaryOperator toPaper);
    }

    private Drawn chain(Sketch sketch, Side side, double outline) {
        return (places, toPaper) -> places.draw(
                new DimensionChain(sketch, job.measure(), side, outline, DimensionChain.FIRST), toPaper, job);
    }

    /** Thin diagonals say that a rectangle is a hole. */
    private void crosses(Sketch sketch, Scale scale) {
        for (Cutout c : plate.cutouts()) {
            if (notch(c)) {
                continue;
            }
            double x0 = scale.paper(c.u0());
            double x1 = scale.paper(c.u1());
            double y0 = -scale.paper(c.v0());
            double y1 = -scale.paper(c.v1());
            sketch.line(x0, y0, x1, y1, Stroke.RULE);
            sketch.line(x0, y1, x1, y0, Stroke.RULE);
        }
    }

    /** Whether a cut-out reaches the edge. */
    private boolean notch(Cutout c) {
        double same = 1e-7;
        return c.u0() < same || c.v0() < same || c.u1() > plate.length() - same || c.v1() > plate.width() - same;
    }

    /** The mark goes into a part without cut-outs, into its middle or as near to it as screw holes let it. */
    private void mark(Sketch sketch, Scale scale) {
        if (!plate.cutouts().isEmpty() || !plate.grooves().isEmpty()) {
            return;
        }
        double size = Lettering.HEADING;
        double wide = job.measure().width(item.mark(), size, Weight.SEMIBOLD) + 2;
        double edge = item.airEdges().isEmpty() ? 0 : PlateWork.INSIDE;
        double x = scale.paper(plate.length()) / 2;
        double y = -scale.paper(plate.width()) / 2;
        double most = -y - edge - size / 2;
        if (2 * (x - edge) <= wide || most <= 0) {
            return;
        }
        for (double off = 0; off < most; off = off > 0 ? -off : size / 4 - off) {
            if (isFree(x, y + off, wide, size, scale)) {
                double foot = y + off + size * 0.33;
                sketch.text(x, foot, item.mark(), size, Weight.SEMIBOLD, Anchor.MIDDLE, Ink.GREY);
                return;
            }
        }
    }

    /** Whether no cross of a screw hole is in the way of a text with this middle. */
    private boolean isFree(double x, double y, double wide, double high, Scale scale) {
        return item.holes().stream()
                .noneMatch(hole -> Math.abs(scale.paper(hole.u()) - x) < wide / 2 + PlateWork.CROSS
                        && Math.abs(-scale.paper(hole.v()) - y) < high / 2 + PlateWork.CROSS);
    }

    private String heading() {
        return Labels.of("partView.heading", item.mark(), String.valueOf(item.quantity()));
    }

    private List<String> words() {
        List<String> words = new ArrayList<>();
        words.add(Labels.of("partView.material", item.material(), job.thickness(item.thickness())));
        words.add(PartNames.of(item, job.result().path().box()));
        words.addAll(faces());
        words.addAll(hands());
        words.addAll(edges());
        if (item.grain()) {
            words.add(Labels.of("partView.grain"));
        }
        if (!plate.grooves().isEmpty()) {
            words.add(Labels.of(
                    "partView.groove", job.length(plate.grooves().get(0).depth())));
        }
        if (!item.holes().isEmpty()) {
            double diameter = job.assessment().project().stock().screw().clearanceHole();
            HoleRows rows = new HoleRows(job);
            boolean many = rows.many(item.holes());
            words.add(Labels.of(
                    many ? "partView.holes.listed" : "partView.holes",
                    String.valueOf(item.holes().size()),
                    job.length(diameter)));
            words.addAll(many ? List.of() : rows.words(item.holes()));
        }
        if (item.parts().get(0) instanceof Panel panel) {
            NarrowStrip.of(panel).ifPresent(strip -> words.add(Labels.of("partView.strip", job.length(strip.width()))));
        }
        if (!item.airEdges().isEmpty()) {
            words.add(Labels.of("partView.airEdges"));
        }
        return words;
    }

    /** Which face is shown, where that matters. */
    private List<String> faces() {
        return told(
                (part, turning) -> SeenFace.of(item, part),
                face -> face == SeenFace.EITHER
                        ? ""
                        : Labels.of("partView.face." + face.name().toLowerCase(Locale.ROOT)));
    }

    /** How many pieces of liner are the mirror image of the drawing: one face of it is made for air, the other for adhesive. */
    private List<String> hands() {
        List<SeenFace> faces =
                item.parts().stream().map(part -> SeenFace.of(item, part)).toList();
        long inside = faces.stream().filter(SeenFace.INSIDE::equals).count();
        long outside = faces.stream().filter(SeenFace.OUTSIDE::equals).count();
        boolean liner = item.parts().get(0) instanceof LinerPiece;
        return liner && inside > 0 && outside > 0
                ? List.of(Labels.of("partView.hands", String.valueOf(inside), String.valueOf(outside)))
                : List.of();
    }

    /** Whether the edges to seal lie otherwise when the part is turned by half a turn. */
    private boolean sealedUnevenly() {
        return !item.airEdges().stream()
                .allMatch(e -> item.airEdges().stream()
                        .anyMatch(f -> same(f.u0() + e.u1(), item.length())
                                && same(f.u1() + e.u0(), item.length())
                                && same(f.v0() + e.v1(), item.width())
                                && same(f.v1() + e.v0(), item.width())));
    }

    private static boolean same(double sum, double side) {
        return Math.abs(sum - side) < SAME;
    }

    /** Which edge goes where, of parts that are not alike all round. */
    private List<String> edges() {
        boolean bare = item.cutouts().isEmpty()
                && item.grooves().isEmpty()
                && item.holes().isEmpty();
        if (bare && !sealedUnevenly()) {
            return List.of();
        }
        return told(
                SeenEdges::of,
                edges -> Labels.of("partView.edges", PartNames.role(edges.left()), PartNames.role(edges.lower())));
    }

    /** What is seen of the parts, in words if there are any; with the parts' names where alike parts are built in differently. */
    private <T> List<String> told(BiFunction<Part, Turning, T> seen, Function<T, String> words) {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (int i = 0; i < item.quantity(); i++) {
            Part part = item.parts().get(i);
            lines.computeIfAbsent(words.apply(seen.apply(part, item.turnings().get(i))), w -> new ArrayList<>())
                    .add(PartNames.of(part, job.result().path().box()));
        }
        lines.remove("");
        List<String> told = new ArrayList<>();
        lines.forEach(
                (line, names) -> told.add(lines.size() == 1 ? line : line + " (" + String.join("; ", names) + ")"));
        return told;
    }

    /** Greatest extent on paper. */
    static double extent(CutItem item, Scale scale) {
        return scale.paper(Math.max(item.length(), item.width()));
    }
}
