package hushmaze.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/**
 * How long the designer takes from the start of its process to the first frame of its window, to the first frame with a
 * drawing of the project, and to the first with all entries and notices too, ms; median of some starts, each of them listed. Processor time, which other work on the
 * machine changes less, stands beside it. Needs a display. Arguments: how many starts,
 * then the command, {@code target/image/Hushmaze/bin/Hushmaze}, with a project file after it as for somebody who has one (without it
 * the questions for a first box come up); without a command {@code java} with the libraries beside the
 * jar is started. The home folder is an empty one, so that no work left unsaved is offered.
 */
public final class StartBench {
    private static final List<String> PLAIN =
            List.of("java", "-cp", "target/hushmaze.jar:target/lib/*", "hushmaze.app.Launcher");

    private StartBench() {}

    public static void main(String[] args) throws Exception {
        int starts = args.length > 0 ? Integer.parseInt(args[0]) : 3;
        List<String> command = args.length > 1 ? Arrays.asList(args).subList(1, args.length) : PLAIN;
        Map<String, double[]> times = new TreeMap<>();
        for (int i = 0; i < starts; i++) {
            for (Map.Entry<String, Double> one : start(command).entrySet()) {
                times.computeIfAbsent(one.getKey(), k -> new double[starts])[i] = one.getValue();
            }
        }
        times.forEach((what, each) -> System.out.printf(
                Locale.ROOT, "%s: median %.0f ms of %s%n", what, median(each), Arrays.toString(each)));
    }

    private static Map<String, Double> start(List<String> command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        String had = System.getenv().getOrDefault("JAVA_TOOL_OPTIONS", "");
        Path home = Path.of("target", "bench-home").toAbsolutePath();
        builder.environment().put("JAVA_TOOL_OPTIONS", had + " -D" + FirstFrame.ASKED + "=yes -Duser.home=" + home);
        Map<String, Double> times = new TreeMap<>();
        long begin = System.nanoTime();
        Process process = builder.start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                if (line.startsWith("hushmaze: ")) {
                    times.put(line, (double) TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begin));
                }
                if (line.equals(FirstFrame.WHOLE)) {
                    process.info()
                            .totalCpuDuration()
                            .ifPresent(used -> times.put("processor time until then", (double) used.toMillis()));
                    break;
                }
            }
        } finally {
            process.destroy();
            process.waitFor();
        }
        if (!times.containsKey(FirstFrame.WHOLE)) {
            throw new IllegalStateException("the window showed no drawing: " + command);
        }
        return times;
    }

    private static double median(double[] each) {
        double[] sorted = each.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
