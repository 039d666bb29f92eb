package hushmaze.drawing.draft;

import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.wording.Unbroken;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines at its spaces, but not between what is read as one. */
public final class Wrap {
    private static final Pattern SPACES = Pattern.compile("\\s+");

    private Wrap() {}

    /** What is not broken unless it is too wide by itself. */
    static String[] words(String text) {
        return SPACES.split(Unbroken.of(text.strip()));
    }

    /**
     * The lines of a text; what is too wide by itself is broken at a space that should not be one, a word between letters.
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
                lines.add(Unbroken.plain(line));
            }
            line = word;
            while (measure.width(line, size, weight) > width && line.length() > 1) {
                int cut = fitting(line, width, size, weight, measure);
                int space = Unbroken.spaceBefore(line, cut);
                lines.add(Unbroken.plain(line.substring(0, space > 0 ? space : cut)));
                line = line.substring(space > 0 ? space + 1 : cut);
            }
        }
        lines.add(Unbroken.plain(line));
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
