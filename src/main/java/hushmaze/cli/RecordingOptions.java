package hushmaze.cli;

import hushmaze.measure.Recording;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** How recordings are read. */
final class RecordingOptions {
    @Option(
            names = "--channel",
            paramLabel = "N",
            defaultValue = "1",
            description = "Channel of the recordings, from 1 (default ${DEFAULT-VALUE}).")
    private int channel;

    @Option(
            names = "--from",
            paramLabel = "SECONDS",
            defaultValue = "0",
            description = "Where the span begins that is measured.")
    private double from;

    @Option(names = "--to", paramLabel = "SECONDS", description = "Where the span ends (default: with the recording).")
    private Double to;

    @Option(
            names = "--offset",
            paramLabel = "DB",
            description = "Level of a sine at full scale, dB; without it or a calibrator only differences are claimed.")
    private Double offset;

    @Option(names = "--calibrator", paramLabel = "FILE", description = "Recording of a calibrator's tone, same gain.")
    private Path calibrator;

    @Option(
            names = "--calibrator-level",
            paramLabel = "DB",
            defaultValue = "94",
            description = "Level of the calibrator, dB (default ${DEFAULT-VALUE}).")
    private double calibratorLevel;

    Recording.Span span() {
        return new Recording.Span(channel, from, to);
    }

    int channel() {
        return channel;
    }

    /** Stated level of a sine at full scale, dB; null if none is. */
    Double offset() {
        return offset;
    }

    /** Recording of a calibrator; null if there is none. */
    Path calibrator() {
        return calibrator;
    }

    double calibratorLevel() {
        return calibratorLevel;
    }
}
