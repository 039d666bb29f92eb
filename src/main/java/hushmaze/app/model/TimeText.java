package hushmaze.app.model;

import hushmaze.quantity.InvalidValue;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times within a recording as people write them: "83.5", "83.5 s", "1:23.5", "1:02:03". Shown to a hundredth of a second. */
final class TimeText {
    private static final Pattern TYPED =
            Pattern.compile("(?:(?:(\\d{1,3}):)?(\\d{1,4}):)?(\\d{1,7}(?:[.,]\\d{1,6})?)\\s*(s|sec)?");
    private static final int MINUTE = 60;
    private static final int HOUR = 3600;
    private static final int MOST_SHOWN = 40;

    private TimeText() {}

    /**
     * Seconds.
     *
     * @throws InvalidValue if it is no time
     */
    static double parse(String field, String text) {
        Matcher m = TYPED.matcher(text.strip());
        if (m.matches()) {
            double seconds = Double.parseDouble(m.group(3).replace(',', '.'));
            int minutes = m.group(2) == null ? 0 : Integer.parseInt(m.group(2));
            int hours = m.group(1) == null ? 0 : Integer.parseInt(m.group(1));
            boolean carried = m.group(2) != null && seconds >= MINUTE || m.group(1) != null && minutes >= MINUTE;
            if (!carried) {
                return hours * HOUR + minutes * MINUTE + seconds;
            }
        }
        String cut = text.length() > MOST_SHOWN ? text.substring(0, MOST_SHOWN) + "…" : text;
        throw new InvalidValue(field, "\"" + cut + "\"", Texts.of("recording.typed"), "");
    }

    /** To a hundredth of a second. */
    static double rounded(double seconds) {
        return Math.rint(seconds * 100) / 100;
    }

    /**
     * As it is shown, without a unit.
     *
     * @param minutes whether minutes are written, and hours if there are any
     */
    static String show(double seconds, boolean minutes) {
        BigDecimal all = BigDecimal.valueOf(seconds).setScale(2, RoundingMode.HALF_UP);
        if (!minutes) {
            return plain(all);
        }
        long whole = all.longValue();
        String rest = plain(all.subtract(BigDecimal.valueOf(whole / MINUTE * MINUTE)));
        String padded = rest.indexOf('.') == 1 || rest.length() == 1 ? "0" + rest : rest;
        long hours = whole / HOUR;
        long ofHour = whole % HOUR / MINUTE;
        return hours == 0 ? ofHour + ":" + padded : hours + ":" + (ofHour < 10 ? "0" : "") + ofHour + ":" + padded;
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
