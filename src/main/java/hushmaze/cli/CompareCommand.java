package hushmaze.cli;

import hushmaze.air.AirState;
import hushmaze.assess.AirComparison;
import hushmaze.assess.Assessment;
import hushmaze.assess.BoxFitting;
import hushmaze.assess.Comparison;
import hushmaze.assess.PathResult;
import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import hushmaze.project.Reading.Round;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.store.ComparisonJson;
import hushmaze.store.ProjectFile;
import hushmaze.wording.CompareWording;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
                        + " third octaves or narrow bands) or WAV recordings. Several files of one kind are positions, averaged by energy."
                        + " Without files the readings kept with the project are taken. Measured air is held against the prediction too.")
final class CompareCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "PROJECT.json", description = "The project file.")
    private Path file;

    @Option(names = "--before", paramLabel = "FILE", description = "Levels without the box.")
    private List<Path> before;

    @Option(names = "--after", paramLabel = "FILE", description = "Levels with the box, fan off.")
    private List<Path> after;

    @Option(names = "--floor", paramLabel = "FILE", description = "Background: levels with the source off.")
    private List<Path> floor;

    @Option(names = "--after-fan", paramLabel = "FILE", description = "Levels with the box, fan on.")
    private List<Path> afterFan;

    @Option(names = "--path", paramLabel = "NAME", description = "The path measured; else the first one.")
    private String name;

    @CommandLine.Mixin
    private RecordingOptions recordings;

    @CommandLine.Mixin
    private AirOptions air;

    @Option(
            names = "--save",
            paramLabel = "OUT.json",
            description = "Write the project with these readings to a new file; boxes and all else as they are.")
    private Path save;

    @Option(names = "--json", description = "Results for programs, as JSON.")
    private boolean json;

    @Option(names = "--quick", description = "Leave out the wave solution, which takes seconds per path.")
    private boolean quick;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        if (save != null && Files.exists(save)) {
            throw new InvalidValue("--save", save + ", a file that is there already", "the name of a new file", "");
        }
        // readings first: a wrong file is told at once, not after the wave solution
        Project project = ProjectFile.read(file);
        int at = path(project, err);
        PathReadings readings = readings(project.paths().get(at).readingsOrNone(), err);
        Project measured = project.withPath(at, project.paths().get(at).measured(readings))
                .measured(air.over(project.readingsOrNone()));
        if (!readings.comparable() && (!readings.levels().isEmpty() || nothing(measured, at))) {
            throw new InvalidValue(
                    "--before, --after",
                    readings.levels().isEmpty() ? "nothing, and no readings in the project" : "one of them",
                    "readings without the box and with it",
                    "");
        }
        ToldProgress progress = new ToldProgress(err);
        LoadedProject loaded = LoadedProject.of(file, measured, quick, err, progress);
        show(loaded, at, out, progress);
        if (save != null) {
            ProjectFile.write(measured, save);
            err.println("wrote " + save);
        }
        return ExitCode.DONE;
    }

    private static boolean nothing(Project project, int path) {
        return project.paths().get(path).readings() == null && project.readings() == null;
    }

    /** Those of the files, or those kept where no file is named. */
    private PathReadings readings(PathReadings kept, PrintWriter err) {
        PathReadings readings = kept;
        if (Stream.of(before, after, floor, afterFan).anyMatch(Objects::nonNull)) {
            MeasuredFiles files = new MeasuredFiles(recordings, err);
            readings = files.add(kept.withLevels(List.of()), Round.WITHOUT_BOX, before);
            readings = files.add(readings, Round.WITH_BOX, after);
            readings = files.add(readings, Round.SOURCE_OFF, floor);
            readings = files.add(readings, Round.WITH_AIR, afterFan);
        }
        return air.over(readings);
    }

    private void show(LoadedProject loaded, int at, PrintWriter out, Progress progress) {
        Assessment assessment = loaded.assessment();
        PathResult result = assessment.paths().get(at);
        Project project = loaded.project();
        PathReadings readings = project.paths().get(at).readingsOrNone();
        CompareWording words = new CompareWording(new Wording(project.units()));
        AirComparison airs = AirComparison.of(assessment, result, readings, project.readingsOrNone());
        if (!readings.comparable()) {
            out.println(json ? ComparisonJson.of(airs, words) : String.join("\n", words.airLines(airs)));
            return;
        }
        Comparison comparison =
                Comparison.of(result, readings, AirState.of(project.room()).soundSpeed());
        Optional<BoxFitting> fitting = BoxFitting.of(project, result, comparison, progress);
        if (json) {
            out.println(ComparisonJson.of(comparison, airs, fitting, words));
        } else {
            words.lines(comparison).forEach(out::println);
            fitting.ifPresent(f -> words.fittingLines(f).forEach(out::println));
            words.airLines(airs).forEach(out::println);
        }
    }

    private int path(Project project, PrintWriter err) {
        List<VentPath> paths = project.paths();
        String names = paths.stream().map(p -> "\"" + p.name() + "\"").collect(Collectors.joining(", "));
        if (name == null) {
            if (paths.size() > 1) {
                err.println("compared with the first path, \"" + paths.get(0).name()
                        + "\"; --path NAME takes another of " + names);
            }
            return 0;
        }
        return IntStream.range(0, paths.size())
                .filter(i -> paths.get(i).name().equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidValue("--path", "\"" + name + "\"", "one of " + names, ""));
    }
}
