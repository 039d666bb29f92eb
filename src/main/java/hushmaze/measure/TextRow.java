package hushmaze.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of a table of levels, taken apart: the fields between tabs, semicolons, commas or blanks, in this order of
 * preference. A comma between digits is a decimal comma unless it is what parts the fields.
 *
 * @param fields without quotes and blanks around them; empty ones at the end left out
 * @param commas whether commas part the fields
 */
record TextRow(List<String> fields, boolean commas) {
    private static final Pattern BLANK_ROW =
            Pattern.compile("(\\S+?(?:\\s*(?:[kK]?[hH][zZ]|[kK]))?)\\s*[:=]?\\s+([-+]?\\d\\S*)((?:\\s+\\S+)*)\\s*");
    private static final Pattern LEVEL =
            Pattern.compile("([-+]?\\d+(?:[.,]\\d+)?(?:e[+-]?\\d{1,2})?)\\s*(?:db.{0,12})?");

    TextRow {
        fields = List.copyOf(fields);
    }

    static TextRow of(String line) {
        if (line.indexOf('\t') >= 0) {
            return new TextRow(split(line, "\t"), false);
        }
        if (line.indexOf(';') >= 0) {
            return new TextRow(split(line, ";"), false);
        }
        List<String> blanks = blanks(line);
        if (line.indexOf(',') >= 0 && !isRow(blanks)) {
            return new TextRow(split(line, ","), true);
        }
        return new TextRow(blanks, false);
    }

    /** The number of a level with or without its unit; nothing if it is not one. */
    static OptionalDouble level(String text) {
        Matcher matcher = LEVEL.matcher(text.strip().replace('\u2212', '-').toLowerCase(Locale.ROOT));
        return matcher.matches()
                ? OptionalDouble.of(Double.parseDouble(matcher.group(1).replace(',', '.')))
                : OptionalDouble.empty();
    }

    /** How many of the fields are numbers. */
    long numbers() {
        return fields.stream()
                .filter(f -> level(f).isPresent() || FrequencyText.parse(f).isPresent())
                .count();
    }

    private static boolean isRow(List<String> fields) {
        return fields.size() >= 2
                && FrequencyText.parse(fields.get(0)).isPresent()
                && level(fields.get(1)).isPresent();
    }

    private static List<String> split(String line, String separator) {
        List<String> fields = new ArrayList<>(Arrays.stream(line.split(Pattern.quote(separator), -1))
                .map(TextRow::bare)
                .toList());
        while (!fields.isEmpty() && fields.get(fields.size() - 1).isEmpty()) {
            fields.remove(fields.size() - 1);
        }
        return fields;
    }

    private static List<String> blanks(String line) {
        Matcher matcher = BLANK_ROW.matcher(line.strip().replace('\u00a0', ' '));
        if (!matcher.matches()) {
            return Arrays.stream(line.strip().split("\\s+")).map(TextRow::bare).toList();
        }
        List<String> fields = new ArrayList<>(List.of(bare(matcher.group(1)), bare(matcher.group(2))));
        Arrays.stream(matcher.group(3).strip().split("\\s+"))
                .filter(f -> !f.isEmpty())
                .map(TextRow::bare)
                .forEach(fields::add);
        return fields;
    }

    private static String bare(String field) {
        String text = field.strip();
        boolean quoted = text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"");
        return quoted ? text.substring(1, text.length() - 1).strip() : text;
    }
}
