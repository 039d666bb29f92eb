package hushmaze.app.model;

import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.size.Design;
import hushmaze.size.PathDesigns;
import hushmaze.size.Sizing;
import hushmaze.wording.Amounts;
import hushmaze.wording.SizeWording;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * The search for the best boxes of the path that is looked at. What it found so far is there while it goes on and stays when it
 * is stopped; each path keeps what was found for it until another search for it begins or another project is opened.
 */
public final class SizingModel {
    /** Most designs of a path: one of each kind. */
    private static final int KEEP = 6;

    /** How the search for the path looked at stands. */
    public enum State {
        /** None was begun. */
        NONE,
        SEARCHING,
        /** It went to its end. */
        FINISHED,
        /** It was stopped; what it had found is kept. */
        STOPPED,
        FAILED
    }

    /** How boxes are found; what a window uses is {@link Sizing#ofPath}. */
    @FunctionalInterface
    public interface Finder {
        /**
         * What is found for one path.
         *
         * @param keep most designs
         * @param watch told of designs as they are found
         */
        PathDesigns find(Project project, int path, int keep, Progress progress, Sizing.Watch watch);
    }

    /** Everything that is known of one search. */
    private record Search(
            Project asked,
            State state,
            double fraction,
            String doing,
            List<Design> designs,
            PathDesigns outcome,
            String problem) {
        Search in(State now) {
            return new Search(asked, now, fraction, doing, designs, outcome, problem);
        }
    }

    private final EditModel edit;
    private final TaskRunner runner;
    private final Finder finder;
    private final ObjectProperty<Message> message;
    private final AtomicInteger wanted = new AtomicInteger();
    private final Map<Integer, Search> searches = new HashMap<>();
    /** Number of the path that is searched for. */
    private int searched;

    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.NONE);
    private final ReadOnlyDoubleWrapper fraction = new ReadOnlyDoubleWrapper();
    private final ReadOnlyStringWrapper doing = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<List<Design>> designs = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<PathDesigns> outcome = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper outdated = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ObjectProperty<Design> selected = new SimpleObjectProperty<>();

    SizingModel(EditModel edit, TaskRunner runner, Finder finder, ObjectProperty<Message> message) {
        this.edit = edit;
        this.runner = runner;
        this.finder = finder;
        this.message = message;
        edit.whenStarted(this::forget);
        edit.projectProperty().addListener((p, before, after) -> show());
        edit.pathProperty().addListener((p, before, after) -> show());
    }

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** Share done, 0 to 1. */
    public ReadOnlyDoubleProperty fractionProperty() {
        return fraction.getReadOnlyProperty();
    }

    /** What is being done, in a few words. */
    public ReadOnlyStringProperty doingProperty() {
        return doing.getReadOnlyProperty();
    }

    /** Found so far, the recommended one first. */
    public ReadOnlyObjectProperty<List<Design>> designsProperty() {
        return designs.getReadOnlyProperty();
    }

    /** Of a search that went to its end; null before. */
    public ReadOnlyObjectProperty<PathDesigns> outcomeProperty() {
        return outcome.getReadOnlyProperty();
    }

    /** Whether what was searched within has changed since: the room, the stock or what is asked. A changed box does not count. */
    public ReadOnlyBooleanProperty outdatedProperty() {
        return outdated.getReadOnlyProperty();
    }

    /** Why the search failed; empty otherwise. */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** The design looked at; null for none. */
    public ObjectProperty<Design> selectedProperty() {
        return selected;
    }

    /** Begins a search for the path looked at; another that is still going on is stopped. */
    public void start() {
        cancel();
        Project asked = edit.project();
        int path = edit.path();
        int ticket = wanted.incrementAndGet();
        searched = path;
        selected.set(null);
        message.set(null);
        put(path, new Search(asked, State.SEARCHING, 0, "", List.of(), null, ""));
        News news = new News(ticket, path);
        runner.run(
                progress -> finder.find(
                        asked,
                        path,
                        KEEP,
                        (share, what) -> news.at(progress, share, what),
                        (p, found) -> news.found(found)),
                found -> finish(found, ticket, path),
                e -> fail(e, ticket, path));
    }

    /** Stops the search that is going on, for whichever path; what it found stays. */
    public void cancel() {
        wanted.incrementAndGet();
        Search running = searches.get(searched);
        if (running != null && running.state() == State.SEARCHING) {
            put(searched, running.in(State.STOPPED));
        }
    }

    private void forget() {
        cancel();
        searches.clear();
        selected.set(null);
        show();
    }

    /** Gathers on the searching thread what there is to know, and tells it. */
    private final class News {
        private final int ticket;
        private final int path;
        private double share;
        private String what = "";
        private List<Design> found = List.of();

        News(int ticket, int path) {
            this.ticket = ticket;
            this.path = path;
        }

        void at(Progress progress, double newShare, String newWhat) {
            progress.check(newShare, newWhat);
            if (ticket != wanted.get()) {
                throw new Progress.Cancelled();
            }
            share = Math.max(share, newShare);
            what = newWhat;
            tell();
        }

        void found(List<Design> newFound) {
            found = List.copyOf(newFound);
            tell();
        }

        private void tell() {
            double toldShare = share;
            String toldWhat = what;
            List<Design> toldFound = found;
            runner.tell(() -> {
                Search running = searches.get(path);
                if (ticket == wanted.get() && running.state() == State.SEARCHING) {
                    put(path, new Search(running.asked(), State.SEARCHING, toldShare, toldWhat, toldFound, null, ""));
                }
            });
        }
    }

    private void finish(PathDesigns found, int ticket, int path) {
        if (ticket == wanted.get()) {
            Project asked = searches.get(path).asked();
            put(path, new Search(asked, State.FINISHED, 1, "", found.designs(), found, ""));
        }
    }

    private void fail(Exception e, int ticket, int path) {
        if (ticket == wanted.get()) {
            Search running = searches.get(path);
            String why = ResultModel.explain(e, running.asked());
            put(path, new Search(running.asked(), State.FAILED, 0, "", running.designs(), null, why));
        }
    }

    private void put(int path, Search search) {
        searches.put(path, search);
        show();
    }

    private void show() {
        Search now = searches.get(edit.path());
        if (now == null) {
            now = new Search(edit.project(), State.NONE, 0, "", List.of(), null, "");
        }
        outdated.set(!within(now.asked(), edit.path()).equals(within(edit.project(), edit.path())));
        problem.set(now.problem());
        fraction.set(now.fraction());
        doing.set(now.doing());
        outcome.set(now.outcome());
        designs.set(now.designs());
        state.set(now.state());
        Design looked = selected.get();
        if (looked == null || !now.designs().contains(looked)) {
            selected.set(now.designs().isEmpty() ? null : now.designs().get(0));
        }
    }

    /** What a search for a path depends on; of other paths, only what they leave of the target and of the air. */
    private static List<Object> within(Project project, int path) {
        List<Object> all = new ArrayList<>(List.of(project.room(), project.stock()));
        for (int i = 0; i < project.paths().size(); i++) {
            VentPath one = project.paths().get(i);
            all.add(one.purpose());
            if (i == path) {
                all.add(one.brief());
            } else {
                all.add(Optional.ofNullable(one.brief().flow()));
                all.add(Optional.ofNullable(one.brief().noiseShare()));
            }
        }
        return all;
    }

    /** Whether a design is the box in the path. */
    public boolean isUsed(Design design) {
        return design.box().equals(edit.project().paths().get(edit.path()).box());
    }

    /** Puts a design's box into the path looked at; one step to undo. */
    public void use(Design design) {
        if (isUsed(design)) {
            return;
        }
        int path = edit.path();
        boolean old = outdated.get();
        String kinds = new SizeWording(edit.project()).kinds(design);
        edit.edit(
                Texts.of("edit.useFound"),
                p -> p.withPath(path, design.placed(p.paths().get(path))));
        String name = edit.project().paths().get(path).name();
        message.set(new Message(old, Texts.of(old ? "found.usedOutdated" : "found.used", name, kinds)));
    }

    /** The limits of a search for the path looked at, in one line. */
    public String limits() {
        Project project = edit.project();
        var brief = project.paths().get(edit.path()).brief();
        Amounts amounts = new Amounts(project.units());
        var space = brief.space();
        String flow = brief.flow() == null
                ? Texts.of("found.flowAsNeeded")
                : Texts.of("found.flow", amounts.flow(brief.flow()));
        return Texts.of(
                "found.within",
                amounts.sizes(space.width(), space.height(), space.depth()),
                flow,
                amounts.pressure(brief.maxPressureDrop()),
                new Wording(project.units()).target(project.room().target()));
    }

    /** How a finished search went; empty before. */
    public String head() {
        PathDesigns found = outcome.get();
        String name = edit.project().paths().get(edit.path()).name();
        return found == null ? "" : wording().head(name, found);
    }

    /** What became of the boxes a finished search looked at; empty before. */
    public String looked() {
        PathDesigns found = outcome.get();
        if (found == null) {
            return "";
        }
        String looked = wording().looked(found.tally());
        return found.held() == null ? looked : looked + " " + wording().held(found.held());
    }

    /** What would help where no box is good, line by line; empty otherwise. */
    public List<String> ways() {
        return outcome.get() == null ? List.of() : wording().ways(outcome.get());
    }

    /** What the sheets of a design cost, in words. */
    public String cost(Design design) {
        Search now = searches.get(edit.path());
        Project asked = now == null ? edit.project() : now.asked();
        return wording().cost(design, Sizing.inMoney(asked.stock()));
    }

    /** In the units the project is shown in. */
    public SizeWording wording() {
        return new SizeWording(edit.project());
    }

    /** In the units the project is shown in. */
    public Amounts amounts() {
        return new Amounts(edit.project().units());
    }
}
