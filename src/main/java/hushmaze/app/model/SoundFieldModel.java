package hushmaze.app.model;

import hushmaze.air.AirState;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitParser;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.section.PathField;
import hushmaze.sound.section.PathWave;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;

/**
 * The sound in the box of the path looked at, at one frequency: worked out while somebody looks, anew after every edit that counts. What
 * was there stays, and is outdated, until the new one is there or another path is looked at.
 */
public final class SoundFieldModel {
    /** How it stands. */
    public enum State {
        /** The path has no box, or nobody looked yet. */
        NONE,
        COMPUTING,
        CURRENT,
        /** It was stopped; what there was is kept. */
        STOPPED,
        FAILED
    }

    /** Third octaves to choose from, 50 Hz to 5 kHz. */
    public static final List<Band> BANDS = BandSet.THIRD_OCTAVE.bands().subList(0, PathWave.BANDS);

    /** At first, Hz. */
    private static final double FIRST = 500;

    private static final Pattern THOUSANDS = Pattern.compile("([^\\p{L}]*?)\\s*k(?:hz)?", Pattern.CASE_INSENSITIVE);

    /** What a field is of. */
    private record Asked(int path, Box box, double soundSpeed, double frequency) {}

    private final EditModel edit;
    private final TaskRunner runner;
    private final AtomicInteger wanted = new AtomicInteger();
    private Asked shown;
    private Asked running;
    private Asked stopped;
    private String problem = "";

    private final BooleanProperty watched = new SimpleBooleanProperty();
    private final ReadOnlyDoubleWrapper frequency = new ReadOnlyDoubleWrapper(FIRST);
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.NONE);
    private final ReadOnlyObjectWrapper<PathField> field = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper outdated = new ReadOnlyBooleanWrapper();

    SoundFieldModel(EditModel edit, TaskRunner runner) {
        this.edit = edit;
        this.runner = runner;
        edit.whenStarted(() -> forget(true));
        edit.projectProperty().addListener((p, before, after) -> follow());
        edit.pathProperty().addListener((p, before, after) -> {
            forget(false);
            follow();
        });
        watched.addListener((p, before, after) -> follow());
    }

    /** Whether somebody looks; nothing is worked out otherwise. */
    public BooleanProperty watchedProperty() {
        return watched;
    }

    /** Hz. */
    public ReadOnlyDoubleProperty frequencyProperty() {
        return frequency.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** The newest there is, perhaps of an older state of the box or of another frequency; null for none. */
    public ReadOnlyObjectProperty<PathField> fieldProperty() {
        return field.getReadOnlyProperty();
    }

    /** Whether the box or the frequency has changed since. */
    public ReadOnlyBooleanProperty outdatedProperty() {
        return outdated.getReadOnlyProperty();
    }

    /** Chooses the middle of a band by its number among {@link #BANDS}, as it is called. */
    public void choose(int band) {
        take(BANDS.get(band).nominalHz());
    }

    /** The band whose middle is nearest to the frequency. */
    public int nearestBand() {
        int nearest = 0;
        for (int i = 1; i < BANDS.size(); i++) {
            if (distance(i) < distance(nearest)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private double distance(int band) {
        return Math.abs(Math.log(BANDS.get(band).nominalHz() / frequency.get()));
    }

    /**
     * Takes a frequency as it was typed: "430", "1.2k", "1.2 kHz".
     *
     * @return why it was not taken, if so; the one before stays
     */
    public Optional<String> enter(String text) {
        try {
            double hz = parsed(text.strip());
            InvalidValue.within("frequency", hz, PathField.LOWEST, PathField.HIGHEST, Unit.HERTZ);
            take(hz);
            return Optional.empty();
        } catch (InvalidValue e) {
            String unit = e.unit().isEmpty() ? "" : " " + e.unit();
            return Optional.of(
                    Texts.of("entry.refused", Texts.of("inside.frequency.name"), e.given() + unit, e.limit() + unit));
        }
    }

    private static double parsed(String text) {
        Matcher thousands = THOUSANDS.matcher(text);
        boolean large = thousands.matches();
        try {
            double value = UnitParser.parse("frequency", large ? thousands.group(1) : text, Unit.HERTZ);
            return large ? 1000 * value : value;
        } catch (InvalidValue e) {
            String cut = text.length() > 40 ? text.substring(0, 40) + "…" : text;
            throw new InvalidValue("frequency", "\"" + cut + "\"", Texts.of("inside.typed"), "");
        }
    }

    private void take(double hz) {
        frequency.set(hz);
        follow();
    }

    /** The frequency as it is written: "500 Hz" or "1.25 kHz". */
    public String frequencyText() {
        return FieldWords.frequency(frequency.get());
    }

    /** Begins again after it was stopped or failed. */
    public void start() {
        stopped = null;
        running = null;
        follow();
    }

    /** Stops what is going on; what there is stays. */
    public void cancel() {
        if (state.get() == State.COMPUTING) {
            wanted.incrementAndGet();
            stopped = running;
            running = null;
            state.set(State.STOPPED);
        }
    }

    private void forget(boolean all) {
        wanted.incrementAndGet();
        running = null;
        stopped = null;
        if (all || shown == null || shown.path() != edit.path()) {
            shown = null;
            field.set(null);
        }
        state.set(State.NONE);
        outdated.set(false);
    }

    private Asked asked() {
        Project project = edit.project();
        Box box = project.paths().get(edit.path()).box();
        return new Asked(edit.path(), box, AirState.of(project.room()).soundSpeed(), frequency.get());
    }

    private void follow() {
        Asked now = asked();
        outdated.set(shown != null && !shown.equals(now));
        if (now.box() == null || now.equals(shown)) {
            wanted.incrementAndGet();
            running = null;
            state.set(now.box() == null ? State.NONE : State.CURRENT);
        } else if (!watched.get()) {
            wanted.incrementAndGet();
            running = null;
            state.set(State.NONE);
        } else if (!now.equals(running) && !now.equals(stopped)) {
            compute(now);
        }
    }

    private void compute(Asked now) {
        int ticket = wanted.incrementAndGet();
        running = now;
        stopped = null;
        state.set(State.COMPUTING);
        runner.run(
                progress -> PathField.of(
                        SolidBuilder.build(now.box()),
                        now.box().liner(),
                        now.soundSpeed(),
                        now.frequency(),
                        whileWanted(progress, ticket)),
                found -> {
                    if (ticket == wanted.get()) {
                        running = null;
                        shown = now;
                        field.set(found);
                        outdated.set(false);
                        state.set(State.CURRENT);
                    }
                },
                e -> {
                    if (ticket == wanted.get()) {
                        stopped = now;
                        running = null;
                        problem = ResultModel.explain(e, edit.project());
                        state.set(State.FAILED);
                    }
                });
    }

    private Progress whileWanted(Progress progress, int ticket) {
        return progress.asLongAs(() -> ticket == wanted.get());
    }

    /** How it stands, in a sentence; empty when what is shown is current. */
    public String stateWords() {
        return switch (state.get()) {
            case NONE -> edit.project().paths().get(edit.path()).box() == null ? Texts.of("box.none") : "";
            case COMPUTING -> Texts.of(outdated.get() ? "inside.computing.again" : "inside.computing", frequencyText());
            case STOPPED -> Texts.of(field.get() == null ? "inside.stopped" : "inside.stopped.outdated");
            case FAILED -> problem;
            case CURRENT -> "";
        };
    }

    /** What is seen, in a builder's words; empty while there is nothing. */
    public String lesson() {
        return field.get() == null ? "" : new FieldWords(field.get()).lesson();
    }

    /** What the picture is of and what it leaves out; empty while there is nothing. */
    public String scope() {
        return field.get() == null ? "" : new FieldWords(field.get()).scope();
    }

    /**
     * What there is at a place of the picture, in words.
     *
     * @param x along the box from its near end, m
     * @param y across it from its first side, m
     */
    public String at(double x, double y) {
        return field.get() == null
                ? ""
                : new FieldWords(field.get()).at(x, y, edit.project().units());
    }
}
