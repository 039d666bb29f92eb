package hushmaze.store;

import hushmaze.build.NestJob;
import hushmaze.build.NestPart;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads a list of pieces to cut: a CSV file in UTF-8 with the columns {@code mark,quantity,lengthMm,widthMm} and optionally
 * {@code grain} (yes or no). The first line may name the columns, then in any order; decimals have a point. A mark with a
 * comma is put in double quotes.
 */
public final class PartsCsv {
    private static final List<String> COLUMNS = List.of("mark", "quantity", "lengthMm", "widthMm", "grain");
    private static final int REQUIRED = 4;
    private static final List<String> YES = List.of("yes", "true", "1");
    private static final List<String> NO = List.of("no", "false", "0", "");
    private static final int MAX_LINES = NestJob.MAX_PIECES + 1_000;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final String file;
    private final boolean allGrain;
    private final List<NestPart> parts = new ArrayList<>();
    private final Map<String, Integer> lineOfMark = new HashMap<>();
    private List<String> columns = COLUMNS;
    private long pieces;

    private PartsCsv(String file, boolean allGrain) {
        this.file = file;
        this.allGrain = allGrain;
    }

    /**
     * The pieces of a file, in its order.
     *
     * @param allGrain treat every piece as one with grain, whatever the file says
     * @throws InvalidValue with file, line, field, value and limit if something cannot be accepted
     */
    public static List<NestPart> read(Path file, boolean allGrain) {
        PartsCsv csv = new PartsCsv(String.valueOf(file.getFileName()), allGrain);
        try (BufferedReader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            int number = 0;
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                number++;
                csv.requireShort(number);
                csv.line(number, number == 1 ? withoutMark(line) : line);
            }
        } catch (NoSuchFileException e) {
            throw new InvalidValue(file.toString(), "a file that does not exist", "a CSV file of pieces", "");
        } catch (IOException e) {
            throw new InvalidValue(file.toString(), "a file that cannot be read as text", "a CSV file in UTF-8", "");
        }
        if (csv.parts.isEmpty()) {
            throw new InvalidValue(csv.file, "no piece", "at least one line " + String.join(",", COLUMNS), "");
        }
        return List.copyOf(csv.parts);
    }

    private static String withoutMark(String line) {
        return !line.isEmpty() && line.charAt(0) == BYTE_ORDER_MARK ? line.substring(1) : line;
    }

    private void requireShort(int number) {
        if (number > MAX_LINES) {
            throw new InvalidValue(file, "more than " + MAX_LINES + " lines", "at most " + MAX_LINES + " lines", "");
        }
    }

    private void line(int number, String line) {
        if (line.isBlank()) {
            return;
        }
        List<String> fields = split(number, line);
        if (number == 1 && fields.contains(COLUMNS.get(0)) && fields.contains(COLUMNS.get(1))) {
            header(fields);
            return;
        }
        if (fields.size() < REQUIRED || fields.size() > columns.size()) {
            boolean named = columns.size() == REQUIRED;
            String limit = named ? REQUIRED + ", as the first line names them" : REQUIRED + " or 5";
            throw at(number, "line", fields.size() + " fields", limit + ": " + String.join(",", columns), "");
        }
        try {
            add(number, fields);
        } catch (InvalidValue e) {
            throw at(number, column(e.field()), e.given(), e.limit(), e.unit());
        }
    }

    private void header(List<String> fields) {
        for (String name : COLUMNS.subList(0, REQUIRED)) {
            if (!fields.contains(name)) {
                throw at(1, "header", "no column " + name, String.join(",", COLUMNS), "");
            }
        }
        for (String name : fields) {
            if (!COLUMNS.contains(name)) {
                throw at(1, "header", "column \"" + name + "\"", "among " + String.join(",", COLUMNS), "");
            }
        }
        columns = fields;
    }

    private void add(int number, List<String> fields) {
        String mark = field(fields, "mark");
        int quantity = quantity(field(fields, "quantity"));
        double length = millimetres("lengthMm", field(fields, "lengthMm"));
        double width = millimetres("widthMm", field(fields, "widthMm"));
        boolean grain = grain(field(fields, "grain"));
        NestPart part = new NestPart(mark, quantity, length, width, grain || allGrain);
        Integer before = lineOfMark.putIfAbsent(mark, number);
        if (before != null) {
            throw new InvalidValue("mark", "\"" + mark + "\", as in line " + before, "used once", "");
        }
        pieces += quantity;
        if (pieces > NestJob.MAX_PIECES) {
            throw new InvalidValue("quantity", pieces + " pieces up to here", "at most " + NestJob.MAX_PIECES, "");
        }
        parts.add(part);
    }

    private String field(List<String> fields, String name) {
        int index = columns.indexOf(name);
        return index < 0 || index >= fields.size() ? "" : fields.get(index);
    }

    private static int quantity(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new InvalidValue("quantity", quoted(text), "a whole number from 1 to " + NestJob.MAX_PIECES, "");
        }
    }

    private static double millimetres(String name, String text) {
        try {
            return Unit.MILLIMETRE.toSi(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            throw new InvalidValue(name, quoted(text), "a number of millimetres with a decimal point", "");
        }
    }

    private static boolean grain(String text) {
        String word = text.toLowerCase(Locale.ROOT);
        if (!YES.contains(word) && !NO.contains(word)) {
            throw new InvalidValue("grain", quoted(text), "yes or no", "");
        }
        return YES.contains(word);
    }

    private static String quoted(String text) {
        return "\"" + (text.length() > 40 ? text.substring(0, 40) + "..." : text) + "\"";
    }

    /** The column a component of a piece is read from. */
    private static String column(String component) {
        return component.equals("length") || component.equals("width") ? component + "Mm" : component;
    }

    private InvalidValue at(int number, String field, String given, String limit, String unit) {
        return new InvalidValue(file + ", line " + number + ", " + field, given, limit, unit);
    }

    private List<String> split(int number, String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                field.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                fields.add(field.toString().strip());
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        if (quoted) {
            throw at(number, "line", "a double quote that is not closed", "closed on the same line", "");
        }
        fields.add(field.toString().strip());
        return fields;
    }
}
