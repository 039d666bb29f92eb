package hushmaze.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what people type: "140 mm", "5 1/2 in", "5-1/2 in", "3' 2 1/4\"", "60 cfm", "28 L/s", "0.05 inH2O", "140" in a default unit.
 *
 * <p>A decimal comma is understood; a thousands separator is not. A comma that could be either ("1,200") is refused.
 */
public final class UnitParser {
    private static final Pattern FEET_AND_INCHES = Pattern.compile("(.+?)\\s*(?:'|ft)\\s*(.+?)\\s*(?:\"|in)");
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([-+]?(?:\\d+-(?=\\d+\\s*/))?[0-9.,/\\s]*[0-9.](?:[eE][-+]?[0-9]+)?)\\s*(.*)");
    private static final Pattern MIXED = Pattern.compile("([-+]?)(?:(\\d+)(?:\\s+|-))?(\\d+)\\s*/\\s*(\\d+)");
    private static final Pattern DECIMAL = Pattern.compile("[-+]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][-+]?\\d+)?");

    /** Could be a decimal comma or a thousands separator: not guessed. */
    private static final Pattern UNCLEAR_COMMA = Pattern.compile("[-+]?[1-9]\\d{0,2},\\d{3}");

    private static final Map<String, Unit> SYMBOLS = Map.ofEntries(
            Map.entry("m", Unit.METRE),
            Map.entry("mm", Unit.MILLIMETRE),
            Map.entry("cm", Unit.CENTIMETRE),
            Map.entry("in", Unit.INCH),
            Map.entry("inch", Unit.INCH),
            Map.entry("inches", Unit.INCH),
            Map.entry("\"", Unit.INCH),
            Map.entry("ft", Unit.FOOT),
            Map.entry("'", Unit.FOOT),
            Map.entry("m2", Unit.SQUARE_METRE),
            Map.entry("cm2", Unit.SQUARE_CENTIMETRE),
            Map.entry("ft2", Unit.SQUARE_FOOT),
            Map.entry("m3", Unit.CUBIC_METRE),
            Map.entry("ft3", Unit.CUBIC_FOOT),
            Map.entry("m3/s", Unit.CUBIC_METRE_PER_SECOND),
            Map.entry("l/s", Unit.LITRE_PER_SECOND),
            Map.entry("m3/h", Unit.CUBIC_METRE_PER_HOUR),
            Map.entry("cfm", Unit.CUBIC_FOOT_PER_MINUTE),
            Map.entry("m/s", Unit.METRE_PER_SECOND),
            Map.entry("ft/min", Unit.FOOT_PER_MINUTE),
            Map.entry("fpm", Unit.FOOT_PER_MINUTE),
            Map.entry("pa", Unit.PASCAL),
            Map.entry("gpa", Unit.GIGAPASCAL),
            Map.entry("inh2o", Unit.INCH_OF_WATER),
            Map.entry("inwg", Unit.INCH_OF_WATER),
            Map.entry("inwc", Unit.INCH_OF_WATER),
            Map.entry("kg", Unit.KILOGRAM),
            Map.entry("lb", Unit.POUND),
            Map.entry("n", Unit.NEWTON),
            Map.entry("kg/m3", Unit.KILOGRAM_PER_CUBIC_METRE),
            Map.entry("pa·s/m2", Unit.PASCAL_SECOND_PER_SQUARE_METRE),
            Map.entry("pas/m2", Unit.PASCAL_SECOND_PER_SQUARE_METRE),
            Map.entry("g/m2", Unit.GRAM_PER_SQUARE_METRE),
            Map.entry("pa·s/m", Unit.PASCAL_SECOND_PER_METRE),
            Map.entry("pas/m", Unit.PASCAL_SECOND_PER_METRE),
            Map.entry("w", Unit.WATT),
            Map.entry("%", Unit.PERCENT),
            Map.entry("w/k", Unit.WATT_PER_KELVIN),
            Map.entry("°c", Unit.CELSIUS),
            Map.entry("c", Unit.CELSIUS),
            Map.entry("°f", Unit.FAHRENHEIT),
            Map.entry("f", Unit.FAHRENHEIT),
            Map.entry("db", Unit.DECIBEL),
            Map.entry("hz", Unit.HERTZ),
            Map.entry("ppm", Unit.PARTS_PER_MILLION));

    private UnitParser() {}

    /**
     * The value in SI.
     *
     * @param field name of the field, for the message
     * @param text what was typed
     * @param fallback unit when none was typed; also sets the dimension asked for
     * @throws InvalidValue if there is no number, the unit is unknown, or it measures something else
     */
    public static double parse(String field, String text, Unit fallback) {
        String clean = text.strip().replace('\u00a0', ' ').replace("²", "2").replace("³", "3");
        if (fallback.dimension() == Dimension.LENGTH) {
            Matcher both = FEET_AND_INCHES.matcher(clean);
            if (both.matches()) {
                return feetAndInches(
                        field, text, both.group(1).strip(), both.group(2).strip(), fallback);
            }
        }
        Matcher matcher = NUMBER_AND_UNIT.matcher(clean);
        if (!matcher.matches()) {
            throw new InvalidValue(field, quote(text), "a number with a unit, such as " + example(fallback), "");
        }
        return finite(
                field,
                text,
                unit(field, text, matcher.group(2), fallback).toSi(number(field, text, matcher.group(1), fallback)));
    }

    /** A sign before the feet holds for the inches too; the inches have none of their own. */
    private static double feetAndInches(String field, String text, String feet, String inches, Unit fallback) {
        if (inches.startsWith("-") || inches.startsWith("+")) {
            throw new InvalidValue(field, quote(text), "feet and inches with one sign before the feet", "");
        }
        double whole = Unit.FOOT.toSi(Math.abs(number(field, text, feet, fallback)));
        double rest = Unit.INCH.toSi(number(field, text, inches, fallback));
        return finite(field, text, feet.startsWith("-") ? -(whole + rest) : whole + rest);
    }

    private static double finite(String field, String text, double si) {
        if (!Double.isFinite(si)) {
            throw new InvalidValue(field, quote(text), "a finite number", "");
        }
        return si;
    }

    private static Unit unit(String field, String text, String symbol, Unit fallback) {
        if (symbol.isBlank()) {
            return fallback;
        }
        Unit unit = SYMBOLS.get(symbol.toLowerCase(Locale.ROOT).replace(" ", ""));
        if (unit == null) {
            throw new InvalidValue(field, quote(text), "in a known unit, such as " + example(fallback), "");
        }
        if (unit.dimension() != fallback.dimension()) {
            throw new InvalidValue(
                    field,
                    quote(text) + " (" + unit.dimension().words() + ")",
                    fallback.dimension().words() + ", such as " + example(fallback),
                    "");
        }
        return unit;
    }

    private static double number(String field, String text, String digits, Unit fallback) {
        String clean = digits.strip();
        Matcher mixed = MIXED.matcher(clean);
        if (mixed.matches()) {
            double below = Double.parseDouble(mixed.group(4));
            if (below == 0) {
                throw new InvalidValue(field, quote(text), "a fraction that is not over zero", "");
            }
            double whole = mixed.group(2) == null ? 0 : Double.parseDouble(mixed.group(2));
            double value = whole + Double.parseDouble(mixed.group(3)) / below;
            return mixed.group(1).equals("-") ? -value : value;
        }
        if (UNCLEAR_COMMA.matcher(clean).matches()) {
            throw new InvalidValue(field, quote(text), "written without a comma before three digits", "");
        }
        if (!DECIMAL.matcher(clean).matches()) {
            throw new InvalidValue(field, quote(text), "a number with a unit, such as " + example(fallback), "");
        }
        return Double.parseDouble(clean.replace(',', '.'));
    }

    private static String example(Unit unit) {
        return switch (unit.dimension()) {
            case LENGTH -> "\"140 mm\" or \"5 1/2 in\"";
            case FLOW -> "\"28 L/s\" or \"60 cfm\"";
            case PRESSURE -> "\"12 Pa\" or \"0.05 inH2O\"";
            default -> "\"10" + (unit.symbol().isEmpty() ? "" : " " + unit.symbol()) + "\"";
        };
    }

    private static String quote(String text) {
        String shown = text.length() > 40 ? text.substring(0, 40) + "..." : text;
        return "\"" + shown + "\"";
    }
}
