package hushmaze.wording;

import hushmaze.quantity.Dimension;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Amounts as a person reads them, in metric units or in inches, cubic feet per minute and pounds. */
public final class Amounts {
    /** Plain numbers from here on are shown without places. */
    private static final double LARGE = 100;

    private static final MathContext TWO_DIGITS = new MathContext(2);
    /** m. */
    private static final double INCH = Unit.INCH.toSi(1);
    /** Inches below which quarters count. */
    private static final double SMALL = 10;

    /** N. */
    private static final double POUND_FORCE = 4.4482216152605;

    private final UnitSystem system;

    public Amounts(UnitSystem system) {
        this.system = system;
    }

    /** An SI amount with the unit people use for it here. */
    public String of(double si, Unit unit) {
        if (Double.isInfinite(si)) {
            return si > 0 ? "no limit" : "nothing";
        }
        return switch (unit.dimension()) {
            case LENGTH -> unit == Unit.METRE ? distance(si) : length(si);
            case AREA ->
                system == UnitSystem.INCH
                        ? number(si / (INCH * INCH), 1) + " in²"
                        : number(Unit.SQUARE_CENTIMETRE.fromSi(si), 0) + " cm²";
            case FLOW -> flow(si);
            case VELOCITY -> velocity(si);
            case PRESSURE -> pressure(si);
            case MASS -> mass(si);
            case FORCE -> force(si);
            case LEVEL -> decibels(si);
            case TEMPERATURE -> temperature(si);
            case FRACTION ->
                unit == Unit.PERCENT ? number(unit.fromSi(si), 0) + " %" : number(si, Math.abs(si) < LARGE ? 2 : 0);
            case CONCENTRATION -> number(unit.fromSi(si), 0) + " ppm";
            default ->
                number(unit.fromSi(si), Math.abs(unit.fromSi(si)) < LARGE ? 2 : 0)
                        + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
        };
    }

    /** About so much: two digits that count; inches in whole ones, small ones in quarters. */
    public String about(double si, Unit unit) {
        if (system == UnitSystem.INCH && unit.dimension() == Dimension.LENGTH && unit != Unit.METRE) {
            double inches = Unit.INCH.fromSi(si);
            return length(INCH * (inches < SMALL ? Math.round(inches * 4) / 4.0 : Math.round(inches)));
        }
        return of(BigDecimal.valueOf(si).round(TWO_DIGITS).doubleValue(), unit);
    }

    /** "140 mm" or "5 1/2 in". */
    public String length(double metres) {
        return LengthFormat.withUnit(metres, system);
    }

    /** A board's thickness, or a small difference: "18.4 mm" or "0.724 in". */
    public String thickness(double metres) {
        return LengthFormat.thickness(metres, system);
    }

    /** "600 × 350 × 280 mm" or "23 5/8 × 13 3/4 × 11 in". */
    public String sizes(double... metres) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < metres.length; i++) {
            text.append(i == 0 ? "" : " × ").append(LengthFormat.bare(metres[i], system));
        }
        return text.append(system == UnitSystem.INCH ? " in" : " mm").toString();
    }

    /** "1.5 m" or "4.9 ft". */
    public String distance(double metres) {
        return system == UnitSystem.INCH ? number(Unit.FOOT.fromSi(metres), 1) + " ft" : number(metres, 2) + " m";
    }

    /** "28 L/s" or "59 cfm". */
    public String flow(double si) {
        return system == UnitSystem.INCH
                ? number(Unit.CUBIC_FOOT_PER_MINUTE.fromSi(si), 0) + " cfm"
                : number(Unit.LITRE_PER_SECOND.fromSi(si), 1) + " L/s";
    }

    /** "1.3 m/s" or "256 ft/min". */
    public String velocity(double si) {
        return system == UnitSystem.INCH
                ? number(Unit.FOOT_PER_MINUTE.fromSi(si), 0) + " ft/min"
                : number(si, 2) + " m/s";
    }

    /** "4.7 Pa" or "0.019 inH2O". */
    public String pressure(double pascal) {
        return system == UnitSystem.INCH
                ? String.format(Locale.ROOT, "%.3f inH2O", Unit.INCH_OF_WATER.fromSi(pascal))
                : number(pascal, 1) + " Pa";
    }

    /** "21 °C" or "70 °F". @param celsius °C */
    public String temperature(double celsius) {
        return system == UnitSystem.INCH
                ? number(Unit.FAHRENHEIT.fromSi(celsius), 0) + " °F"
                : number(celsius, 1) + " °C";
    }

    /** A difference of temperatures: "9.4 K" or "17 °F". */
    public String warming(double kelvin) {
        double none = Unit.FAHRENHEIT.fromSi(0);
        return system == UnitSystem.INCH
                ? number(Unit.FAHRENHEIT.fromSi(kelvin) - none, 0) + " °F"
                : number(kelvin, 1) + " K";
    }

    /** "34 kg" or "75 lb". */
    public String mass(double kg) {
        return system == UnitSystem.INCH ? number(Unit.POUND.fromSi(kg), 0) + " lb" : number(kg, 1) + " kg";
    }

    /** "320 N" or "72 lbf". */
    public String force(double newton) {
        return system == UnitSystem.INCH ? number(newton / POUND_FORCE, 0) + " lbf" : number(newton, 0) + " N";
    }

    /** "12.4 dB"; a difference that rounds to nothing has no sign. */
    public String decibels(double db) {
        return number(db, 1) + " dB";
    }

    /** A number with at most so many places and no trailing zeros. */
    public static String number(double value, int places) {
        String text = String.format(Locale.ROOT, "%." + places + "f", value);
        if (text.contains(".")) {
            text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        return text.equals("-0") ? "0" : text;
    }
}
