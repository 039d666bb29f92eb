package hushmaze.drawing.page;

import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import java.util.Locale;

/** Numbers as they stand in tables, without units, and areas. */
record Figures(UnitSystem units) {
    private static final String NONE = "–";
    /** m³; a US fluid ounce. */
    private static final double FLUID_OUNCE = 29.5735295625e-6;
    /** Fluid ounces in a quart. */
    private static final int QUART = 32;
    /** Small amounts of glue are told to so much, mL. */
    private static final double DROPS = 5;

    /** A level or a loss to a tenth; a dash if there is none. */
    String db(Double value) {
        return value == null || !Double.isFinite(value) ? NONE : fixed(value, 1);
    }

    /** An air velocity without its unit. */
    String velocity(double si) {
        return inch() ? fixed(Unit.FOOT_PER_MINUTE.fromSi(si), 0) : fixed(si, 2);
    }

    String velocityUnit() {
        return speedUnit().symbol();
    }

    Unit speedUnit() {
        return inch() ? Unit.FOOT_PER_MINUTE : Unit.METRE_PER_SECOND;
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

    /** A volume of glue, small as it is: "15 mL", "1.2 L", "0.5 fl oz". */
    String glue(double si) {
        if (inch()) {
            double ounces = si / FLUID_OUNCE;
            return fixed(ounces, ounces < 10 ? 1 : 0) + " fl oz";
        }
        double steps = Math.ceil(si * 1e6 / DROPS - 1e-9);
        return si < 1e-3 ? fixed(steps * DROPS, 0) + " mL" : fixed(1e3 * si, 1) + " L";
    }

    /** What glue is sold by, m³: a litre, or a US quart. */
    double bottle() {
        return inch() ? QUART * FLUID_OUNCE : 1e-3;
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
