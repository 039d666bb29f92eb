package hushmaze.app.model;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitParser;
import hushmaze.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as they stand in entries: with a unit of the project's system, and so that they can be typed back. */
public final class EntryText {
    private static final MathContext DIGITS = new MathContext(6);
    private static final MathContext COARSE = new MathContext(4);

    /** Share of a length that rounding to a builder's steps may change; a thin gap is then shown in decimals. */
    private static final double COARSE_LENGTH = 0.2;

    private EntryText() {}

    /** The unit people use for a quantity. */
    public static Unit unit(Unit metric, UnitSystem system) {
        if (system == UnitSystem.METRIC) {
            return metric;
        }
        return switch (metric) {
            case MILLIMETRE, CENTIMETRE -> Unit.INCH;
            case METRE -> Unit.FOOT;
            case SQUARE_METRE -> Unit.SQUARE_FOOT;
            case CUBIC_METRE -> Unit.CUBIC_FOOT;
            case LITRE_PER_SECOND -> Unit.CUBIC_FOOT_PER_MINUTE;
            case METRE_PER_SECOND -> Unit.FOOT_PER_MINUTE;
            case PASCAL -> Unit.INCH_OF_WATER;
            case KILOGRAM -> Unit.POUND;
            case CELSIUS -> Unit.FAHRENHEIT;
            default -> metric;
        };
    }

    /** An amount in SI; nothing for an absent one. */
    public static String show(Double si, Unit metric, UnitSystem system) {
        if (si == null) {
            return "";
        }
        if (metric == Unit.MILLIMETRE && Math.abs(LengthFormat.roundingError(si, system)) <= COARSE_LENGTH * si) {
            return LengthFormat.withUnit(si, system);
        }
        Unit unit = unit(metric, system);
        String number = number(unit.fromSi(si), unit == metric ? DIGITS : COARSE);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** A board's real thickness, finer than lengths are cut. */
    static String thickness(double si, UnitSystem system) {
        return system == UnitSystem.INCH
                ? LengthFormat.thickness(si, system)
                : number(Unit.MILLIMETRE.fromSi(si), DIGITS) + " mm";
    }

    /** A bare number in a row of others. */
    public static String brief(double value) {
        return number(value, COARSE);
    }

    /**
     * An amount in SI from what was typed; a number without a unit is in the unit shown.
     *
     * @throws InvalidValue if it cannot be read
     */
    public static double parse(String field, String text, Unit metric, UnitSystem system) {
        return UnitParser.parse(field, text, unit(metric, system));
    }

    private static String number(double value, MathContext digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(digits);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
