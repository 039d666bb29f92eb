package hushmaze.cli;

import hushmaze.document.ExportFailure;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.NoBox;
import hushmaze.store.UnreadableFile;
import hushmaze.wording.Wording;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program without a window. */
@Command(
        name = "hushmaze",
        mixinStandardHelpOptions = true,
        version = "hushmaze 0.1.0",
        description = "Designs a quiet air path for a sound-sealed room: a lined maze box over an opening.",
        subcommands = {
            AssessCommand.class,
            ExportCommand.class,
            NestCommand.class,
            SampleCommand.class,
            SizeCommand.class,
            WaveCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:done", "1:the design fails its brief (assess --strict)", "2:bad input"})
public final class Main implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    /** Runs one command and ends the virtual machine with its exit code. */
    public static void main(String[] args) {
        System.exit(run(
                new PrintWriter(System.out, true, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                args));
    }

    /** Runs one command and gives its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((e, failed, parsed) -> explain(e, failed));
        int code = line.execute(args);
        out.flush();
        err.flush();
        return code;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getErr());
        throw new CommandLine.ParameterException(spec.commandLine(), "a command is missing");
    }

    private static int explain(Exception e, CommandLine failed) throws Exception {
        PrintWriter err = failed.getErr();
        if (e instanceof UnreadableFile || e instanceof InvalidValue || e instanceof ExportFailure) {
            err.println(e.getMessage());
            return ExitCode.BAD_INPUT;
        }
        if (e instanceof NoBox none) {
            explain(none, err);
            return ExitCode.DESIGN_FAILS;
        }
        throw e;
    }

    private static void explain(NoBox none, PrintWriter err) {
        Wording wording = new Wording(none.units());
        err.println(wording.text("relax.intro", none.path()));
        none.proposal().relaxations().forEach(r -> err.println("  " + wording.relaxation(r)));
        if (none.proposal().relaxations().isEmpty()) {
            err.println("  " + wording.text("relax.none"));
        }
    }
}
