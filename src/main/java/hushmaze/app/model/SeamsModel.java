package hushmaze.app.model;

import hushmaze.build.split.SeamPlan;
import hushmaze.build.split.SeamPlanner;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.project.Seam;
import hushmaze.wording.SeamWording;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The seams of the box looked at: added, taken out, or taken as proposed. */
public final class SeamsModel {
    private static final Field SEAMS = Field.of("path.box.seams");

    private final EditModel edit;
    private Project planned;
    private int plannedPath;
    private SeamPlan plan;

    SeamsModel(EditModel edit) {
        this.edit = edit;
    }

    private Optional<Box> box() {
        return Optional.ofNullable(edit.project().paths().get(edit.path()).box());
    }

    /** The seams there are, from the near end; none without a box. */
    public List<Seam> seams() {
        return box().map(Box::seams).orElse(List.of());
    }

    /** Puts one more into the middle of the longest stretch; gives back why not, if so. */
    public Optional<String> add(Seam.Kind kind) {
        Optional<Seam> more = box().flatMap(b -> planner().oneMore(b, kind));
        if (more.isEmpty()) {
            return Optional.of(Texts.of(box().isPresent() ? "seam.noPlace" : "box.none"));
        }
        List<Seam> all = new ArrayList<>(seams());
        all.add(more.get());
        all.sort(Comparator.comparingDouble(Seam::position));
        return set("edit.seam.add", all);
    }

    /** Takes one out. */
    public Optional<String> remove(int number) {
        List<Seam> all = new ArrayList<>(seams());
        all.remove(number);
        return set("edit.seam.remove", all);
    }

    /** Puts the proposed ones in the place of those there are. */
    public Optional<String> propose() {
        return set("edit.seam.propose", plan().map(SeamPlan::seams).orElse(List.of()));
    }

    /** Whether there is a box that has other seams than proposed. */
    public boolean mayPropose() {
        return plan().filter(p -> !p.seams().equals(seams())).isPresent();
    }

    /** What is proposed and what seams cannot mend, in sentences. */
    public String advice() {
        SeamWording words = new SeamWording(new Wording(edit.project().units()));
        return plan().map(p -> p.seams().isEmpty() && p.obstacles().isEmpty()
                        ? words.plan(p)
                        : Texts.of("seam.advice", words.plan(p)))
                .orElse("");
    }

    /** Worked out once for a project and path. */
    private Optional<SeamPlan> plan() {
        Project project = edit.project();
        if (plan == null || !project.equals(planned) || plannedPath != edit.path()) {
            planned = project;
            plannedPath = edit.path();
            plan = box().map(planner()::plan).orElse(new SeamPlan(List.of(), List.of()));
        }
        return box().map(b -> plan);
    }

    private SeamPlanner planner() {
        Project project = edit.project();
        return new SeamPlanner(
                project.paths().get(edit.path()).brief().construction(), project.stock(), project.units());
    }

    private Optional<String> set(String what, List<Seam> all) {
        return edit.change(SEAMS, Texts.of("box.seams"), Texts.of(what), p -> SEAMS.with(p, edit.path(), all));
    }
}
