package hushmaze.drawing.page;

import hushmaze.drawing.Labels;
import hushmaze.drawing.axon.Edge;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.page.StepPicture.Kind;
import hushmaze.drawing.page.StepPicture.Lie;
import hushmaze.project.Box;
import hushmaze.project.Seam;
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
 * The order in which a box is put together, step by step, each with a picture of the box so far, the marks of the parts it
 * adds and the sizes to measure.
 */
final class AssemblyPages {
    private static final List<Role> ENDS = List.of(Role.NEAR_END, Role.FAR_END);
    private static final List<Role> SIDES = List.of(Role.FIRST_SIDE, Role.LAST_SIDE);

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
        add("prepare", all(), List.of(), Lie.BACK);
        if (box.hasSeam(Seam.Kind.GLUED)) {
            add("join", all(), panels(p -> p.stretch() > 0).toList(), Lie.LIFTED);
        }
        List<Panel> carcass = carcass();
        add("dryFit", carcass, carcass, Lie.BACK, inside(Axis.X), inside(Axis.Y), diagonal());
        soFar.addAll(carcass);
        add("carcass", soFar, carcass, Lie.BACK, lines.carcass(), Kind.GLUE, diagonal());
        if (box.passes() > 1) {
            List<Panel> baffles = panels(p -> p.role() == Role.BAFFLE).toList();
            soFar.addAll(baffles);
            add("baffles", soFar, baffles, Lie.BACK, lines.baffles(), Kind.GLUE);
        }
        add("seal", soFar, List.of(), Lie.BACK, lines.inside(), Kind.SEALANT);
        for (int layer = 1; layer < box.shell().size(); layer++) {
            outerLayer(layer);
        }
        lining();
        add("gasket", soFar, List.of(), Lie.BACK, lines.cover(), Kind.GASKET);
        add("cover", all(), panels(p -> p.role() == Role.FRONT).toList(), Lie.LIFTED, lines.cover(), Kind.GASKET);
        if (box.hasSeam(Seam.Kind.PARTING)) {
            String modules = String.valueOf(solid.modules().size());
            add("part", all(), List.of(), Lie.PARTED, modules);
        }
        Lie mouth = solid.openingPort().role() == Role.BACK ? Lie.FRONT : Lie.BACK;
        add("mouth", all(), List.of(), mouth, lines.mouth(), Kind.GASKET);
        String check = Labels.of("assembly.check", outside(Axis.X), outside(Axis.Y), outside(Axis.Z));
        cells.add(new StepCell(cells.size() + 1, "", check, null, false));
    }

    private List<Part> all() {
        return solid.parts().toList();
    }

    private List<Panel> carcass() {
        return panels(p -> p.layer() == 0 && p.role() != Role.FRONT && p.role() != Role.BAFFLE)
                .toList();
    }

    private void outerLayer(int layer) {
        // The boards that run through are put on last: in the second layer the ends, in the third the broad face.
        List<Role> first = layer % 2 == 1 ? SIDES : ENDS;
        List<Role> then = layer % 2 == 1 ? ENDS : SIDES;
        List<Panel> boards = new ArrayList<>();
        for (List<Role> roles : List.of(first, then, List.of(Role.BACK))) {
            panels(p -> p.layer() == layer && roles.contains(p.role())).forEach(boards::add);
        }
        soFar.addAll(boards);
        add(layer % 2 == 1 ? "layer.odd" : "layer.even", soFar, boards, Lie.BACK, String.valueOf(layer + 1));
    }

    private void lining() {
        line("line.broad", l -> l.role() == Role.BACK);
        line(box.linedFaces().broad() ? "line.ends" : "line.bareEnds", l -> ENDS.contains(l.role()));
        line("line.sides", l -> SIDES.contains(l.role()) || l.role() == Role.BAFFLE);
        List<Part> cover = new ArrayList<>(liners(l -> l.role() == Role.FRONT).toList());
        if (!cover.isEmpty()) {
            List<Part> under = new ArrayList<>(cover);
            panels(p -> p.role() == Role.FRONT && p.layer() == 0).forEach(under::add);
            add("line.cover", under, cover, Lie.FRONT);
        }
    }

    private void line(String key, Predicate<LinerPiece> which) {
        List<LinerPiece> pieces = liners(which).toList();
        if (!pieces.isEmpty()) {
            soFar.addAll(pieces);
            add(key, soFar, pieces, Lie.BACK);
        }
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
        cells.add(new StepCell(cells.size() + 1, marks(added.stream()), words, picture, key.equals("dryFit")));
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
