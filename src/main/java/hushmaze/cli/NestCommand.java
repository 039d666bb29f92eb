package hushmaze.cli;

import hushmaze.build.Effort;
import hushmaze.build.GuillotineNester;
import hushmaze.build.NestJob;
import hushmaze.build.NestPart;
import hushmaze.build.SheetLayout;
import hushmaze.material.Sheet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.store.NestJson;
import hushmaze.store.PartsCsv;
import hushmaze.work.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays a list of pieces out on sheets. Exit 0 done, 1 some pieces could not be placed, 2 bad input. */
@Command(
        name = "nest",
        mixinStandardHelpOptions = true,
        description = "Lays pieces out on sheets with cuts from edge to edge.")
public final class NestCommand implements Callable<Integer> {
    private static final double MIN_SECONDS = 0.01;
    private static final double MAX_SECONDS = 3600;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PARTS.csv", description = "pieces: mark,quantity,lengthMm,widthMm[,grain]")
    private Path parts;

    @Option(
            names = "--sheet",
            required = true,
            paramLabel = "LxW[@PRICE[:STOCK]]",
            description = "sheet size in millimetres; several may be given")
    private List<String> sheets;

    @Option(names = "--kerf", defaultValue = "3.2", description = "width of a cut, mm (default: ${DEFAULT-VALUE})")
    private double kerf;

    @Option(
            names = "--trim",
            defaultValue = "5",
            description = "strip taken off every edge of a sheet, mm (default: ${DEFAULT-VALUE})")
    private double trim;

    @Option(names = "--no-rotate", description = "keep the length of every piece along the sheet's length")
    private boolean noRotate;

    @Option(names = "--seconds", defaultValue = "1", description = "time to search (default: ${DEFAULT-VALUE})")
    private double seconds;

    @Option(names = "--json", description = "print the layout as JSON")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        try {
            Effort effort = effort();
            NestJob job = job();
            SheetLayout layout = GuillotineNester.nest(job, effort, Progress.NONE);
            out.println(json ? NestJson.write(layout) : NestText.of(layout).stripTrailing());
            out.flush();
            err.println(NestText.verdict(layout));
            unplaced(job, layout).forEach(err::println);
            return layout.unplaced().isEmpty() ? ExitCode.DONE : ExitCode.DESIGN_FAILS;
        } catch (InvalidValue e) {
            err.println(e.getMessage());
            return ExitCode.BAD_INPUT;
        } finally {
            err.flush();
        }
    }

    private Effort effort() {
        if (!(seconds >= MIN_SECONDS && seconds <= MAX_SECONDS)) {
            throw new InvalidValue(
                    "--seconds", Double.toString(seconds), "from " + MIN_SECONDS + " to " + MAX_SECONDS, "s");
        }
        return Effort.seconds(seconds, System::nanoTime);
    }

    private NestJob job() {
        List<Sheet> sizes = sheets.stream().map(SheetOption::parse).toList();
        List<NestPart> pieces = PartsCsv.read(parts, noRotate);
        try {
            return new NestJob("board", 0, pieces, sizes, Unit.MILLIMETRE.toSi(kerf), Unit.MILLIMETRE.toSi(trim));
        } catch (InvalidValue e) {
            throw new InvalidValue("--" + e.field(), e.given(), e.limit(), e.unit());
        }
    }

    /** One line for every mark that is not placed. */
    private static List<String> unplaced(NestJob job, SheetLayout layout) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        layout.unplaced().forEach(mark -> counts.merge(mark, 1, Integer::sum));
        return job.parts().stream()
                .filter(part -> counts.containsKey(part.mark()))
                .map(part -> String.format(
                        Locale.ROOT,
                        "not placed: %d of %d pieces %s (%s x %s mm): %s",
                        counts.get(part.mark()),
                        part.quantity(),
                        part.mark(),
                        Unit.MILLIMETRE.fromSi(part.length()),
                        Unit.MILLIMETRE.fromSi(part.width()),
                        job.fits(part) ? "not enough sheets in stock" : "larger than every sheet inside its trim"))
                .toList();
    }
}
