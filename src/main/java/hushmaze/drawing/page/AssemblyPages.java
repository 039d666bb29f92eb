package hushmaze.drawing.page;

import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.project.Box;
import hushmaze.project.Seam;
import hushmaze.solid.Axis;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The order in which a box is put together, step by step, with the marks of the parts and the sizes to measure. */
final class AssemblyPages {
    private static final List<Role> ENDS = List.of(Role.NEAR_END, Role.FAR_END);
    private static final List<Role> SIDES = List.of(Role.FIRST_SIDE, Role.LAST_SIDE);

    private final Job job;
    private final Solid solid;
    private final Box box;
    private final Table table;
    private int step;

    AssemblyPages(Job job) {
        this.job = job;
        this.solid = job.result().solid();
        this.box = solid.box();
        this.table = new Table(
                job.measure(),
                List.of(
                        Column.number(Labels.of("assembly.step")),
                        Column.words(Labels.of("assembly.parts")),
                        Column.words(Labels.of("assembly.what"))));
    }

    List<Draft> pages() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(job.blocks().title(Labels.of("assembly.title")));
        blocks.add(job.blocks().paragraph(Labels.of("assembly.explained")));
        steps();
        blocks.add(table);
        return job.textPages(Labels.of("assembly.title"), Labels.of("type.assembly"), blocks, 1);
    }

    private void steps() {
        boolean parting = box.hasSeam(Seam.Kind.PARTING);
        boolean glued = box.hasSeam(Seam.Kind.GLUED);
        add("prepare", "");
        if (glued) {
            add("join", marks(panels(p -> p.stretch() > 0)));
        }
        add("dryFit", carcass(), inside(Axis.X), inside(Axis.Y), diagonal());
        add("carcass", carcass(), diagonal());
        if (box.passes() > 1) {
            add("baffles", marks(panels(p -> p.role() == Role.BAFFLE)));
        }
        add("seal", "");
        for (int layer = 1; layer < box.shell().size(); layer++) {
            outerLayer(layer);
        }
        if (!solid.liners().isEmpty()) {
            lining();
        }
        add("gasket", "");
        add("cover", marks(panels(p -> p.role() == Role.FRONT)));
        if (parting) {
            add("part", "", String.valueOf(solid.modules().size()));
        }
        add("mouth", "");
        add("check", "", outside(Axis.X), outside(Axis.Y), outside(Axis.Z));
    }

    private String carcass() {
        return marks(panels(p -> p.layer() == 0 && p.role() != Role.FRONT && p.role() != Role.BAFFLE));
    }

    private void outerLayer(int layer) {
        // The boards that run through are put on last: in the second layer the ends, in the third the broad face.
        List<Role> first = layer % 2 == 1 ? SIDES : ENDS;
        List<Role> then = layer % 2 == 1 ? ENDS : SIDES;
        Stream<Panel> walls = Stream.concat(
                panels(p -> p.layer() == layer && first.contains(p.role())),
                panels(p -> p.layer() == layer && then.contains(p.role())));
        Stream<Panel> back = panels(p -> p.layer() == layer && p.role() == Role.BACK);
        add(layer % 2 == 1 ? "layer.odd" : "layer.even", marks(Stream.concat(walls, back)), String.valueOf(layer + 1));
    }

    private void lining() {
        add("line.broad", marks(liners(l -> l.role() == Role.BACK)));
        add(box.linedFaces().broad() ? "line.ends" : "line.bareEnds", marks(liners(l -> ENDS.contains(l.role()))));
        add("line.sides", marks(liners(l -> SIDES.contains(l.role()) || l.role() == Role.BAFFLE)));
        add("line.cover", marks(liners(l -> l.role() == Role.FRONT)));
    }

    /** A step; steps on parts the box has none of are left out. */
    private void add(String key, String marks, String... values) {
        boolean needsParts = key.startsWith("line.") || key.equals("join");
        if (needsParts && marks.isEmpty()) {
            return;
        }
        step++;
        table.row(String.valueOf(step), marks.isEmpty() ? "–" : marks, Labels.of("assembly." + key, values));
    }

    private Stream<Panel> panels(Predicate<Panel> which) {
        return solid.panels().stream().filter(which);
    }

    private Stream<LinerPiece> liners(Predicate<LinerPiece> which) {
        return solid.liners().stream().filter(which);
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
