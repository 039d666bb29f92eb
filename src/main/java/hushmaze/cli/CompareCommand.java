package hushmaze.cli;

import hushmaze.air.AirState;
import hushmaze.assess.Comparison;
import hushmaze.assess.PathResult;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading.Round;
import hushmaze.quantity.InvalidValue;
import hushmaze.store.ComparisonJson;
import hushmaze.wording.CompareWording;
import hushmaze.wording.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds readings without and with a box against what was predicted for it. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description =
                "Measured against predicted: levels in bands without the box less levels with it, against the predicted"
                        + " range, with what the difference points to. Files are texts of frequency and level (octaves,"
                        + " third octaves or narrow bands) or WAV recordings. Several files of one kind are positions, averaged by energy.")
final class CompareCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "PROJECT.json", description = "The project file.")
    private Path file;

    @Option(names = "--before", required = true, paramLabel = "FILE", description = "Levels without the box.")
    private List<Path> before;

    @Option(names = "--after", required = true, paramLabel = "FILE", description = "Levels with the box, fan off.")
    private List<Path> after;

    @Option(names = "--floor", paramLabel = "FILE", description = "Background: levels with the source off.")
    private List<Path> floor;

    @Option(names = "--after-fan", paramLabel = "FILE", description = "Levels with the box, fan on.")
    private List<Path> afterFan;

    @Option(names = "--path", paramLabel = "NAME", description = "The path measured; else the first one.")
    private String name;

    @CommandLine.Mixin
    private RecordingOptions recordings;

    @Option(names = "--json", description = "Results for programs, as JSON.")
    private boolean json;

    @Option(names = "--quick", description = "Leave out the wave solution, which takes seconds per path.")
    private boolean quick;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        // readings first: a wrong file is told at once, not after the wave solution
        MeasuredFiles files = new MeasuredFiles(recordings, err);
        PathReadings readings = files.add(PathReadings.NONE, Round.WITHOUT_BOX, before);
        readings = files.add(readings, Round.WITH_BOX, after);
        readings = files.add(readings, Round.SOURCE_OFF, floor);
        readings = files.add(readings, Round.WITH_AIR, afterFan);
        LoadedProject loaded = LoadedProject.of(file, quick, err);
        PathResult path = path(loaded.assessment().paths(), err);
        double soundSpeed = AirState.of(loaded.project().room()).soundSpeed();
        Comparison comparison = Comparison.of(path, readings, soundSpeed);
        CompareWording words = new CompareWording(new Wording(loaded.project().units()));
        if (json) {
            out.println(ComparisonJson.of(comparison, words));
        } else {
            words.lines(comparison).forEach(out::println);
        }
        return ExitCode.DONE;
    }

    private PathResult path(List<PathResult> paths, PrintWriter err) {
        String names = paths.stream().map(p -> "\"" + p.path().name() + "\"").collect(Collectors.joining(", "));
        if (name == null) {
            PathResult first = paths.get(0);
            if (paths.size() > 1) {
                err.println("compared with the first path, \"" + first.path().name()
                        + "\"; --path NAME takes another of " + names);
            }
            return first;
        }
        return paths.stream()
                .filter(p -> p.path().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidValue("--path", "\"" + name + "\"", "one of " + names, ""));
    }
}
