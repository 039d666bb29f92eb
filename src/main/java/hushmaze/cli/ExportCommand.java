package hushmaze.cli;

import hushmaze.document.DocumentSet;
import hushmaze.drawing.Paper;
import hushmaze.project.Project;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.ProjectFile;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the whole document set of a project. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description =
                "Writes the document set: PDF drawings, cut list, cuts and bands as CSV, parts and sheets as SVG, the box as a"
                        + " 3-D model (glTF), and the project itself.")
final class ExportCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "PROJECT.json", description = "The project file.")
    private Path file;

    @Option(names = "--to", required = true, paramLabel = "DIR", description = "Folder to write to; made if missing.")
    private Path folder;

    @Option(
            names = "--paper",
            description = "One of ${COMPLETION-CANDIDATES} (default: A4, or Letter with units of inches).")
    private Paper paper;

    @Option(names = "--units", paramLabel = "mm|in", description = "Units of the documents (default: the project's).")
    private String units;

    @Option(
            names = "--overwrite",
            description = "Replace other files of the same names; without it nothing is written if there are any.")
    private boolean overwrite;

    @Option(names = "--quick", description = "Leave out the wave solution, which takes seconds per path.")
    private boolean quick;

    @Override
    public Integer call() {
        LoadedProject loaded = LoadedProject.of(file, quick, spec.commandLine().getErr());
        UnitSystem system = units(loaded.project());
        String text = ProjectFile.text(loaded.project());
        for (Path written : DocumentSet.write(
                loaded.assessment(), text, folder, paper == null ? Paper.usual(system) : paper, system, overwrite)) {
            spec.commandLine().getErr().println("wrote " + written);
        }
        return ExitCode.DONE;
    }

    private UnitSystem units(Project project) {
        if (units == null) {
            return project.units();
        }
        return switch (units) {
            case "mm" -> UnitSystem.METRIC;
            case "in" -> UnitSystem.INCH;
            default ->
                throw new CommandLine.ParameterException(
                        spec.commandLine(), "--units: \"" + units + "\" is not accepted; it must be mm or in");
        };
    }
}
