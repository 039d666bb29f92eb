package hushmaze.app.model;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.mend.Mend;
import hushmaze.mend.Mends;
import hushmaze.project.Fitting;
import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.wording.MendWording;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableMap;

/**
 * Changes that mend what the notices are about, each with its words, ready to be made. They are tried beside the results, and
 * gone as soon as the project changes.
 */
public final class MendsModel {
    /**
     * A change that can be made.
     *
     * @param words what it does
     * @param enough whether the notice is gone with it
     */
    public record Offer(String words, boolean enough, Runnable make) {}

    /** What is switched on or added where a notice says that something is not known. */
    private final Map<NoticeKind, Supplier<Optional<String>>> filled = new EnumMap<>(NoticeKind.class);

    private final EditModel edit;
    private final ResultModel results;
    private final TaskRunner runner;
    private final AtomicInteger wanted = new AtomicInteger();
    private final ObservableMap<Notice, List<Offer>> offers = FXCollections.observableHashMap();
    private final BooleanProperty watched = new SimpleBooleanProperty();
    private Assessment tried;
    private int triedPath = -1;

    MendsModel(EditModel edit, ResultModel results, ExtrasModel extras, AirModel air, TaskRunner runner) {
        this.edit = edit;
        this.results = results;
        this.runner = runner;
        filled.put(NoticeKind.FIXING_NOT_CHECKED, () -> extras.turn(Extra.MOUNTING, true));
        filled.put(NoticeKind.FITTINGS_NOT_COUNTED, () -> air.addFitting(Fitting.Kind.GRILLE));
        results.assessmentProperty().addListener((p, before, after) -> follow());
        results.stateProperty().addListener((p, before, after) -> follow());
        edit.pathProperty().addListener((p, before, after) -> follow());
        watched.addListener((p, before, after) -> follow());
    }

    /** Whether somebody sees the notices: changes are tried only then. */
    public BooleanProperty watchedProperty() {
        return watched;
    }

    /** What can be done about each notice of the path looked at; grows while changes are tried. */
    public ObservableMap<Notice, List<Offer>> offers() {
        return offers;
    }

    private void follow() {
        Assessment shown = results.assessmentProperty().get();
        // Rough results are gone in a moment, and what comes of them is wanted first.
        boolean current = watched.get()
                && !results.isRough()
                && results.stateProperty().get() == ResultModel.State.CURRENT
                && shown != null;
        if (current && shown.equals(tried) && triedPath == edit.path()) {
            return;
        }
        wanted.incrementAndGet();
        Set<Notice> asked = new LinkedHashSet<>();
        if (current && results.pathResult().isPresent()) {
            asked.addAll(notices(results.pathResult().get(), shown));
        }
        tried = current ? shown : null;
        triedPath = edit.path();
        offers.clear();
        asked.forEach(notice -> offerFilled(notice));
        List<Notice> first = new ArrayList<>(asked);
        first.sort(Comparator.comparing(Notice::severity).reversed());
        first.forEach(notice -> tryFor(notice, shown, edit.path(), wanted.get()));
    }

    private static List<Notice> notices(PathResult path, Assessment all) {
        List<Notice> both = new ArrayList<>(path.notices());
        both.addAll(all.notices());
        return both;
    }

    private void offerFilled(Notice notice) {
        Supplier<Optional<String>> fill = filled.get(notice.kind());
        if (fill != null) {
            offers.put(
                    notice,
                    List.of(new Offer(
                            Texts.of("mend." + notice.kind()),
                            true,
                            () -> fill.get().ifPresent(results::tell))));
        }
    }

    private void tryFor(Notice notice, Assessment shown, int path, int ticket) {
        runner.run(
                progress -> Mends.of(shown, path, notice, whileWanted(progress, ticket)),
                mends -> {
                    if (ticket == wanted.get() && !mends.isEmpty()) {
                        offers.put(
                                notice,
                                mends.stream().map(mend -> offer(mend, shown)).toList());
                    }
                },
                e -> {
                    // Nothing is offered for this notice; the results have told what is wrong with the project.
                });
    }

    private Progress whileWanted(Progress progress, int ticket) {
        Progress.Cancelled gone = new Progress.Cancelled();
        if (ticket != wanted.get()) {
            throw gone;
        }
        return (fraction, doing) -> {
            progress.check(fraction, doing);
            if (ticket != wanted.get()) {
                throw gone;
            }
        };
    }

    private Offer offer(Mend mend, Assessment shown) {
        String words = new MendWording(shown.project().units()).of(mend);
        return new Offer(words, mend.enough(), () -> make(mend, words));
    }

    private void make(Mend mend, String words) {
        try {
            edit.edit(words, (Project p) -> mend.change().apply(p));
        } catch (InvalidValue e) {
            results.tell(ResultModel.explain(e, edit.project()));
        }
    }

    /** Whether a notice is grave enough for other boxes to be looked for where nothing else helps. */
    public static boolean isAboutTheBox(Notice notice) {
        return notice.severity() == Severity.STOP
                && switch (notice.kind()) {
                    case NOT_QUIET_ENOUGH,
                            PRESSURE_ABOVE_LIMIT,
                            PRESSURE_ABOVE_DRIVE,
                            VELOCITY_ABOVE_LIMIT,
                            DOES_NOT_FIT,
                            PORT_SMALLER_THAN_OPENING,
                            HEAVIER_THAN_LIMIT,
                            PANEL_LARGER_THAN_SHEET,
                            DOES_NOT_PASS_DOORWAY,
                            OTHERS_HEAR_TOO_MUCH -> true;
                    default -> false;
                };
    }
}
