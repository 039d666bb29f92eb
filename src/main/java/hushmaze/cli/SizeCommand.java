package hushmaze.cli;

import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.Sized;
import hushmaze.size.Sizing;
import hushmaze.store.ProjectFile;
import hushmaze.store.SizeJson;
import hushmaze.wording.SizeWording;
import hushmaze.work.Progress;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks for the best boxes for every path of a project. */
@Command(
        name = "size",
        mixinStandardHelpOptions = true,
        description =
                "Looks for the best boxes for every path: a few that differ in kind, each confirmed by the wave solution"
                        + " and a layout of its sheets. Boxes the project has already are not looked at.")
final class SizeCommand implements Callable<Integer> {
    private static final int MOST = 6;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "PROJECT.json", description = "The project file.")
    private Path file;

    @Option(names = "--json", description = "Results for programs, as JSON.")
    private boolean json;

    @Option(
            names = "--keep",
            paramLabel = "N",
            defaultValue = "" + MOST,
            description = "Most boxes per path, 1 to 6 (default ${DEFAULT-VALUE}); the first is the recommended one.")
    private int keep;

    @Option(
            names = "--save",
            paramLabel = "OUT.json",
            description = "Write the project with the recommended boxes to a new file.")
    private Path save;

    @Override
    public Integer call() {
        if (keep < 1 || keep > MOST) {
            throw wrong("--keep: " + keep + " is not accepted; it must be 1 to " + MOST);
        }
        if (save != null && Files.exists(save)) {
            throw wrong("--save: " + save + " is there already; give the name of a new file");
        }
        Sized sized = sized(ProjectFile.read(file));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(SizeJson.of(sized));
        } else {
            new SizeWording(sized.project()).lines(sized).forEach(out::println);
        }
        if (save != null) {
            ProjectFile.write(sized.project(), save);
            spec.commandLine().getErr().println("wrote " + save);
        }
        boolean all = sized.paths().stream().noneMatch(path -> path.designs().isEmpty());
        return all ? ExitCode.DONE : ExitCode.DESIGN_FAILS;
    }

    private Sized sized(Project project) {
        PrintWriter talk = spec.commandLine().getErr();
        String[] last = {""};
        Progress progress = (fraction, doing) -> {
            if (!doing.equals(last[0])) {
                last[0] = doing;
                talk.printf("%3.0f %% %s%n", 100 * fraction, doing);
            }
        };
        try {
            return Sizing.of(project, keep, progress, Sizing.Watch.NOBODY);
        } catch (InvalidValue e) {
            throw e.in(file);
        }
    }

    private CommandLine.ParameterException wrong(String message) {
        return new CommandLine.ParameterException(spec.commandLine(), message);
    }
}
