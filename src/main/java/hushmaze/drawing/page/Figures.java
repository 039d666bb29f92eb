package hushmaze.drawing.page;

import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import java.util.Locale;

/** Numbers as they stand in tables, without units, and areas. */
record Figures(UnitSystem units) {
    private static final String NONE = "–";

    /** A level or a loss to a tenth; a dash if there is none. */
    String db(Double value) {
        return value == null || !Double.isFinite(value) ? NONE : fixed(value, 1);
    }

    /** An air velocity without its unit. */
    String velocity(double si) {
        return inch() ? fixed(Unit.FOOT_PER_MINUTE.fromSi(si), 0) : fixed(si, 2);
    }

    String velocityUnit() {
        return (inch() ? Unit.FOOT_PER_MINUTE : Unit.METRE_PER_SECOND).symbol();
    }

    Unit flowUnit() {
        return inch() ? Unit.CUBIC_FOOT_PER_MINUTE : Unit.LITRE_PER_SECOND;
    }

    /** A pressure without its unit. */
    String pressure(double si) {
        return inch() ? fixed(pressureUnit().fromSi(si), 4) : fixed(si, 2);
    }

    Unit pressureUnit() {
        return inch() ? Unit.INCH_OF_WATER : Unit.PASCAL;
    }

    /** An area with its unit. */
    String area(double si) {
        return inch() ? fixed(Unit.SQUARE_FOOT.fromSi(si), 1) + " ft²" : fixed(si, 2) + " m²";
    }

    /** A share as a percentage. */
    String percent(double share) {
        return fixed(share * 100, 0) + " %";
    }

    /** A number to so many decimals, with a true minus sign. */
    String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        boolean zero = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero ? text.replace("-", "") : text.replace('-', '−');
    }

    /** A text with true minus signs before its numbers. */
    static String trueMinus(String text) {
        return text.replaceAll("(?<![\\w.])-(?=\\d)", "−");
    }

    private boolean inch() {
        return units == UnitSystem.INCH;
    }
}
