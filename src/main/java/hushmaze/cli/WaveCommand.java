package hushmaze.cli;

import hushmaze.quantity.InvalidValue;
import hushmaze.sound.section.SectionSolver;
import hushmaze.sound.section.SectionTask;
import hushmaze.sound.wave.WaveAnswer;
import hushmaze.store.SectionJson;
import hushmaze.work.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Computes the transmission loss of a raw section. */
@Command(
        name = "wave",
        mixinStandardHelpOptions = true,
        description =
                "Wave solution of a section of air and liner between rigid walls: transmission loss for a plane wave"
                        + " that comes in, all of what leaves counted.")
final class WaveCommand implements Callable<Integer> {
    /** A residual above this is told: the loss may be off in its printed digits. */
    private static final double DOUBTFUL = 1e-6;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(paramLabel = "SECTION.json", description = "Regions, ports and frequencies.")
    private Path file;

    @Option(names = "--csv", description = "Results as comma-separated values: frequencyHz,tlDb,residual.")
    private boolean csv;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        List<WaveAnswer> answers = solve(SectionJson.read(file));
        out.println(csv ? "frequencyHz,tlDb,residual" : "         Hz      TL dB   residual");
        answers.forEach(answer -> out.println(csv ? values(answer) : row(answer)));
        answers.stream()
                .filter(answer -> !(answer.residual() <= DOUBTFUL))
                .forEach(answer -> err.println("doubtful at " + answer.frequency()
                        + " Hz: the equations are met only to " + answer.residual()));
        return ExitCode.DONE;
    }

    private List<WaveAnswer> solve(SectionTask task) {
        try {
            return SectionSolver.solve(task, Progress.NONE);
        } catch (InvalidValue e) {
            throw e.in(file);
        }
    }

    private static String values(WaveAnswer answer) {
        return answer.frequency() + "," + answer.transmissionLoss() + "," + answer.residual();
    }

    private static String row(WaveAnswer answer) {
        return String.format(
                Locale.ROOT, "%11.2f %10.2f %10.1e", answer.frequency(), answer.transmissionLoss(), answer.residual());
    }
}
