package hushmaze.app.model;

import hushmaze.measure.Recording;
import hushmaze.measure.Recording.Levels;
import hushmaze.measure.RecordingPicture;
import hushmaze.measure.Weighting;
import hushmaze.quantity.InvalidValue;
import hushmaze.store.RecordingFile;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * A recording that is looked at: its picture, a part of it that is chosen, and the levels of just that part. Both are read from the file
 * beside the window; what was there stays, and is outdated, until the new is there.
 */
public final class RecordingModel {
    /** How it stands. */
    public enum State {
        /** No file was opened. */
        NONE,
        READING,
        CURRENT,
        /** It was stopped; what there was is kept. */
        STOPPED,
        FAILED
    }

    /**
     * One level of the part that is chosen.
     *
     * @param key to tell it by: "leq", "l10", "l90"
     * @param name in a builder's words
     * @param value with its unit
     * @param tip what it means
     */
    public record Figure(String key, String name, String value, String tip) {}

    private static final double MINUTE = 60;
    /** Share between two pieces of news. */
    private static final double NEWS = 0.01;

    /** What levels are of. */
    private record Part(int channel, double from, double to) {}

    private final TaskRunner runner;
    private final AtomicInteger wanted = new AtomicInteger();
    private Path file;
    private Part measured;
    private String problem = "";

    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.NONE);
    private final ReadOnlyDoubleWrapper fraction = new ReadOnlyDoubleWrapper();
    private final ReadOnlyObjectWrapper<RecordingPicture> picture = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Recording> recording = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper outdated = new ReadOnlyBooleanWrapper();
    private final ReadOnlyIntegerWrapper channel = new ReadOnlyIntegerWrapper(1);
    private final ReadOnlyDoubleWrapper from = new ReadOnlyDoubleWrapper();
    private final ReadOnlyDoubleWrapper to = new ReadOnlyDoubleWrapper();
    private final ObjectProperty<Double> offset = new SimpleObjectProperty<>();

    /** @param runner reads files */
    public RecordingModel(TaskRunner runner) {
        this.runner = runner;
    }

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** How far the reading is, 0 to 1. */
    public ReadOnlyDoubleProperty fractionProperty() {
        return fraction.getReadOnlyProperty();
    }

    /** Of the whole recording, perhaps of the channel before while another is read; null for none. */
    public ReadOnlyObjectProperty<RecordingPicture> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    /** Levels of the part that is chosen, or of one before while it is read; without the offset; null for none. */
    public ReadOnlyObjectProperty<Recording> recordingProperty() {
        return recording.getReadOnlyProperty();
    }

    /** Whether the levels are of another part or channel than the one that is chosen. */
    public ReadOnlyBooleanProperty outdatedProperty() {
        return outdated.getReadOnlyProperty();
    }

    /** Counted from 1. */
    public ReadOnlyIntegerProperty channelProperty() {
        return channel.getReadOnlyProperty();
    }

    /** Begin of the part, s. */
    public ReadOnlyDoubleProperty fromProperty() {
        return from.getReadOnlyProperty();
    }

    /** End of the part, s. */
    public ReadOnlyDoubleProperty toProperty() {
        return to.getReadOnlyProperty();
    }

    /** Level of a sine at full scale, dB, which is added to what is shown; null while it is not known, and nothing is added. */
    public ObjectProperty<Double> offsetProperty() {
        return offset;
    }

    /** The file; nothing if none was opened. */
    public Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    /** Channels of the file; 1 while there is no picture. */
    public int channels() {
        return picture.get() == null ? 1 : picture.get().channels();
    }

    /** Duration of the recording, s; 0 while there is no picture. */
    public double seconds() {
        return picture.get() == null ? 0 : picture.get().seconds();
    }

    /** Reads a file: its first channel, and all of it. */
    public void open(Path recordingFile) {
        forget();
        file = recordingFile;
        follow();
    }

    /** Lets go of the file. */
    public void close() {
        forget();
        follow();
    }

    private void forget() {
        wanted.incrementAndGet();
        file = null;
        measured = null;
        picture.set(null);
        recording.set(null);
        channel.set(1);
        from.set(0);
        to.set(0);
    }

    /** Looks at another channel, counted from 1. */
    public void choose(int other) {
        if (picture.get() != null && other != channel.get()) {
            channel.set(InvalidValue.within("channel", other, 1, channels()));
            follow();
        }
    }

    /** Chooses a part between two times in any order, s; what is outside the recording or too short is mended. */
    public void choose(double one, double other) {
        double begin = inside(Math.min(one, other), 0, seconds() - Recording.SHORTEST_S);
        take(begin, inside(Math.max(one, other), begin + Recording.SHORTEST_S, seconds()));
    }

    /** Moves the begin alone, s; the end stays. */
    public void moveFrom(double seconds) {
        take(inside(seconds, 0, to.get() - Recording.SHORTEST_S), to.get());
    }

    /** Moves the end alone, s; the begin stays. */
    public void moveTo(double seconds) {
        take(from.get(), inside(seconds, from.get() + Recording.SHORTEST_S, seconds()));
    }

    /** Chooses the whole recording. */
    public void chooseWhole() {
        take(0, seconds());
    }

    private static double inside(double value, double least, double most) {
        return Math.max(least, Math.min(most, TimeText.rounded(value)));
    }

    private void take(double begin, double end) {
        if (picture.get() != null && (begin != from.get() || end != to.get())) {
            from.set(begin);
            to.set(end);
            follow();
        }
    }

    /**
     * Takes the begin as it was typed: "83.5", "1:23.5".
     *
     * @return why it was not taken, if so; the one before stays
     */
    public Optional<String> enterFrom(String text) {
        return enter(
                "recording.from.name", text, from.get(), 0, to.get() - Recording.SHORTEST_S, s -> take(s, to.get()));
    }

    /**
     * Takes the end as it was typed.
     *
     * @return why it was not taken, if so; the one before stays
     */
    public Optional<String> enterTo(String text) {
        return enter(
                "recording.to.name",
                text,
                to.get(),
                from.get() + Recording.SHORTEST_S,
                seconds(),
                s -> take(from.get(), s));
    }

    private Optional<String> enter(
            String name, String text, double now, double least, double most, Consumer<Double> taken) {
        if (picture.get() == null) {
            return Optional.of(Texts.of("recording.none"));
        }
        try {
            double seconds = TimeText.parse("time", text);
            // what is shown is rounded, and is no other time for that
            if (TimeText.rounded(seconds) == TimeText.rounded(now)) {
                return Optional.empty();
            }
            if (!(TimeText.rounded(seconds) >= TimeText.rounded(least)
                    && TimeText.rounded(seconds) <= TimeText.rounded(most))) {
                String limit = Texts.of("recording.limit", shown(least), shown(most));
                throw new InvalidValue(name, shown(seconds), limit, unit());
            }
            taken.accept(Math.max(least, Math.min(most, seconds)));
            return Optional.empty();
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, Texts.of(name)));
        }
    }

    private boolean hasMinutes() {
        return seconds() >= MINUTE;
    }

    private String shown(double seconds) {
        return TimeText.show(seconds, hasMinutes());
    }

    private String unit() {
        return Texts.of(hasMinutes() ? "recording.unit.minutes" : "recording.unit.seconds");
    }

    /** A time as it is shown in fields, so that it can be typed back: "12.5 s", in recordings of a minute or more "1:23.5". */
    public String timeText(double seconds) {
        return hasMinutes() ? shown(seconds) : shown(seconds) + " " + unit();
    }

    /** A time on the axis of the picture, without a unit: "12.5", in recordings of a minute or more "1:23.5". */
    public String axisText(double seconds) {
        return shown(seconds);
    }

    /** Begins again after it was stopped or failed. */
    public void start() {
        follow();
    }

    /** Stops what is going on; what there is stays. */
    public void cancel() {
        if (state.get() == State.READING) {
            wanted.incrementAndGet();
            state.set(State.STOPPED);
        }
    }

    private Part chosen() {
        return new Part(channel.get(), from.get(), to.get());
    }

    private boolean isWhole() {
        return from.get() == 0 && to.get() == seconds();
    }

    private void follow() {
        int ticket = wanted.incrementAndGet();
        RecordingPicture now = picture.get();
        outdated.set(recording.get() != null && !chosen().equals(measured));
        if (file == null) {
            state.set(State.NONE);
        } else if (now == null || now.channel() != channel.get()) {
            Path asked = file;
            int number = channel.get();
            read(ticket, progress -> RecordingFile.picture(asked, number, progress), this::show);
        } else if (chosen().equals(measured)) {
            state.set(State.CURRENT);
        } else if (isWhole()) {
            show(now.whole());
        } else {
            Path asked = file;
            Double end = to.get() == seconds() ? null : Double.valueOf(to.get());
            Recording.Span span = new Recording.Span(channel.get(), from.get(), end);
            read(ticket, progress -> RecordingFile.levels(asked, span, progress), this::show);
        }
    }

    private void show(RecordingPicture found) {
        boolean first = picture.get() == null;
        double before = seconds();
        picture.set(found);
        if (first || before != found.seconds()) {
            from.set(0);
            to.set(found.seconds());
        }
        follow();
    }

    private void show(Recording levels) {
        measured = chosen();
        recording.set(levels);
        outdated.set(false);
        state.set(State.CURRENT);
    }

    private <T> void read(int ticket, Function<Progress, T> work, Consumer<T> done) {
        fraction.set(0);
        state.set(State.READING);
        runner.run(
                progress -> work.apply(whileWanted(progress, ticket)),
                found -> {
                    if (ticket == wanted.get()) {
                        done.accept(found);
                    }
                },
                e -> {
                    if (ticket == wanted.get()) {
                        problem = e instanceof InvalidValue refused
                                ? Refusal.sentence(refused, refused.field())
                                : Texts.of("problem.unexpected", e.toString());
                        state.set(State.FAILED);
                    }
                });
    }

    private Progress whileWanted(Progress progress, int ticket) {
        double[] told = {0};
        Progress wantedStill = progress.asLongAs(() -> ticket == wanted.get());
        return (share, doing) -> {
            wantedStill.check(share, doing);
            if (share - told[0] >= NEWS) {
                told[0] = share;
                runner.tell(() -> {
                    if (ticket == wanted.get()) {
                        fraction.set(share);
                    }
                });
            }
        };
    }

    /** How it stands, in a sentence; empty when the levels are those of the part that is chosen. */
    public String stateWords() {
        String percent = String.valueOf(Math.round(100 * fraction.get()));
        boolean hasPicture = picture.get() != null && picture.get().channel() == channel.get();
        return switch (state.get()) {
            case NONE -> Texts.of("recording.none");
            case READING -> Texts.of(hasPicture ? "recording.measuring" : "recording.reading", fileName(), percent);
            case STOPPED -> Texts.of(hasPicture ? "recording.stopped.outdated" : "recording.stopped");
            case FAILED -> problem;
            case CURRENT -> "";
        };
    }

    private String fileName() {
        return String.valueOf(file.getFileName());
    }

    /** Levels of the part; none while there are none. */
    public List<Figure> figures() {
        if (recording.get() == null) {
            return List.of();
        }
        Levels a = recording.get().weighted().get(Weighting.A);
        return List.of(figure("leq", a.leq()), figure("l10", a.l10()), figure("l90", a.l90()));
    }

    private Figure figure(String key, double level) {
        return new Figure(key, Texts.of("recording." + key), levelText(level), Texts.of("recording." + key + ".tip"));
    }

    private String levelText(double level) {
        if (level == Double.NEGATIVE_INFINITY) {
            return Texts.of("recording.silent");
        }
        double shown = level + added();
        String number = String.valueOf(Math.round(10 * Math.abs(shown)) / 10.0);
        return Texts.of(
                offset.get() == null ? "recording.level" : "recording.level.known", (shown < 0 ? "−" : "") + number);
    }

    /** What is added to levels that are shown, dB. */
    public double added() {
        return offset.get() == null ? 0 : offset.get();
    }

    /** Which part the levels are of: "0:12 to 1:05.5, 53.5 s". */
    public String partWords() {
        if (measured == null) {
            return "";
        }
        String length = TimeText.show(measured.to() - measured.from(), false);
        boolean whole = measured.from() == 0 && measured.to() == seconds();
        return whole
                ? Texts.of("recording.part.whole", length)
                : Texts.of("recording.part", timeText(measured.from()), timeText(measured.to()), length);
    }

    /** What the levels count from, as long as the recording is not calibrated; empty otherwise. */
    public String claim() {
        return offset.get() == null && recording.get() != null ? Texts.of("recording.claim") : "";
    }

    /** That there were samples at full scale in the part; empty if there were none. */
    public String overload() {
        long count = recording.get() == null ? 0 : recording.get().overloads();
        return count == 0
                ? ""
                : Texts.of(count == 1 ? "recording.overload.one" : "recording.overload", String.valueOf(count));
    }
}
