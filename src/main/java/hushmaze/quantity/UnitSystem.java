package hushmaze.quantity;

/** In which units sizes are shown and printed. */
public enum UnitSystem {
    /** Millimetres, litres per second, kilograms. */
    METRIC,
    /** Inches with fractions, cubic feet per minute, pounds. */
    INCH
}
