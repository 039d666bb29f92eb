package hushmaze.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A value that cannot be accepted, with everything a message needs: which field, what was given, what the limit is and in
 * which unit.
 */
public final class InvalidValue extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    /** Enough that a value just outside a limit does not look like the limit. */
    private static final int SHOWN_DIGITS = 9;

    private final String field;
    private final String given;
    private final String limit;
    private final String unit;

    /**
     * @param field name of the component, as in the record
     * @param given the value as a person would write it
     * @param limit what is asked: "at least 10", "a number"
     * @param unit symbol of the unit, may be empty
     */
    public InvalidValue(String field, String given, String limit, String unit) {
        super(field + ": " + given + (unit.isEmpty() ? "" : " " + unit) + " is not accepted; it must be " + limit
                + (unit.isEmpty() ? "" : " " + unit));
        this.field = field;
        this.given = given;
        this.limit = limit;
        this.unit = unit;
    }

    public String field() {
        return field;
    }

    public String given() {
        return given;
    }

    public String limit() {
        return limit;
    }

    public String unit() {
        return unit;
    }

    /** The same problem of a field further down: {@code box} and {@code clearWidth} give {@code box.clearWidth}. */
    public InvalidValue inside(String parent) {
        return new InvalidValue(parent + "." + field, given, limit, unit);
    }

    /** The same problem of a field in a file, or in another place with a name of its own. */
    public InvalidValue in(Object place) {
        return new InvalidValue(place + ": " + field, given, limit, unit);
    }

    /**
     * Requires a finite number within limits, all in SI; the message shows them in the given unit.
     *
     * @return the value
     */
    public static double within(String field, double si, double min, double max, Unit unit) {
        if (!Double.isFinite(si) || si < min || si > max) {
            throw new InvalidValue(field, refused(si, min, max, unit), limits(min, max, unit), unit.symbol());
        }
        return si;
    }

    /** The refused value, rounded; with all its digits if rounding would bring it back within the limits. */
    private static String refused(double si, double min, double max, Unit unit) {
        double value = unit.fromSi(si);
        String rounded = number(value);
        if (!Double.isFinite(value)) {
            return rounded;
        }
        double shown = Double.parseDouble(rounded);
        boolean looksRight = shown >= unit.fromSi(min) && shown <= unit.fromSi(max);
        return looksRight ? Double.toString(value) : rounded;
    }

    /** Requires a whole number within limits. */
    public static int within(String field, int value, int min, int max) {
        if (value < min || value > max) {
            throw new InvalidValue(field, Integer.toString(value), "from " + min + " to " + max, "");
        }
        return value;
    }

    /** Requires something to be there. */
    public static <T> T present(String field, T value) {
        if (value == null) {
            throw new InvalidValue(field, "nothing", "given", "");
        }
        return value;
    }

    /**
     * Requires a text of one line that is not blank and not longer than a limit: it goes into files and onto drawings,
     * which take no control characters and no halves of characters.
     */
    public static String text(String field, String value, int maxLength) {
        present(field, value);
        if (value.isBlank() || value.length() > maxLength) {
            throw new InvalidValue(
                    field,
                    value.isBlank() ? "a blank text" : value.length() + " characters",
                    "a text of 1 to " + maxLength + " characters",
                    "");
        }
        if (value.codePoints().anyMatch(InvalidValue::isUnprintable)) {
            throw new InvalidValue(
                    field, "a text with control characters", "a text on one line without control characters", "");
        }
        return value;
    }

    private static boolean isUnprintable(int codePoint) {
        // A half of a surrogate pair that stands alone comes through as itself.
        boolean half = codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
        return half || Character.isISOControl(codePoint);
    }

    /** A value in SI as a person would write it in a unit, without the unit's symbol. */
    public static String shown(double si, Unit unit) {
        return number(unit.fromSi(si));
    }

    private static String limits(double min, double max, Unit unit) {
        if (max == Double.POSITIVE_INFINITY) {
            return "at least " + number(unit.fromSi(min));
        }
        return "from " + number(unit.fromSi(min)) + " to " + number(unit.fromSi(max));
    }

    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "not a number" : Double.toString(value);
        }
        BigDecimal rounded =
                BigDecimal.valueOf(value).round(new MathContext(SHOWN_DIGITS)).stripTrailingZeros();
        boolean plain = value == 0 || (Math.abs(value) >= 1e-9 && Math.abs(value) < 1e15);
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}
