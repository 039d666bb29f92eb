package hushmaze.build;

import hushmaze.material.Sheet;
import hushmaze.work.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Benchmark: the 500 public two-dimensional bin packing instances (Berkey and Wang 1987, Martello and Vigo 1998) with cuts
 * from edge to edge, rotation, no kerf and no trim. Every layout is checked. Arguments: folder with
 * {@code bin-packing-class.txt} (one instance a line, {@code name;distinct;W;H;w,h[,count];...}) and seconds for each.
 * Prints total sheets, also by class, and the sum of the bounds in {@code bin-packing-class-bounds.csv} (last column).
 */
final class NestBench {
    /** Metres for one unit of the instances, whose sheets are 10 to 300 units wide. */
    private static final double UNIT = 0.01;

    private NestBench() {}

    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 2) {
            throw new IllegalArgumentException("arguments: FOLDER SECONDS");
        }
        Path folder = Path.of(arguments[0]);
        double seconds = Double.parseDouble(arguments[1]);
        Map<String, Integer> byClass = new TreeMap<>();
        int ownBound = 0;
        for (String line : lines(folder.resolve("bin-packing-class.txt"))) {
            NestJob job = job(line);
            SheetLayout layout = GuillotineNester.nest(job, Effort.seconds(seconds, System::nanoTime), Progress.NONE);
            List<String> faults = LayoutCheck.faults(layout, job);
            if (!faults.isEmpty() || !layout.unplaced().isEmpty()) {
                throw new IllegalStateException(line.substring(0, 12) + faults + layout.unplaced());
            }
            byClass.merge(line.substring(0, 4), layout.sheets().size(), Integer::sum);
            ownBound += layout.lowerBound();
        }
        int total = byClass.values().stream().mapToInt(Integer::intValue).sum();
        System.out.printf(
                Locale.ROOT,
                "%d sheets, published bounds %d, own bounds %d, %.3f s each, by class %s%n",
                total,
                bounds(folder.resolve("bin-packing-class-bounds.csv")),
                ownBound,
                seconds,
                byClass);
    }

    private static List<String> lines(Path file) throws IOException {
        return Files.readAllLines(file).stream().filter(line -> !line.isBlank()).toList();
    }

    private static int bounds(Path file) throws IOException {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.skip(1)
                    .filter(line -> !line.isBlank())
                    .mapToInt(line -> Integer.parseInt(line.substring(line.lastIndexOf(',') + 1)))
                    .sum();
        }
    }

    private static NestJob job(String line) {
        String[] fields = line.split(";", -1);
        Sheet sheet =
                new Sheet("bin", number(fields[2]) * UNIT, number(fields[3]) * UNIT, null, null, "public instance");
        List<NestPart> parts = new ArrayList<>();
        for (int i = 4; i < fields.length; i++) {
            String[] item = fields[i].split(",", -1);
            int count = item.length > 2 ? number(item[2]) : 1;
            parts.add(new NestPart("I" + i, count, number(item[0]) * UNIT, number(item[1]) * UNIT, false));
        }
        return new NestJob("instance", 0, parts, List.of(sheet), 0, 0);
    }

    private static int number(String text) {
        return Integer.parseInt(text.strip());
    }
}
