package hushmaze.drawing.draft;

import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines at its spaces, but not between a whole number and its fraction. */
public final class Wrap {
    /** A space at which a line does not break. */
    private static final String NO_BREAK = "\u00a0";

    private static final Pattern BEFORE_FRACTION = Pattern.compile("(?<=\\d) (?=\\d+/\\d)");
    private static final Pattern SPACES = Pattern.compile("\\s+");

    private Wrap() {}

    /** What is not broken unless it is too wide by itself. */
    static String[] words(String text) {
        return SPACES.split(BEFORE_FRACTION.matcher(text.strip()).replaceAll(NO_BREAK));
    }

    /**
     * The lines of a text; a word that is too wide by itself is broken between letters.
     *
     * @param width of the column, mm
     */
    public static List<String> lines(String text, double width, double size, Weight weight, TextMeasure measure) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words(text)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (measure.width(longer, size, weight) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (measure.width(line, size, weight) > width && line.length() > 1) {
                int cut = fitting(line, width, size, weight, measure);
                lines.add(line.substring(0, cut));
                line = line.substring(cut);
            }
        }
        lines.add(line);
        return lines;
    }

    private static int fitting(String word, double width, double size, Weight weight, TextMeasure measure) {
        int cut = word.length() - 1;
        while (cut > 1 && measure.width(word.substring(0, cut), size, weight) > width) {
            cut--;
        }
        return cut;
    }

    /** The size at which a text fits a width: the wanted one, or as much smaller as it takes. */
    public static double shrunk(String text, double width, double size, Weight weight, TextMeasure measure) {
        double natural = measure.width(text, size, weight);
        return natural <= width ? size : size * width / natural;
    }
}
