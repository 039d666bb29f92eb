package hushmaze.drawing.page;

import hushmaze.drawing.Labels;
import hushmaze.drawing.axon.Edge;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.page.AssemblyOrder.Step;
import hushmaze.drawing.page.StepPicture.Kind;
import hushmaze.drawing.page.StepPicture.Lie;
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
    /** Shares of the height of the pictures that are tried. */
    private static final double[] SHARES = {0.78, 0.85, 0.92, 1, 1.1, 1.2, 1.3};

    private final Job job;
    private final Solid solid;
    private final AssemblyWords words;
    private final JointLines lines;
    private final List<StepCell> cells = new ArrayList<>();
    private final Set<Part> soFar = new LinkedHashSet<>();
    private boolean hung;

    AssemblyPages(Job job) {
        this.job = job;
        this.solid = job.result().solid();
        this.words = new AssemblyWords(job);
        this.lines = new JointLines(solid);
    }

    /** Pictures as high as they may be on as few pages as there can be; the more pages, the higher they are. */
    List<Draft> pages() {
        steps();
        List<Draft> best = pages(SHARES[0]);
        int tried = 0;
        int tooHigh = SHARES.length;
        while (tooHigh - tried > 1) {
            int next = (tried + tooHigh) / 2;
            List<Draft> pages = pages(SHARES[next]);
            if (pages.size() > best.size()) {
                tooHigh = next;
            } else {
                best = pages;
                tried = next;
            }
        }
        return best;
    }

    private List<Draft> pages(double share) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(job.blocks().title(Labels.of("assembly.title")));
        blocks.add(job.blocks().paragraph(words.before()));
        blocks.add(job.blocks().sized(3, width -> StepCell.legend()));
        cells.forEach(cell -> blocks.add(job.blocks().sized(6, width -> cell.draw(job, width, share))));
        return job.textPages(
                Labels.of("assembly.title"),
                Labels.of("type.assembly"),
                blocks,
                job.paper().large() ? 3 : 2);
    }

    private void steps() {
        for (Step step : AssemblyOrder.of(solid, job.result().fixing().hanging().isPresent())) {
            boolean onCover = step.way() == AssemblyOrder.Way.COVER;
            if (step.places() && !onCover) {
                soFar.addAll(step.parts());
            }
            add(step);
        }
    }

    private void add(Step step) {
        List<Part> parts = step.parts();
        switch (step.kind()) {
            case PREPARE -> add(step, all(), Lie.BACK);
            case JOIN -> add(step, all(), Lie.LIFTED, lines.glued(StepPicture.lift(solid)), Kind.GLUE);
            case DRY_FIT -> add(step, parts, Lie.BACK);
            case CARCASS -> add(step, soFar, Lie.BACK, lines.carcass(), Kind.GLUE);
            case BAFFLES -> add(step, soFar, Lie.BACK, lines.baffles(), Kind.GLUE);
            case SEAL -> add(step, soFar, Lie.BACK, lines.inside(), Kind.SEALANT);
            case LAYER, LINE_BACK, LINE_ENDS, LINE_SIDES -> add(step, soFar, Lie.BACK);
            case CLEATS -> add(step, soFar, mouth());
            case LINE_COVER -> {
                List<Part> under = new ArrayList<>(parts);
                panels(p -> p.role() == Role.FRONT && p.layer() == 0).forEach(under::add);
                add(step, under, Lie.FRONT);
            }
            case GASKET -> add(step, soFar, Lie.BACK, lines.cover(), Kind.GASKET);
            case COVER -> add(step, all(), Lie.LIFTED, lines.cover(), Kind.GASKET);
            case CHECK -> add(step, all(), Lie.BACK);
            case PART -> add(step, all(), Lie.PARTED);
            case MOUTH ->
                add(step, all(), mouth(), HungTimber.onFrame(solid, job.result().rows(), lines.mouth()), Kind.GASKET);
        }
    }

    /** What is on its outside in this step and after, and whether it comes on now. */
    private StepPicture.Timber timber(Step step) {
        hung |= step.kind() == AssemblyOrder.Kind.CLEATS;
        boolean shown = hung && step.way() != AssemblyOrder.Way.COVER;
        return new StepPicture.Timber(
                shown ? HungTimber.of(solid, job.result().rows()) : List.of(),
                step.kind() == AssemblyOrder.Kind.CLEATS);
    }

    /** How the box lies when the face with the opening's port is to be seen. */
    private Lie mouth() {
        return solid.openingPort().role() == Role.BACK ? Lie.FRONT : Lie.BACK;
    }

    private List<Part> all() {
        return solid.parts().toList();
    }

    private void add(Step step, Collection<? extends Part> so, Lie lie) {
        add(step, so, lie, List.of(), Kind.GLUE);
    }

    private void add(Step step, Collection<? extends Part> so, Lie lie, List<Edge> along, Kind kind) {
        Set<Part> added = new LinkedHashSet<>(step.parts());
        StepPicture picture = new StepPicture(solid, List.copyOf(so), added, along, kind, lie, timber(step));
        StepCell.Sizes sizes = switch (step.kind()) {
            case DRY_FIT -> StepCell.Sizes.INSIDE;
            case CHECK -> StepCell.Sizes.OUTSIDE;
            default -> StepCell.Sizes.NONE;
        };
        cells.add(new StepCell(
                cells.size() + 1, marks(added.stream()), words.of(step) + unseen(picture), picture, sizes));
    }

    /** Which of a step's parts the picture does not show. */
    private String unseen(StepPicture picture) {
        Set<String> hidden = picture.hidden(job.result().cutList()::markOf);
        return hidden.isEmpty() ? "" : " " + Labels.of("assembly.unseen", String.join(", ", hidden));
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
}
