package hushmaze.app.model;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Sheet;
import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Design;
import hushmaze.size.PathDesigns;
import hushmaze.size.Sized;
import hushmaze.size.Sizing;
import hushmaze.store.NoisePreset;
import hushmaze.store.Presets;
import hushmaze.store.TargetPreset;
import hushmaze.wording.SizeWording;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** The questions that lead to a first box, one step after another, and the answers given so far. */
public final class GuideModel implements Undoing {
    /** Finds boxes for all paths of a project; what a window uses is {@link Sizing#of}. */
    @FunctionalInterface
    interface Finder {
        /** @param watch told of boxes as they are found */
        Sized find(Project project, Progress progress, Sizing.Watch watch);
    }

    private final Presets presets;
    private final Supplier<LocalDate> today;
    private final TaskRunner searches;
    private final Finder finder;
    private final BiConsumer<Project, String> begin;
    /** The best so far, by number of the path. */
    private final Map<Integer, Design> found = new ConcurrentHashMap<>();

    private final AtomicInteger wanted = new AtomicInteger();
    private final ReadOnlyBooleanWrapper searching = new ReadOnlyBooleanWrapper();
    private final ReadOnlyDoubleWrapper fraction = new ReadOnlyDoubleWrapper();
    private final ReadOnlyStringWrapper doing = new ReadOnlyStringWrapper("");
    private Project asked;
    private final BooleanProperty open = new SimpleBooleanProperty();
    private final ObjectProperty<Question.Step> step = new SimpleObjectProperty<>(Question.Step.ROOM);
    private final ObjectProperty<Question> looked = new SimpleObjectProperty<>(Question.ROOM_LENGTH);
    private final ReadOnlyObjectWrapper<FirstBox> box = new ReadOnlyObjectWrapper<>();
    private final List<Runnable> finished = new ArrayList<>();
    private History<FirstBox> history;

    /**
     * @param today gives the date of issue
     * @param searches runs the search for boxes
     * @param finder how boxes are found
     * @param begin takes the project the answers make, with boxes if any were found, and what there is to tell
     */
    GuideModel(
            Presets presets,
            Supplier<LocalDate> today,
            TaskRunner searches,
            Finder finder,
            BiConsumer<Project, String> begin) {
        this.presets = presets;
        this.today = today;
        this.searches = searches;
        this.finder = finder;
        this.begin = begin;
        restart(UnitSystem.METRIC);
    }

    private void restart(UnitSystem units) {
        history = new History<>(FirstBox.empty(presets, units));
        box.set(history.value());
        go(Question.Step.ROOM);
    }

    /** Whether the questions are shown. */
    public BooleanProperty openProperty() {
        return open;
    }

    /** The questions shown. */
    public ReadOnlyObjectProperty<Question.Step> stepProperty() {
        return step;
    }

    /** The question whose number the drawing points out. */
    public ObjectProperty<Question> lookedProperty() {
        return looked;
    }

    /** The answers. */
    public ReadOnlyObjectProperty<FirstBox> boxProperty() {
        return box.getReadOnlyProperty();
    }

    public FirstBox box() {
        return box.get();
    }

    /** Begins with no answers. */
    public void start() {
        restart(box().units());
        open.set(true);
    }

    /** Puts the questions away; the project at hand stays as it is. A search for their boxes ends. */
    public void leave() {
        wanted.incrementAndGet();
        searching.set(false);
        open.set(false);
    }

    /** Whether boxes are looked for that suit the answers. */
    public ReadOnlyBooleanProperty searchingProperty() {
        return searching.getReadOnlyProperty();
    }

    /** Share of that search that is done, 0 to 1. */
    public ReadOnlyDoubleProperty fractionProperty() {
        return fraction.getReadOnlyProperty();
    }

    /** What that search is doing. */
    public ReadOnlyStringProperty doingProperty() {
        return doing.getReadOnlyProperty();
    }

    /** Shows a step. */
    public void go(Question.Step to) {
        step.set(to);
        looked.set(to.questions().get(0));
    }

    public boolean isFirst() {
        return step.get().ordinal() == 0;
    }

    public boolean isLast() {
        return step.get().ordinal() == Question.Step.values().length - 1;
    }

    /** To the next step; from the last one, to the project. */
    public void next() {
        if (isLast()) {
            finish();
        } else {
            go(Question.Step.values()[step.get().ordinal() + 1]);
        }
    }

    public void back() {
        if (!isFirst()) {
            go(Question.Step.values()[step.get().ordinal() - 1]);
        }
    }

    /** Makes a project of the answers and looks for its boxes. */
    private void finish() {
        asked = box().project(today.get());
        Project project = asked;
        int ticket = wanted.incrementAndGet();
        found.clear();
        fraction.set(0);
        doing.set("");
        searching.set(true);
        searches.run(
                progress -> finder.find(
                        project,
                        (share, what) -> {
                            progress.check(share, what);
                            if (ticket != wanted.get()) {
                                throw new Progress.Cancelled();
                            }
                            searches.tell(() -> tell(ticket, share, what));
                        },
                        (path, designs) -> {
                            if (ticket == wanted.get()) {
                                found.put(path, designs.get(0));
                            }
                        }),
                sized -> {
                    if (ticket == wanted.get()) {
                        end(sized.project(), words(sized));
                    }
                },
                e -> {
                    if (ticket == wanted.get()) {
                        end(project, ResultModel.explain(e, project));
                    }
                });
    }

    private void tell(int ticket, double share, String what) {
        if (ticket == wanted.get()) {
            fraction.set(Math.max(fraction.get(), share));
            doing.set(what);
        }
    }

    /** Ends the search; the project gets the boxes found so far, and in the other paths ones that are laid out at once. */
    public void stop() {
        if (searching.get()) {
            Project so = asked;
            for (Map.Entry<Integer, Design> one : found.entrySet()) {
                so = so.withPath(one.getKey(), one.getValue().placed(so.paths().get(one.getKey())));
            }
            end(so, Texts.of("first.stopped"));
        }
    }

    private void end(Project project, String words) {
        wanted.incrementAndGet();
        searching.set(false);
        open.set(false);
        begin.accept(project, words);
        finished.forEach(Runnable::run);
    }

    /** That all is well, or what would help where it is not. */
    private static String words(Sized sized) {
        SizeWording wording = new SizeWording(sized.project());
        List<String> lines = new ArrayList<>();
        for (PathDesigns path : sized.paths()) {
            List<String> ways = wording.ways(path);
            if (!ways.isEmpty() || path.designs().isEmpty()) {
                lines.add(wording.head(sized.project().paths().get(path.path()).name(), path));
                ways.forEach(way -> lines.add("• " + way));
            }
        }
        if (lines.isEmpty() && !sized.enoughAir()) {
            lines.add(wording.noAir());
        }
        return lines.isEmpty() ? Texts.of("first.done") : String.join("\n", lines);
    }

    /** Told when the answers have become the project on the table. */
    public void whenFinished(Runnable listener) {
        finished.add(listener);
    }

    /** Millimetres or inches from now on. */
    public void setUnits(UnitSystem units) {
        if (units != box().units()) {
            push(box().in(units));
        }
    }

    /**
     * Takes a typed number; a blank takes the answer back.
     *
     * @return why it was not taken, if so
     */
    public Optional<String> enter(Question question, String text) {
        String label = label(question);
        try {
            Object value = text.isBlank()
                    ? null
                    : (Object) EntryText.parse(question.name(), text, question.unit(), box().units());
            push(box().with(question, value));
            return Optional.empty();
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, label));
        }
    }

    /** Takes a choice. */
    public Optional<String> choose(Question question, Object value) {
        push(box().with(question, value));
        return Optional.empty();
    }

    private void push(FirstBox next) {
        history.push("", next);
        box.set(next);
    }

    @Override
    public void undo() {
        history.undo();
        box.set(history.value());
    }

    @Override
    public void redo() {
        history.redo();
        box.set(history.value());
    }

    /** A number as its entry shows it; empty for none. */
    public String shown(Question question) {
        Object value = box().get(question);
        return value == null ? "" : EntryText.show((Double) value, question.unit(), box().units());
    }

    /** A choice in words. */
    public String word(Object option) {
        if (option instanceof NoisePreset noise) {
            return noise.name();
        }
        if (option instanceof TargetPreset target) {
            return target.name();
        }
        if (option instanceof Board board) {
            return board.name();
        }
        if (option instanceof Liner liner) {
            return liner.name();
        }
        if (option instanceof Sheet sheet) {
            return sheet.name();
        }
        Enum<?> value = (Enum<?>) option;
        return Texts.find("first." + value.getDeclaringClass().getSimpleName() + "." + value.name())
                .orElseGet(() -> Texts.word(value));
    }

    /** What follows from the answers of the step shown. */
    public String follows() {
        return new FirstWords(box()).of(step.get());
    }

    static String label(Question question) {
        return Texts.of("entry.first." + question.name());
    }
}
