package hushmaze.wording;

import hushmaze.quantity.Unit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Keeps together on one line what is read as one: a figure and its unit (as ISO 80000-1 asks), a whole number and its
 * fraction, a criterion and its number.
 */
public final class Unbroken {
    /** A space at which a line does not break. */
    private static final String SPACE = "\u00a0";

    private static final String UNITS = Stream.concat(
                    Arrays.stream(Unit.values()).map(Unit::symbol), Stream.of("dB(A)", "K", "min", "h", "fl oz", "mL"))
            .filter(symbol -> !symbol.isEmpty())
            .sorted(Comparator.comparingInt(String::length).reversed())
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));

    private static final Pattern TOGETHER = Pattern.compile("(?<=\\d) (?=(?:" + UNITS + ")(?![\\p{L}\\d]))"
            + "|(?<=\\d) (?=\\d+/\\d)"
            + "|(?<=\\b(?:NC|NR|RC)) (?=\\d)");

    private Unbroken() {}

    /** The same text; spaces at which it must not be broken are such that do not break. */
    public static String of(String text) {
        return text.isEmpty() ? text : TOGETHER.matcher(text).replaceAll(SPACE);
    }

    /** The last place, not beyond another one, where such a space stands; -1 for none. */
    public static int spaceBefore(String text, int place) {
        return text.lastIndexOf(SPACE, place);
    }

    /** The text with plain spaces again, to be copied and searched. */
    public static String plain(String text) {
        return text.replace(SPACE, " ");
    }
}
