package hushmaze.cli;

import hushmaze.measure.Calibration;
import hushmaze.measure.Recording;
import hushmaze.measure.Weighting;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.MeasuredFile;
import hushmaze.wording.CompareWording;
import hushmaze.wording.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

/** Reads the files of a comparison, all in one way, and keeps count of what they are. */
final class MeasuredFiles {
    private final Recording.Span span;
    private final Double offset;
    private final PrintWriter talk;
    private final ToldProgress progress;
    private final CompareWording words = new CompareWording(new Wording(UnitSystem.METRIC));

    MeasuredFiles(RecordingOptions options, PrintWriter talk) {
        this.span = options.span();
        this.talk = talk;
        this.progress = new ToldProgress(talk);
        this.offset = offset(options);
    }

    private Double offset(RecordingOptions options) {
        if (options.calibrator() == null) {
            return options.offset() == null
                    ? null
                    : InvalidValue.within("--offset", options.offset(), -100, 300, Unit.DECIBEL);
        }
        if (options.offset() != null) {
            throw new InvalidValue("--offset", "an offset and a calibrator", "one of them", "");
        }
        MeasuredFile tone = read(options.calibrator(), new Recording.Span(options.channel(), 0, null));
        if (tone.recording() == null) {
            throw new InvalidValue("--calibrator", options.calibrator() + ", a text", "a WAV recording", "");
        }
        return Calibration.offset(tone.recording(), options.calibrator().toString(), options.calibratorLevel());
    }

    /** Adds a reading of one round for each file. */
    PathReadings add(PathReadings readings, Reading.Round round, List<Path> files) {
        PathReadings all = readings;
        if (files != null) {
            for (Path file : files) {
                MeasuredFile read = read(file, span);
                tell(file, read.recording());
                all = all.and(read.reading(round, offset, read.recording() == null ? words.textSource() : source()));
            }
        }
        return all;
    }

    private MeasuredFile read(Path file, Recording.Span part) {
        return MeasuredFile.read(file, part, progress.of(file));
    }

    private String source() {
        return words.recordingSource(span.channel(), span.from(), span.to(), offset);
    }

    private void tell(Path file, Recording recording) {
        if (recording == null) {
            return;
        }
        double more = offset == null ? 0 : offset;
        Recording.Levels a = recording.weighted().get(Weighting.A);
        talk.println(
                words.recording(file.toString(), recording.seconds(), a.leq() + more, a.l10() + more, a.l90() + more));
        if (recording.overloads() > 0) {
            talk.println(words.overloaded(file.toString(), recording.overloads()));
        }
    }
}
