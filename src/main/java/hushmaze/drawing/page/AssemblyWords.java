package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.build.CutList;
import hushmaze.drawing.Labels;
import hushmaze.drawing.page.AssemblyOrder.Step;
import hushmaze.solid.Axis;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What to do in a step, said of the box at hand: nothing of baffles, layers or grooves that it does not have. */
final class AssemblyWords {
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
            case DRY_FIT -> Labels.of("assembly.dryFit", inside(Axis.X), inside(Axis.Y), diagonal());
            case CARCASS -> Labels.of("assembly.carcass", diagonal());
            case BAFFLES -> one("assembly.baffles");
            case SEAL -> byBaffles("assembly.seal");
            case LAYER -> {
                int layer = parts.get(0).layer();
                yield Labels.of(
                        layer % 2 == 1 ? "assembly.layer.odd" : "assembly.layer.even", String.valueOf(layer + 1));
            }
            case CLEATS -> Labels.of("assembly.cleats");
            case LINE_BACK -> lining(Labels.of("assembly.line.broad"), parts);
            case LINE_ENDS -> lining(Labels.of(linedBack() ? "assembly.line.ends" : "assembly.line.bareEnds"), parts);
            case LINE_SIDES -> lining(sides(parts), parts);
            case LINE_COVER -> lining(Labels.of("assembly.line.cover"), parts);
            case GASKET -> byBaffles("assembly.gasket");
            case COVER -> Labels.of(layered() ? "assembly.cover.layers" : "assembly.cover");
            case CHECK -> Labels.of("assembly.check", outside(Axis.X), outside(Axis.Y), outside(Axis.Z));
            case PART ->
                Labels.of("assembly.part", String.valueOf(solid.modules().size()));
            case MOUTH -> Labels.of("assembly.mouth");
        };
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
