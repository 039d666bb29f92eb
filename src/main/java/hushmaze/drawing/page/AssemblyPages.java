package hushmaze.drawing.page;

import hushmaze.drawing.Labels;
import hushmaze.drawing.axon.Edge;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.page.AssemblyOrder.Step;
import hushmaze.drawing.page.StepPicture.Kind;
import hushmaze.drawing.page.StepPicture.Lie;
import hushmaze.project.Box;
import hushmaze.solid.Axis;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The steps of {@link AssemblyOrder}, each with a picture of the box so far, the marks of the parts it
 * adds and the sizes to measure.
 */
final class AssemblyPages {
    private final Job job;
    private final Solid solid;
    private final Box box;
    private final JointLines lines;
    private final List<StepCell> cells = new ArrayList<>();
    private final Set<Part> soFar = new LinkedHashSet<>();

    AssemblyPages(Job job) {
        this.job = job;
        this.solid = job.result().solid();
        this.box = solid.box();
        this.lines = new JointLines(solid);
    }

    List<Draft> pages() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(job.blocks().title(Labels.of("assembly.title")));
        blocks.add(job.blocks().paragraph(Labels.of("assembly.explained")));
        blocks.add(job.blocks().sized(3, width -> StepCell.legend()));
        steps();
        cells.forEach(cell -> blocks.add(job.blocks().sized(6, width -> cell.draw(job, width))));
        return job.textPages(
                Labels.of("assembly.title"),
                Labels.of("type.assembly"),
                blocks,
                job.paper().large() ? 3 : 2);
    }

    private void steps() {
        for (Step step : AssemblyOrder.of(solid)) {
            boolean onCover = step.way() == AssemblyOrder.Way.COVER;
            if (step.places() && !onCover) {
                soFar.addAll(step.parts());
            }
            add(step);
        }
    }

    private void add(Step step) {
        List<Part> parts = step.parts();
        boolean broad = box.linedFaces().broad() > 0;
        switch (step.kind()) {
            case PREPARE -> add("prepare", all(), parts, Lie.BACK);
            case JOIN -> {
                List<Edge> seams = lines.glued(StepPicture.lift(solid));
                add("join", all(), parts, Lie.LIFTED, seams, Kind.GLUE);
            }
            case DRY_FIT -> add("dryFit", parts, parts, Lie.BACK, inside(Axis.X), inside(Axis.Y), diagonal());
            case CARCASS -> add("carcass", soFar, parts, Lie.BACK, lines.carcass(), Kind.GLUE, diagonal());
            case BAFFLES -> add("baffles", soFar, parts, Lie.BACK, lines.baffles(), Kind.GLUE);
            case SEAL -> add("seal", soFar, parts, Lie.BACK, lines.inside(), Kind.SEALANT);
            case LAYER -> {
                int layer = parts.get(0).layer();
                add(layer % 2 == 1 ? "layer.odd" : "layer.even", soFar, parts, Lie.BACK, String.valueOf(layer + 1));
            }
            case LINE_BACK -> add("line.broad", soFar, parts, Lie.BACK);
            case LINE_ENDS -> add(broad ? "line.ends" : "line.bareEnds", soFar, parts, Lie.BACK);
            case LINE_SIDES -> add("line.sides", soFar, parts, Lie.BACK);
            case LINE_COVER -> {
                List<Part> under = new ArrayList<>(parts);
                panels(p -> p.role() == Role.FRONT && p.layer() == 0).forEach(under::add);
                add("line.cover", under, parts, Lie.FRONT);
            }
            case GASKET -> add("gasket", soFar, parts, Lie.BACK, lines.cover(), Kind.GASKET);
            case COVER -> add("cover", all(), parts, Lie.LIFTED, lines.cover(), Kind.GASKET);
            case PART ->
                add(
                        "part",
                        all(),
                        parts,
                        Lie.PARTED,
                        String.valueOf(solid.modules().size()));
            case MOUTH -> {
                Lie mouth = solid.openingPort().role() == Role.BACK ? Lie.FRONT : Lie.BACK;
                add("mouth", all(), parts, mouth, lines.mouth(), Kind.GASKET);
            }
            case CHECK -> {
                String check = Labels.of("assembly.check", outside(Axis.X), outside(Axis.Y), outside(Axis.Z));
                cells.add(new StepCell(cells.size() + 1, "", check, null, false));
            }
        }
    }

    private List<Part> all() {
        return solid.parts().toList();
    }

    private void add(String key, Collection<? extends Part> so, List<? extends Part> added, Lie lie, String... values) {
        add(key, so, added, lie, List.of(), Kind.GLUE, values);
    }

    private void add(
            String key,
            Collection<? extends Part> so,
            List<? extends Part> added,
            Lie lie,
            List<Edge> along,
            Kind kind,
            String... values) {
        StepPicture picture = new StepPicture(List.copyOf(so), new LinkedHashSet<>(added), along, kind, lie);
        String words = Labels.of("assembly." + key, values);
        if (added.stream().anyMatch(part -> part instanceof LinerPiece piece && piece.ply() > 0)) {
            words = Labels.of("assembly.line.plies", words);
        }
        cells.add(new StepCell(cells.size() + 1, marks(added.stream()), words, picture, key.equals("dryFit")));
    }

    private Stream<Panel> panels(Predicate<Panel> which) {
        return solid.panels().stream().filter(which);
    }

    /** Marks of parts in their order, each once with its number. */
    private String marks(Stream<? extends Part> parts) {
        List<String> all = parts.map(job.result().cutList()::markOf).toList();
        return all.stream()
                .distinct()
                .map(mark -> count(all, mark) == 1 ? mark : count(all, mark) + " × " + mark)
                .collect(Collectors.joining(", "));
    }

    private static long count(List<String> all, String mark) {
        return all.stream().filter(mark::equals).count();
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
