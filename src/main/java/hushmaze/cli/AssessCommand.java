package hushmaze.cli;

import hushmaze.assess.Assessment;
import hushmaze.store.AssessmentJson;
import hushmaze.wording.Report;
import hushmaze.wording.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges a project: quiet enough, enough air, does it fit, can it be built. */
@Command(
        name = "assess",
        mixinStandardHelpOptions = true,
        description =
                "Judges a project: verdicts, bands, pressures, mass and notices. Boxes left open are laid out first.")
final class AssessCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "PROJECT.json", description = "The project file.")
    private Path file;

    @Option(names = "--json", description = "Results for programs, as JSON.")
    private boolean json;

    @Option(
            names = "--changes",
            description = "With --json: also what small errors and changes of each box would do, by the quick wave.")
    private boolean changes;

    @Option(names = "--strict", description = "End with exit code 1 if a verdict is not good.")
    private boolean strict;

    @Option(names = "--quick", description = "Leave out the wave solution, which takes seconds per path.")
    private boolean quick;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Assessment assessment =
                LoadedProject.of(file, quick, spec.commandLine().getErr()).assessment();
        Wording wording = new Wording(assessment.project().units());
        if (json) {
            out.println(AssessmentJson.of(assessment, wording, changes));
        } else {
            new Report(wording).full(assessment).forEach(out::println);
        }
        return strict && !assessment.ok() ? ExitCode.DESIGN_FAILS : ExitCode.DONE;
    }
}
