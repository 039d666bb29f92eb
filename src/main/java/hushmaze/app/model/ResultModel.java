package hushmaze.app.model;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.KnownBoxes;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.FirstLayout;
import hushmaze.size.NoBox;
import hushmaze.size.Proposal;
import hushmaze.size.Relaxation;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * What the program says about the project: recomputed after every edit, away from the window's thread, by fast methods
 * first and better ones after them. Results of a
 * project that was edited since are dropped; the older ones stay and are marked until the new ones are there.
 */
public final class ResultModel {
    /** How the results stand to the project. */
    public enum State {
        COMPUTING,
        CURRENT,
        /** There are none for the project as it is. */
        FAILED
    }

    private final EditModel edit;
    private final TaskRunner runner;
    private final ObjectProperty<Message> message;
    private final KnownBoxes boxes = new KnownBoxes();
    private final List<Methods> stages;
    private Methods shownBy;
    /** What the shown results answer; their own project has flows filled in that follow from the need. */
    private Project answered;

    private final AtomicInteger wanted = new AtomicInteger();
    private final ReadOnlyObjectWrapper<Assessment> assessment = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.COMPUTING);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper refining = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper layingOut = new ReadOnlyBooleanWrapper();

    private Executor refiner = Runnable::run;

    ResultModel(EditModel edit, TaskRunner runner, List<Methods> stages, ObjectProperty<Message> message) {
        this.stages = List.copyOf(stages);
        this.edit = edit;
        this.runner = runner;
        this.message = message;
        edit.projectProperty().addListener((p, before, after) -> follow());
    }

    /** Lets somebody decide when results are refined, who runs what is handed over on the window's thread; at first at once. */
    public void refineBy(Executor refiner) {
        this.refiner = refiner;
    }

    /** The newest results, perhaps of an older state of the project; null before the first. */
    public ReadOnlyObjectProperty<Assessment> assessmentProperty() {
        return assessment.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** Why there are no results for the project as it is; empty otherwise. */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Whether a box is being laid out. */
    public ReadOnlyBooleanProperty layingOutProperty() {
        return layingOut.getReadOnlyProperty();
    }

    /** The result of the path that is looked at, if there is one. */
    public Optional<PathResult> pathResult() {
        Assessment shown = assessment.get();
        boolean there = shown != null && edit.path() < shown.paths().size();
        return there ? Optional.of(shown.paths().get(edit.path())) : Optional.empty();
    }

    /** Forgets the results of another project and computes those of the present one. */
    void begin() {
        assessment.set(null);
        answered = null;
        follow();
    }

    private void follow() {
        problem.set("");
        int ticket = wanted.incrementAndGet();
        Project asked = edit.project();
        measured(asked);
        boolean known = asked.equals(answered);
        state.set(known ? State.CURRENT : State.COMPUTING);
        int first = known ? stages.indexOf(shownBy) + 1 : 0;
        refining.set(known && first < stages.size());
        run(first, asked, ticket);
    }

    /** Readings change nothing that is predicted: results of the same project without them, or with others, go on. */
    private void measured(Project asked) {
        boolean onlyReadings = answered != null
                && !asked.equals(answered)
                && asked.paths().size() == answered.paths().size()
                && asked.unmeasured().equals(answered.unmeasured());
        if (onlyReadings) {
            answered = asked;
            assessment.set(assessment.get().measuredLike(asked));
        }
    }

    private void run(int stage, Project asked, int ticket) {
        if (stage >= stages.size()) {
            return;
        }
        Methods methods = stages.get(stage);
        runner.run(
                progress -> judged(asked, methods, whileWanted(progress, ticket)),
                result -> take(result, stage, asked, ticket),
                e -> {
                    if (ticket == wanted.get()) {
                        problem.set(explain(e, asked));
                        state.set(State.FAILED);
                        refining.set(false);
                    }
                });
    }

    private void take(Judged result, int stage, Project asked, int ticket) {
        if (ticket != wanted.get()) {
            return;
        }
        shownBy = stages.get(stage);
        refining.set(stage + 1 < stages.size());
        answered = result.whole();
        assessment.set(result.assessment());
        state.set(State.CURRENT);
        edit.amend(asked, answered);
        refiner.execute(() -> {
            // Amending a project that left a box open has begun the next stage already.
            if (ticket == wanted.get()) {
                run(stage + 1, answered, ticket);
            }
        });
    }

    private Progress whileWanted(Progress progress, int ticket) {
        return progress.asLongAs(() -> ticket == wanted.get());
    }

    /** Whether results are shown that better methods are still to refine. */
    public ReadOnlyBooleanProperty refiningProperty() {
        return refining.getReadOnlyProperty();
    }

    /** Whether the results shown are the first, rough ones of several that follow each other. */
    boolean isRough() {
        return stages.size() > 1 && stages.get(0).equals(shownBy);
    }

    /** The methods documents are made by: the last of the stages. */
    Methods best() {
        return stages.get(stages.size() - 1);
    }

    /** The results shown, if they are of a project and of the best methods there are. */
    Optional<Assessment> complete(Project project) {
        Assessment shown = assessment.get();
        boolean known = shown != null && project.equals(answered) && best().equals(shownBy);
        return known ? Optional.of(shown) : Optional.empty();
    }

    /** What was worked out of boxes so far. */
    KnownBoxes boxes() {
        return boxes;
    }

    /** The results of a project; boxes it leaves open are laid out first. */
    Assessment assess(Project project, Methods methods, Progress progress) {
        return judged(project, methods, progress).assessment();
    }

    /** Results, and the project they answer: with a box in every path, and flows left open as they were. */
    private record Judged(Project whole, Assessment assessment) {}

    private Judged judged(Project project, Methods methods, Progress progress) {
        progress.check(0, project.name());
        Project whole = FirstLayout.complete(project, progress);
        return new Judged(whole, Assessor.assess(whole, methods, boxes, progress));
    }

    /** Says what is in the way. */
    void tell(String problem) {
        message.set(new Message(true, problem));
    }

    /** Lays out a box for the path that is looked at from what is wished for it. */
    public void layOut() {
        if (layingOut.get()) {
            return;
        }
        layingOut.set(true);
        message.set(null);
        Project asked = edit.project();
        int path = edit.path();
        runner.run(
                progress -> new FirstLayout(asked).propose(path, progress),
                proposal -> {
                    layingOut.set(false);
                    take(proposal, asked, path);
                },
                e -> {
                    layingOut.set(false);
                    message.set(new Message(true, explain(e, asked)));
                });
    }

    private void take(Proposal proposal, Project asked, int path) {
        VentPath old = asked.paths().get(path);
        if (!asked.equals(edit.project())) {
            message.set(new Message(false, Texts.of("layout.changedMeanwhile")));
        } else if (proposal.box().isEmpty()) {
            String head = Texts.of("layout.none", old.name());
            message.set(new Message(true, noBox(head, proposal, asked)));
        } else if (proposal.box().get().equals(old.box())) {
            message.set(new Message(false, Texts.of("layout.same")));
        } else {
            place(proposal.box().get(), path);
            String text = proposal.quietEnough() ? "layout.done" : "layout.notQuiet";
            message.set(new Message(false, Texts.of(text, old.name(), String.valueOf(proposal.tried()))));
        }
    }

    private void place(Box box, int path) {
        edit.edit(
                Texts.of("edit.layOut"),
                p -> p.withPath(path, p.paths().get(path).withBox(box)));
    }

    /** What went wrong, in words for the user. */
    static String explain(Exception e, Project project) {
        if (e instanceof NoBox none) {
            return noBox(Texts.of("layout.none", none.path()), none.proposal(), project);
        }
        return e instanceof InvalidValue refused
                ? Refusal.sentence(refused, project)
                : Texts.of("problem.unexpected", e.toString());
    }

    private static String noBox(String head, Proposal proposal, Project project) {
        Wording wording = new Wording(project.units());
        List<Relaxation> ways = proposal.relaxations();
        return ways.isEmpty()
                ? head + "\n" + wording.text("relax.none")
                : ways.stream()
                        .map(wording::relaxation)
                        .collect(Collectors.joining("\n• ", head + " " + Texts.of("layout.wouldHelp") + "\n• ", ""));
    }
}
