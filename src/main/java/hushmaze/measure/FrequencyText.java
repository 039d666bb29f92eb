package hushmaze.measure;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A frequency as instruments and people write it: "31.5 Hz", "1k", "1,25 kHz", "3k15", "12500". */
final class FrequencyText {
    private static final Pattern PLAIN = Pattern.compile("(\\d+(?:[.,]\\d+)?(?:e[+-]?\\d{1,2})?)\\s*(khz|hz|k)?");
    private static final Pattern SPLIT = Pattern.compile("(\\d{1,2})k(\\d{1,3})\\s*(?:hz)?");
    private static final double KILO = 1000;

    private FrequencyText() {}

    /** The frequency, Hz; nothing if it is not one. */
    static OptionalDouble parse(String text) {
        String small = text.strip().toLowerCase(Locale.ROOT);
        Matcher split = SPLIT.matcher(small);
        if (split.matches()) {
            return OptionalDouble.of(KILO * Double.parseDouble(split.group(1) + "." + split.group(2)));
        }
        Matcher plain = PLAIN.matcher(small);
        if (!plain.matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(plain.group(1).replace(',', '.'));
        boolean kilo = plain.group(2) != null && plain.group(2).startsWith("k");
        return OptionalDouble.of(kilo ? KILO * number : number);
    }
}
