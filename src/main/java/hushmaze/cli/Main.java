package hushmaze.cli;

import hushmaze.document.ExportFailure;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.NoBox;
import hushmaze.store.UnreadableFile;
import hushmaze.store.UnwritableFile;
import hushmaze.wording.NoBoxWording;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program without a window. */
@Command(
        name = "hushmaze",
        mixinStandardHelpOptions = true,
        version = Main.VERSION,
        description = "Designs a quiet air path for a sound-sealed room: a lined maze box over an opening.",
        subcommands = {
            AssessCommand.class,
            CompareCommand.class,
            ExportCommand.class,
            NestCommand.class,
            SampleCommand.class,
            SizeCommand.class,
            SweepCommand.class,
            WaveCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:done", "1:the design fails its brief (assess --strict)", "2:bad input"})
public final class Main implements Runnable {
    /** Name and version of the program. */
    static final String VERSION = "hushmaze 0.1.0";

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
        if (e instanceof UnreadableFile
                || e instanceof UnwritableFile
                || e instanceof InvalidValue
                || e instanceof ExportFailure) {
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
        List<String> lines = NoBoxWording.lines(none);
        err.println(lines.get(0));
        lines.subList(1, lines.size()).forEach(line -> err.println("  " + line));
    }
}
