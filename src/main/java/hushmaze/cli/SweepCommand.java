package hushmaze.cli;

import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.SweepRange;
import hushmaze.size.SweepRow;
import hushmaze.store.NumberField;
import hushmaze.store.ProjectFile;
import hushmaze.wording.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges a project at many values of one of its numbers. */
@Command(
        name = "sweep",
        mixinStandardHelpOptions = true,
        description =
                "Judges a project at equally spaced values of one of its numbers, one row of a CSV file each. A run that was"
                        + " stopped goes on where it was. Boxes left open are laid out for every value.")
final class SweepCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "PROJECT.json", description = "The project file.")
    private Path file;

    @Option(
            names = "--field",
            required = true,
            paramLabel = "NAME",
            description =
                    "A number of the file: room.volumeM3, paths[0].brief.flowLps, paths[Supply].box.clearWidthMm, or as"
                            + " much of the end of its name as no other number has.")
    private String name;

    @Option(
            names = "--from",
            required = true,
            paramLabel = "X",
            description = "First value, in the file's unit or with one: 90, \"90 mm\", \"3 1/2 in\".")
    private String from;

    @Option(names = "--to", required = true, paramLabel = "Y", description = "Last value.")
    private String to;

    @Option(names = "--steps", required = true, paramLabel = "N", description = "How many values, both ends counted.")
    private int steps;

    @Option(
            names = "--part",
            defaultValue = "1",
            paramLabel = "I",
            description = "Only part I of the parts: the rows whose step less I - 1 is a multiple of their number"
                    + " (default: ${DEFAULT-VALUE}).")
    private int part;

    @Option(
            names = "--parts",
            defaultValue = "1",
            paramLabel = "N",
            description = "How many parts, each for a run of its own (default: ${DEFAULT-VALUE}).")
    private int parts;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "CSV",
            description = "File of rows; with a side file .sweep.")
    private Path out;

    @Option(names = "--overwrite", description = "Replace a file that is there.")
    private boolean overwrite;

    @Option(names = "--quick", description = "Leave out the wave solution, which takes seconds per path and row.")
    private boolean quick;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Project project = ProjectFile.read(file);
        Wording wording = new Wording(project.units());
        NumberField field = NumberField.find(project, "--field", name);
        SweepRun run = new SweepRun(project, field, range(field), LoadedProject.methods(quick), part, parts);
        SweepRun.Outcome outcome = run.into(out, overwrite, row -> err.println(told(wording, field, row)));
        err.println(wording.text(
                "sweep.done",
                String.valueOf(outcome.computed()),
                String.valueOf(outcome.kept()),
                String.valueOf(outcome.refused()),
                out.toString()));
        return ExitCode.DONE;
    }

    private SweepRange range(NumberField field) {
        double first = field.parse("--from", from);
        double last = field.parse("--to", to);
        try {
            SweepRange range = new SweepRange(first, last, steps);
            if (field.whole()) {
                range.requireWhole();
            }
            range.part(part, parts);
            return range;
        } catch (InvalidValue e) {
            throw new InvalidValue("--" + e.field(), e.given(), e.limit(), e.unit());
        }
    }

    private String told(Wording wording, NumberField field, SweepRow row) {
        String key = row.refusal() == null ? "sweep.row" : "sweep.refused";
        String value = field.whole() ? String.valueOf((long) row.value()) : String.valueOf(row.value());
        return wording.text(key, String.valueOf(row.step()), String.valueOf(steps - 1), field.name(), value);
    }
}
