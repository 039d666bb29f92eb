package hushmaze.measure;

import hushmaze.quantity.InvalidValue;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Reads lines of frequency and level from a text and keeps the numbers. Bounded: a million lines at most. */
final class LevelTable {
    private static final double HIGHEST_HZ = 1e6;
    private static final double MOST_DB = 300;
    private static final Pattern COMMENT = Pattern.compile("\\s*(#|%|//|!|\\*|'|;|\\[|\").*");
    private static final Pattern NO_NUMBER =
            Pattern.compile("|[-+]?(nan|inf|infinity|\u221e)|-+|\u2014|n/?a|null|none|[*?]+|#.*|1\\.#.*");

    private final TextLines lines;
    private final String name;
    private double[] frequencies = new double[64];
    private double[] levels = new double[64];
    private int size;
    private boolean points;
    private TextRow manyCommas;
    private int manyCommasLine;

    private LevelTable(TextLines lines, String name) {
        this.lines = lines;
        this.name = name;
    }

    /**
     * Reads all of a text.
     *
     * @throws InvalidValue with name, line, value and limit
     */
    static LevelTable read(InputStream bytes, String name) throws IOException {
        LevelTable table = new LevelTable(new TextLines(bytes, name), name);
        for (String line = table.lines.next(); line != null; line = table.lines.next()) {
            table.line(line);
        }
        if (table.size == 0) {
            throw new InvalidValue(name, "no line with a frequency and a level", "lines such as \"125; 48.2\"", "");
        }
        if (table.manyCommas != null && !table.points) {
            throw new InvalidValue(
                    name + ", line " + table.manyCommasLine,
                    "commas between columns and perhaps within numbers",
                    "with semicolons, tabs or blanks between columns, or with decimal points",
                    "");
        }
        return table;
    }

    int size() {
        return size;
    }

    double[] frequencies() {
        return Arrays.copyOf(frequencies, size);
    }

    double[] levels() {
        return Arrays.copyOf(levels, size);
    }

    private void line(String line) {
        if (line.isBlank()) {
            return;
        }
        TextRow row = TextRow.of(line);
        if (row.fields().isEmpty()) {
            return;
        }
        String first = row.fields().get(0);
        String second = row.fields().size() > 1 ? row.fields().get(1) : "";
        OptionalDouble frequency = FrequencyText.parse(first);
        if (frequency.isPresent()) {
            data(row, frequency.getAsDouble(), second);
        } else if (!COMMENT.matcher(line).matches() && isBrokenFrequency(first, second)) {
            throw lines.problem("frequency", quoted(first), "a frequency such as 125, 1k or \"1.25 kHz\"", "");
        }
    }

    private boolean isBrokenFrequency(String first, String second) {
        return isNoNumber(first) && TextRow.level(second).isPresent() || size > 0 && startsAsNumber(first);
    }

    private void data(TextRow row, double frequency, String second) {
        OptionalDouble level = TextRow.level(second);
        if (level.isEmpty()) {
            if (size == 0 && !isNoNumber(second)) {
                // a line of the heading that begins with a number
                return;
            }
            throw lines.problem("level", quoted(second), "a number of decibels", "");
        }
        requireTwoColumns(row);
        if (!(frequency <= HIGHEST_HZ)) {
            throw lines.problem("frequency", quoted(row.fields().get(0)), "from 0 to 1000000", "Hz");
        }
        if (!(Math.abs(level.getAsDouble()) <= MOST_DB)) {
            throw lines.problem("level", quoted(second), "from -300 to 300", "dB");
        }
        add(frequency, level.getAsDouble());
    }

    private void requireTwoColumns(TextRow row) {
        points |= row.fields().stream().anyMatch(f -> f.indexOf('.') >= 0);
        long numbers = row.numbers();
        if (numbers <= 2) {
            return;
        }
        boolean whole = row.fields().stream().noneMatch(f -> f.indexOf('.') >= 0);
        if (row.commas() && whole && numbers <= 4) {
            if (manyCommas == null) {
                manyCommas = row;
                manyCommasLine = lines.number();
            }
            if (!points) {
                return;
            }
        }
        throw lines.problem("columns", numbers + " numbers", "two: frequency and level", "");
    }

    private void add(double frequency, double level) {
        if (size == frequencies.length) {
            frequencies = Arrays.copyOf(frequencies, 2 * size);
            levels = Arrays.copyOf(levels, 2 * size);
        }
        frequencies[size] = frequency;
        levels[size] = level;
        size++;
    }

    String name() {
        return name;
    }

    private static boolean isNoNumber(String field) {
        return NO_NUMBER.matcher(field.toLowerCase(Locale.ROOT)).matches();
    }

    private static boolean startsAsNumber(String field) {
        return !field.isEmpty() && "+-.,0123456789".indexOf(field.charAt(0)) >= 0;
    }

    private static String quoted(String text) {
        return "\"" + (text.length() > 40 ? text.substring(0, 40) + "..." : text) + "\"";
    }
}
