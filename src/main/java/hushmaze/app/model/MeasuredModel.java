package hushmaze.app.model;

import hushmaze.measure.Calibration;
import hushmaze.measure.Recording;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading;
import hushmaze.project.Reading.Round;
import hushmaze.project.Reading.Scale;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitParser;
import hushmaze.store.MeasuredFile;
import hushmaze.wording.CompareWording;
import hushmaze.wording.Wording;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Levels measured of the path looked at, taken from files. Files are read beside the window; a recording waits until a part of it is
 * chosen. What is not calibrated can be given a level later.
 */
public final class MeasuredModel {
    private static final Field READINGS = Field.of("path.readings");
    /** Level of a usual calibrator, dB. */
    private static final double USUAL_CALIBRATOR = 94;

    /**
     * A recording that waits until a part of it is chosen.
     *
     * @param file it is in
     * @param round it belongs to
     * @param path it belongs to
     */
    public record Pending(Path file, Round round, int path) {}

    private final EditModel edit;
    private final TaskRunner runner;
    private final ObjectProperty<Message> message;
    private final RecordingModel recording;
    private final Deque<Pending> queue = new ArrayDeque<>();
    private final ReadOnlyObjectWrapper<Pending> pending = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Double> offset = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Double> calibrator = new ReadOnlyObjectWrapper<>(USUAL_CALIBRATOR);

    MeasuredModel(EditModel edit, TaskRunner runner, ObjectProperty<Message> message) {
        this.edit = edit;
        this.runner = runner;
        this.message = message;
        this.recording = new RecordingModel(runner);
        recording.offsetProperty().bind(offset);
        edit.whenStarted(this::forget);
    }

    private void forget() {
        queue.clear();
        offset.set(null);
        calibrator.set(USUAL_CALIBRATOR);
        wait(null);
    }

    /** The recording that waits. */
    public RecordingModel recording() {
        return recording;
    }

    /** What waits until a part of it is chosen; null for nothing. */
    public ReadOnlyObjectProperty<Pending> pendingProperty() {
        return pending.getReadOnlyProperty();
    }

    /** Level of a sine at full scale, dB; null while it is not known. */
    public ReadOnlyObjectProperty<Double> offsetProperty() {
        return offset.getReadOnlyProperty();
    }

    /** Level of the calibrator, dB. */
    public ReadOnlyObjectProperty<Double> calibratorProperty() {
        return calibrator.getReadOnlyProperty();
    }

    private VentPath path() {
        return edit.project().paths().get(edit.path());
    }

    /** What was measured of the path looked at. */
    public PathReadings readings() {
        return path().readingsOrNone();
    }

    private CompareWording words() {
        return new CompareWording(new Wording(edit.project().units()));
    }

    /** Reads files of one round: levels of texts are taken at once, recordings wait until a part of each is chosen. */
    public void add(Round round, List<Path> files) {
        int at = edit.path();
        String source = words().textSource();
        for (Path file : files) {
            runner.run(
                    progress -> MeasuredFile.isRecording(file)
                            ? null
                            : MeasuredFile.read(file, Recording.Span.ALL, progress)
                                    .reading(round, null, source),
                    reading -> {
                        if (reading == null) {
                            queue.add(new Pending(file, round, at));
                            next();
                        } else {
                            tell(take(at, reading));
                        }
                    },
                    e -> tell(Optional.of(ResultModel.explain(e, edit.project()))));
        }
    }

    /** Takes the chosen part of the recording that waits. */
    public void takePart() {
        Pending what = pending.get();
        Recording levels = recording.recordingProperty().get();
        if (what == null || levels == null || recording.outdatedProperty().get()) {
            return;
        }
        String source = words().recordingSource(
                        recording.channelProperty().get(),
                        recording.fromProperty().get(),
                        recording.toProperty().get(),
                        offset.get());
        Optional<String> problem;
        try {
            MeasuredFile part = new MeasuredFile(what.file(), levels.bands(), levels);
            problem = take(what.path(), part.reading(what.round(), offset.get(), source));
        } catch (InvalidValue e) {
            problem = Optional.of(Refusal.sentence(e, READINGS, Texts.of("measured.heading")));
        }
        tell(problem);
        if (problem.isEmpty()) {
            dropPart();
        }
    }

    /** Lets go of the recording that waits; the next one follows. */
    public void dropPart() {
        wait(null);
        next();
    }

    private void next() {
        if (pending.get() == null && !queue.isEmpty()) {
            wait(queue.remove());
        }
    }

    private void wait(Pending what) {
        pending.set(what);
        if (what == null) {
            recording.close();
        } else {
            recording.open(what.file());
        }
    }

    private Optional<String> take(int at, Reading reading) {
        if (at >= edit.project().paths().size()) {
            return Optional.empty();
        }
        return change(at, "edit.measured.add", readings -> readings.and(reading));
    }

    private void tell(Optional<String> problem) {
        problem.ifPresent(text -> message.set(new Message(true, text)));
    }

    private Optional<String> change(int at, String what, UnaryOperator<PathReadings> change) {
        return edit.change(READINGS, Texts.of("measured.heading"), Texts.of(what), p -> {
            VentPath old = p.paths().get(at);
            return p.withPath(at, old.measured(change.apply(old.readingsOrNone())));
        });
    }

    /** Takes a reading away, by its number among all of the path. */
    public Optional<String> remove(int number) {
        return change(edit.path(), "edit.measured.remove", readings -> {
            List<Reading> others = new ArrayList<>(readings.levels());
            others.remove(number);
            return readings.withLevels(others);
        });
    }

    /** Takes the level of a sine at full scale as it was typed, dB; a blank for not known. */
    public Optional<String> enterOffset(String text) {
        if (text.isBlank()) {
            offset.set(null);
            return Optional.empty();
        }
        return typed("measured.offset", text, -100, 300, this::calibrate);
    }

    /** Takes the level of the calibrator as it was typed, dB. */
    public Optional<String> enterCalibrator(String text) {
        return typed("measured.calibrator", text, 50, 140, value -> {
            calibrator.set(value);
            return Optional.empty();
        });
    }

    private static Optional<String> typed(
            String key, String text, double least, double most, DoubleFunction<Optional<String>> take) {
        try {
            double value = UnitParser.parse("level", text, Unit.DECIBEL);
            InvalidValue.within("level", value, least, most, Unit.DECIBEL);
            return take.apply(value);
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, Texts.of(key)));
        }
    }

    /** Works the level out from the recording of a calibrator's tone. */
    public void calibrateBy(Path tone) {
        double level = calibrator.get();
        runner.run(
                progress -> {
                    MeasuredFile read = MeasuredFile.read(tone, Recording.Span.ALL, progress);
                    if (read.recording() == null) {
                        throw new InvalidValue(tone.toString(), "a text", "a recording of a calibrator's tone", "");
                    }
                    return Calibration.offset(read.recording(), tone.toString(), level);
                },
                found -> tell(calibrate(found)),
                e -> tell(Optional.of(ResultModel.explain(e, edit.project()))));
    }

    /** Recordings that were taken without a level have one from now on. */
    private Optional<String> calibrate(double level) {
        offset.set(level);
        boolean some = readings().levels().stream().anyMatch(r -> r.scale() == Scale.FULL_SCALE);
        return some
                ? change(
                        edit.path(),
                        "edit.measured.calibrate",
                        readings -> readings.withLevels(readings.levels().stream()
                                .map(r -> r.scale() == Scale.FULL_SCALE ? calibrated(r, level) : r)
                                .toList()))
                : Optional.empty();
    }

    private static Reading calibrated(Reading reading, double level) {
        String since = " " + Texts.of("measured.calibratedSince", EntryText.brief(level));
        String source = reading.source() + since;
        return new Reading(
                reading.name(),
                reading.round(),
                Scale.CALIBRATED,
                reading.levels().plus(level),
                source.length() > EditModel.LONGEST_SOURCE ? reading.source() : source);
    }
}
