package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.build.CutList;
import hushmaze.build.joint.Fastener;
import hushmaze.build.joint.Fastening;
import hushmaze.drawing.Labels;
import hushmaze.drawing.page.AssemblyOrder.Step;
import hushmaze.material.Screw;
import hushmaze.project.Joinery;
import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What to do in a step, said of the box at hand: nothing of baffles, layers or grooves that it does not have. */
final class AssemblyWords {
    /** Sizes nearer than this are one size, m. */
    private static final double SAME = 1e-6;
    /** By how much liner of the cover is smaller all round, so that it drops between walls and baffles (common practice, no source), m. */
    private static final double LINER_PLAY = 0.002;

    private final Job job;
    private final Solid solid;
    private final CutList cuts;
    private final int baffles;

    AssemblyWords(Job job) {
        this.job = job;
        this.solid = job.result().solid();
        this.cuts = job.result().cutList();
        this.baffles = solid.baffles().size();
    }

    String of(Step step) {
        List<Part> parts = step.parts();
        return switch (step.kind()) {
            case PREPARE -> Labels.of("assembly.prepare", made());
            case JOIN -> Labels.of("assembly.join");
            case DRY_FIT ->
                Labels.of(
                        "assembly.dryFit",
                        inside(Axis.X),
                        inside(Axis.Y),
                        diagonal(),
                        outside(Axis.X),
                        outside(Axis.Y),
                        outside(Axis.Z));
            case CARCASS -> drill(parts) + Labels.of("assembly.carcass", diagonal()) + open(parts);
            case BAFFLES ->
                drill(parts) + Labels.of(baffles == 1 ? "assembly.baffles.one" : "assembly.baffles", offTheBottom())
                        + " " + Labels.of("assembly.baffles.at", places(parts));
            case SEAL -> byBaffles("assembly.seal") + (hangsSomehow() ? " " + Labels.of("assembly.seal.hang") : "");
            case LAYER -> {
                int layer = parts.get(0).layer();
                String key = layer % 2 == 1 ? "assembly.layer.odd" : "assembly.layer.even";
                yield Labels.of(key, String.valueOf(layer + 1)) + open(parts);
            }
            case CLEATS -> Labels.of(fromInside() ? "assembly.cleats" : "assembly.battens");
            case LINE_BACK -> lining(Labels.of("assembly.line.broad"), parts);
            case LINE_ENDS -> lining(Labels.of(linedBack() ? "assembly.line.ends" : "assembly.line.bareEnds"), parts);
            case LINE_SIDES -> lining(sides(parts) + proud(parts), parts);
            case LINE_COVER ->
                lining(
                        Labels.of(
                                "assembly.line.cover",
                                baffles > 0 ? Labels.of("assembly.line.cover.baffles") : "",
                                job.length(LINER_PLAY),
                                onCover(parts)),
                        parts);
            case GASKET -> byBaffles("assembly.gasket");
            case COVER ->
                Labels.of(layered() ? "assembly.cover.layers" : "assembly.cover")
                        + (fromInside() ? " " + Labels.of("assembly.cover.off") : "");
            case CHECK ->
                Labels.of("assembly.check", outside(Axis.X), outside(Axis.Y), outside(Axis.Z)) + " "
                        + Labels.of("assembly.paint");
            case PART ->
                Labels.of("assembly.part", String.valueOf(solid.modules().size()));
            case MOUTH -> Labels.of(hangs() ? "assembly.mouth.frame" : "assembly.mouth");
        };
    }

    /** Floor, tools and masks, before the first step. */
    String before() {
        List<String> tools = new ArrayList<>();
        if (cuts.items().anyMatch(item -> !item.cutouts().isEmpty())) {
            tools.add(Labels.of("assembly.tool.jigsaw"));
        }
        if (cuts.items().anyMatch(item -> !item.grooves().isEmpty())) {
            tools.add(Labels.of("assembly.tool.router"));
        }
        if (job.result().fasteners(job.assessment().project()).stream()
                .anyMatch(counted -> counted.fastener().kind() == Fastener.Kind.BRAD)) {
            tools.add(Labels.of("assembly.tool.brads"));
        }
        Screw screw = job.assessment().project().stock().screw();
        return Labels.of(
                "assembly.explained",
                String.join("", tools),
                job.length(screw.pilot()),
                job.length(screw.clearanceHole()));
    }

    /** Whether it is computed what the box hangs by. */
    private boolean hangs() {
        return job.result().fixing().hanging().isPresent();
    }

    /** Whether it is hung by screws from inside. */
    private boolean fromInside() {
        return job.result().fixing().hanging().filter(h -> h.way().fromInside()).isPresent();
    }

    /** Whether it does not stand, and what it hangs by is left to others. */
    private boolean hangsSomehow() {
        return !hangs() && job.result().path().brief().opening().surface() != Opening.Surface.FLOOR;
    }

    /** That edges are drilled into, where boards of a step are held by screws that are not the cover's. */
    private String drill(List<Part> parts) {
        boolean baffle = parts.stream().anyMatch(p -> p.role() == Role.BAFFLE);
        boolean screws = Fastening.of(solid).held().stream()
                .filter(held -> !held.joint().cover() && held.hold() == Fastening.Hold.SCREWS)
                .anyMatch(held -> baffle == (held.joint().edge().role() == Role.BAFFLE));
        return screws ? Labels.of("assembly.drill") + " " : "";
    }

    /** What stays open between two boards of one wall, where a port is as wide as the wall. */
    private String open(List<Part> parts) {
        StringBuilder open = new StringBuilder();
        for (Part low : parts) {
            for (Part high : parts) {
                for (Axis axis : List.of(low.normal().u(), low.normal().v())) {
                    double gap = high.bounds().low(axis) - low.bounds().high(axis);
                    if (sameWall(low, high)
                            && isPort(low.role())
                            && gap > solid.box().joinery().gasket() + SAME
                            && none(parts, low, high, axis)) {
                        open.append(" ")
                                .append(Labels.of(
                                        "assembly.open", cuts.markOf(low), cuts.markOf(high), job.length(gap)));
                    }
                }
            }
        }
        return open.toString();
    }

    private static boolean sameWall(Part one, Part other) {
        return one.role() == other.role() && one.layer() == other.layer();
    }

    private boolean isPort(Role role) {
        return solid.openingPort().role() == role || solid.roomPort().role() == role;
    }

    /** Whether no board of their wall lies between two. */
    private static boolean none(List<Part> parts, Part low, Part high, Axis axis) {
        return parts.stream()
                .noneMatch(p -> sameWall(p, low)
                        && p.bounds().low(axis) >= low.bounds().high(axis) - SAME
                        && p.bounds().high(axis) <= high.bounds().low(axis) + SAME);
    }

    /** Where liner goes on the inside of the cover, from two of its edges. */
    private String onCover(List<Part> parts) {
        List<Panel> cover = solid.panels().stream()
                .filter(p -> p.role() == Role.FRONT && p.layer() == 0)
                .toList();
        double x = cover.stream().mapToDouble(p -> p.bounds().low(Axis.X)).min().orElse(0);
        double y = cover.stream().mapToDouble(p -> p.bounds().low(Axis.Y)).min().orElse(0);
        return parts.stream()
                .map(p -> Labels.of(
                        "assembly.line.cover.at",
                        cuts.markOf(p),
                        job.length(p.bounds().low(Axis.X) - x),
                        job.length(p.bounds().low(Axis.Y) - y)))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** How far a baffle stays off the bottom of its groove. */
    private String offTheBottom() {
        Joinery joinery = solid.box().joinery();
        return joinery.groove() > 0 && joinery.fitClearance() > 0
                ? Labels.of("assembly.baffles.play", job.length(joinery.fitClearance()))
                : "";
    }

    /** Where the baffles stand across the box, from board to board. */
    private String places(List<Part> parts) {
        double from = solid.cavity().low(Axis.Y);
        return parts.stream()
                .filter(part -> part instanceof Panel panel && panel.layer() == 0)
                .map(part -> job.length(part.bounds().low(Axis.Y) - from))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** How far liner stands above the edges the gasket comes on; a lined cover leaves it lower. */
    private String proud(List<Part> parts) {
        double edges = solid.cavity().high(Axis.Z) - solid.box().joinery().gasket();
        double above = parts.stream()
                        .mapToDouble(part -> part.bounds().high(Axis.Z))
                        .max()
                        .orElse(edges)
                - edges;
        return above > SAME ? " " + Labels.of("assembly.line.proud", job.length(above)) : "";
    }

    /** What is made in the boards before they are put together. */
    private String made() {
        List<CutItem> items = cuts.items().toList();
        List<String> made = new ArrayList<>();
        if (items.stream().anyMatch(item -> !item.cutouts().isEmpty())) {
            made.add(Labels.of("assembly.made.cutouts"));
        }
        if (items.stream().anyMatch(item -> !item.grooves().isEmpty())) {
            made.add(Labels.of("assembly.made.grooves"));
        }
        made.add(Labels.of("assembly.made.holes"));
        return String.join(", ", made);
    }

    private boolean layered() {
        return solid.box().shell().size() > 1;
    }

    private boolean linedBack() {
        return solid.box().linedFaces().broad() > 0;
    }

    /** What is said of boxes without, with one, with several baffles. */
    private String byBaffles(String key) {
        return baffles == 0 ? Labels.of(key) : one(key + ".baffles");
    }

    private String one(String key) {
        return Labels.of(baffles == 1 ? key + ".one" : key);
    }

    private String sides(List<Part> parts) {
        boolean baffle = parts.stream().anyMatch(p -> p.role() == Role.BAFFLE);
        boolean side = parts.stream().anyMatch(p -> p.role() != Role.BAFFLE);
        String what = !baffle
                ? Labels.of("assembly.line.what.sides")
                : one(side ? "assembly.line.what.both" : "assembly.line.what.baffles");
        boolean ends = solid.liners().stream().anyMatch(l -> l.role() == Role.NEAR_END || l.role() == Role.FAR_END);
        return Labels.of(ends ? "assembly.line.sides.between" : "assembly.line.sides", what);
    }

    /** What is done, how layers go on each other, and whose edges are to be sealed. */
    private String lining(String words, List<Part> parts) {
        List<String> sentences = new ArrayList<>(List.of(words));
        if (parts.stream().anyMatch(part -> part instanceof LinerPiece piece && piece.ply() > 0)) {
            sentences.add(Labels.of("assembly.line.plies"));
        }
        List<String> marks = parts.stream().map(cuts::markOf).distinct().toList();
        String sealed = cuts.items()
                .filter(item -> marks.contains(item.mark()) && !item.airEdges().isEmpty())
                .map(CutItem::mark)
                .collect(Collectors.joining(", "));
        if (!sealed.isEmpty()) {
            sentences.add(Labels.of("assembly.line.seal", sealed));
        }
        return String.join(" ", sentences);
    }

    private String inside(Axis axis) {
        return job.length(solid.cavity().size(axis));
    }

    private String outside(Axis axis) {
        return job.length(solid.outer().size(axis));
    }

    /** Across the bare inside from corner to corner, at the back. */
    private String diagonal() {
        return job.length(Math.hypot(solid.cavity().size(Axis.X), solid.cavity().size(Axis.Y)));
    }
}
