package hushmaze.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Puts JSON texts together; all of it comes out on one line. */
final class Json {
    private Json() {}

    /** A text in quotes. */
    static String text(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append((char) c);
            } else if (c < ' ') {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                quoted.append((char) c);
            }
        });
        return quoted.append('"').toString();
    }

    /** A finite number with all its digits. */
    static String number(double value) {
        return Double.toString(value);
    }

    /** A whole number. */
    static String number(int value) {
        return Integer.toString(value);
    }

    /** An array of what is JSON already. */
    static String array(List<String> values) {
        return values.stream().collect(Collectors.joining(",", "[", "]"));
    }

    /** An array of numbers. */
    static String numbers(double... values) {
        List<String> all = new ArrayList<>();
        for (double value : values) {
            all.add(number(value));
        }
        return array(all);
    }

    /** An object: names, each with its value, which is JSON already. */
    static String object(String... namesAndValues) {
        List<String> members = new ArrayList<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            members.add(text(namesAndValues[i]) + ":" + namesAndValues[i + 1]);
        }
        return members.stream().collect(Collectors.joining(",", "{", "}"));
    }
}
