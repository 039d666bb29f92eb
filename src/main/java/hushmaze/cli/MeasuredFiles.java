package hushmaze.cli;

import hushmaze.assess.Comparison;
import hushmaze.measure.Calibration;
import hushmaze.measure.Recording;
import hushmaze.measure.Weighting;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.MeasuredFile;
import hushmaze.wording.CompareWording;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads the files of a comparison, all in one way, and keeps count of what they are. */
final class MeasuredFiles {
    private final Recording.Span span;
    private final Double offset;
    private final PrintWriter talk;
    private final CompareWording words = new CompareWording(new Wording(UnitSystem.METRIC));
    private int texts;
    private int recordings;

    MeasuredFiles(RecordingOptions options, PrintWriter talk) {
        this.span = options.span();
        this.talk = talk;
        this.offset = offset(options);
    }

    private static Double offset(RecordingOptions options) {
        if (options.calibrator() == null) {
            return options.offset() == null
                    ? null
                    : InvalidValue.within("--offset", options.offset(), -100, 300, Unit.DECIBEL);
        }
        if (options.offset() != null) {
            throw new InvalidValue("--offset", "an offset and a calibrator", "one of them", "");
        }
        MeasuredFile tone =
                MeasuredFile.read(options.calibrator(), new Recording.Span(options.channel(), 0, null), Progress.NONE);
        if (tone.recording() == null) {
            throw new InvalidValue("--calibrator", options.calibrator() + ", a text", "a WAV recording", "");
        }
        return Calibration.offset(tone.recording(), options.calibrator().toString(), options.calibratorLevel());
    }

    /** Levels of some files; none if there are no files. */
    List<BandLevels> levels(List<Path> files) {
        List<BandLevels> levels = new ArrayList<>();
        if (files != null) {
            for (Path file : files) {
                levels.add(levels(file));
            }
        }
        return levels;
    }

    /**
     * What the levels are.
     *
     * @throws InvalidValue if some are texts and some recordings without calibration, which have nothing in common
     */
    Comparison.Levels kind() {
        if (recordings > 0 && offset == null) {
            if (texts > 0) {
                throw new InvalidValue(
                        "--before, --after", "texts and recordings without calibration", "alike, or with --offset", "");
            }
            return Comparison.Levels.FULL_SCALE;
        }
        return texts > 0 ? Comparison.Levels.AS_GIVEN : Comparison.Levels.CALIBRATED;
    }

    private BandLevels levels(Path file) {
        MeasuredFile read = MeasuredFile.read(file, span, Progress.NONE);
        Recording recording = read.recording();
        if (recording == null) {
            texts++;
            return read.bands();
        }
        recordings++;
        double more = offset == null ? 0 : offset;
        Recording.Levels a = recording.weighted().get(Weighting.A);
        talk.println(
                words.recording(file.toString(), recording.seconds(), a.leq() + more, a.l10() + more, a.l90() + more));
        if (recording.overloads() > 0) {
            talk.println(words.overloaded(file.toString(), recording.overloads()));
        }
        return read.bands().plus(more);
    }
}
