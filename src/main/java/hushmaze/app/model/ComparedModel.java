package hushmaze.app.model;

import hushmaze.air.AirState;
import hushmaze.assess.AirComparison;
import hushmaze.assess.Assessment;
import hushmaze.assess.BoxFitting;
import hushmaze.assess.Comparison;
import hushmaze.assess.PathResult;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.Construction;
import hushmaze.project.JointGap;
import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.wording.CompareWording;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;

/**
 * What was measured of the path looked at, held against what is predicted for it, while somebody looks: bands and air at once, gap
 * and liner beside the window.
 */
public final class ComparedModel {
    private static final Field BOX = Field.of("path.box");

    /**
     * What there is to show.
     *
     * @param assessment of the project
     * @param result of the path
     * @param comparison of its levels; null where rounds are missing
     * @param air what was measured of it; no lines for nothing
     */
    public record Held(Assessment assessment, PathResult result, Comparison comparison, AirComparison air) {}

    /** What a fit is of. */
    private record Asked(Project project, int path, Comparison comparison) {}

    private final EditModel edit;
    private final ResultModel results;
    private final TaskRunner runner;
    private final AtomicInteger wanted = new AtomicInteger();
    private final BooleanProperty watched = new SimpleBooleanProperty();
    private final ReadOnlyObjectWrapper<Held> held = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<BoxFitting> fitting = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper fits = new ReadOnlyBooleanWrapper();
    private Asked asked;

    ComparedModel(EditModel edit, ResultModel results, TaskRunner runner) {
        this.edit = edit;
        this.results = results;
        this.runner = runner;
        edit.whenStarted(this::forget);
        edit.projectProperty().addListener((p, before, after) -> follow());
        edit.pathProperty().addListener((p, before, after) -> follow());
        results.assessmentProperty().addListener((p, before, after) -> follow());
        watched.addListener((p, before, after) -> follow());
    }

    /** Whether somebody looks; nothing is held against anything otherwise. */
    public BooleanProperty watchedProperty() {
        return watched;
    }

    /** What there is to show; null without results, or while nobody looks. */
    public ReadOnlyObjectProperty<Held> heldProperty() {
        return held.getReadOnlyProperty();
    }

    /** What the readings say of gap and liner; null while it is worked out and where it cannot be. */
    public ReadOnlyObjectProperty<BoxFitting> fittingProperty() {
        return fitting.getReadOnlyProperty();
    }

    /** Whether it is being worked out what the readings say of gap and liner. */
    public ReadOnlyBooleanProperty fitsProperty() {
        return fits.getReadOnlyProperty();
    }

    private void forget() {
        wanted.incrementAndGet();
        fits.set(false);
        asked = null;
        held.set(null);
        fitting.set(null);
    }

    private VentPath path() {
        return edit.project().paths().get(edit.path());
    }

    private void follow() {
        Assessment assessment = results.assessmentProperty().get();
        Optional<PathResult> result = results.pathResult();
        if (!watched.get() || assessment == null || result.isEmpty()) {
            forget();
            return;
        }
        PathReadings readings = path().readingsOrNone();
        double soundSpeed = AirState.of(edit.project().room()).soundSpeed();
        Comparison comparison = readings.comparable() ? Comparison.of(result.get(), readings, soundSpeed) : null;
        held.set(new Held(
                assessment,
                result.get(),
                comparison,
                AirComparison.of(
                        assessment, result.get(), readings, edit.project().readingsOrNone())));
        fit(comparison, assessment, result.get());
    }

    private void fit(Comparison comparison, Assessment assessment, PathResult result) {
        // rough results are followed by better ones at once
        boolean wants = comparison != null && !results.isRough();
        Asked now = wants ? new Asked(assessment.project(), edit.path(), comparison) : null;
        if (now != null && now.equals(asked)) {
            return;
        }
        int ticket = wanted.incrementAndGet();
        asked = now;
        fitting.set(null);
        fits.set(now != null);
        if (now == null) {
            return;
        }
        runner.run(
                progress -> BoxFitting.of(now.project(), result, comparison, whileWanted(progress, ticket)),
                found -> {
                    if (ticket == wanted.get()) {
                        fits.set(false);
                        fitting.set(found.orElse(null));
                    }
                },
                e -> {
                    if (ticket == wanted.get()) {
                        fits.set(false);
                        results.tell(ResultModel.explain(e, now.project()));
                    }
                });
    }

    private Progress whileWanted(Progress progress, int ticket) {
        return progress.asLongAs(() -> ticket == wanted.get());
    }

    /** The words for all of it. */
    public CompareWording words() {
        return new CompareWording(new Wording(edit.project().units()));
    }

    /**
     * Keeps the gap of the cover's joint: for every box of the project, those that are laid out from now on too, because who builds
     * them and how stays the same.
     */
    public Optional<String> keepGap() {
        BoxFitting found = fitting.get();
        return found == null || !found.tellsGap()
                ? Optional.empty()
                : change("edit.measured.gap", p -> gapping(p, found.asGap(source())));
    }

    /** Takes a gap that was kept away again, everywhere. */
    public Optional<String> forgetGap() {
        return change("edit.measured.forgetGap", p -> gapping(p, null));
    }

    /** The boxes follow what is said of their construction. */
    private static Project gapping(Project project, JointGap gap) {
        Project all = project;
        for (int i = 0; i < project.paths().size(); i++) {
            VentPath path = project.paths().get(i);
            Construction made = path.brief().construction();
            all = all.withPath(
                    i,
                    path.withBrief(path.brief()
                            .withConstruction(made.joined(made.joineryOrPlain().gapping(gap)))));
        }
        return all;
    }

    /** Whether a gap was kept for the path looked at. */
    public boolean hasGap() {
        return path().brief().construction().joineryOrPlain().coverGap() != null;
    }

    /** Keeps the flow resistivity of the liner: in the box of this path and wherever the same liner is asked for. */
    public Optional<String> keepLiner() {
        BoxFitting found = fitting.get();
        Box box = path().box();
        if (found == null || !found.tellsResistivity() || box == null) {
            return Optional.empty();
        }
        Liner old = box.liner();
        Liner better = found.asLiner(old, source());
        int at = edit.path();
        return change("edit.measured.liner", p -> {
            Project all = p;
            for (int i = 0; i < p.paths().size(); i++) {
                VentPath path = p.paths().get(i);
                VentPath next = path;
                Construction made = path.brief().construction();
                if (made.liner().equals(old)) {
                    next = next.withBrief(path.brief().withConstruction(made.lined(better)));
                }
                if (i == at) {
                    next = next.withBox(path.box().withLiner(better));
                }
                all = all.withPath(i, next);
            }
            return all;
        });
    }

    private String source() {
        return Texts.of(
                "measured.fit.source",
                path().name(),
                edit.project().titleBlock().date().toString(),
                String.valueOf(fitting.get().bands()));
    }

    private Optional<String> change(String what, UnaryOperator<Project> change) {
        return edit.change(BOX, Texts.of("measured.fit"), Texts.of(what), change);
    }
}
