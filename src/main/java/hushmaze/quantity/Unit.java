package hushmaze.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit in which people type, read or store a quantity. Inside the program every quantity is in the SI unit of its
 * dimension (metre, cubic metre per second, pascal, ...); only the edges convert.
 *
 * <p>Units that differ from SI by a power of ten are converted by shifting the decimal point of the shortest decimal
 * form; {@link #decimalFromSi} and {@link #toSi(BigDecimal)} do so without loss, so that a number written to a file and
 * read back is the same number to the last bit.
 */
public enum Unit {
    METRE(Dimension.LENGTH, "m", "M", 0),
    MILLIMETRE(Dimension.LENGTH, "mm", "Mm", -3),
    CENTIMETRE(Dimension.LENGTH, "cm", "Cm", -2),
    INCH(Dimension.LENGTH, "in", "In", 0.0254),
    FOOT(Dimension.LENGTH, "ft", "Ft", 0.3048),
    SQUARE_METRE(Dimension.AREA, "m²", "M2", 0),
    SQUARE_CENTIMETRE(Dimension.AREA, "cm²", "Cm2", -4),
    SQUARE_FOOT(Dimension.AREA, "ft²", "Ft2", 0.09290304),
    CUBIC_METRE(Dimension.VOLUME, "m³", "M3", 0),
    CUBIC_FOOT(Dimension.VOLUME, "ft³", "Ft3", 0.028316846592),
    CUBIC_METRE_PER_SECOND(Dimension.FLOW, "m³/s", "M3ps", 0),
    LITRE_PER_SECOND(Dimension.FLOW, "L/s", "Lps", -3),
    CUBIC_METRE_PER_HOUR(Dimension.FLOW, "m³/h", "M3ph", 1 / 3600.0),
    CUBIC_FOOT_PER_MINUTE(Dimension.FLOW, "cfm", "Cfm", 0.028316846592 / 60),
    METRE_PER_SECOND(Dimension.VELOCITY, "m/s", "Mps", 0),
    FOOT_PER_MINUTE(Dimension.VELOCITY, "ft/min", "Fpm", 0.3048 / 60),
    PASCAL(Dimension.PRESSURE, "Pa", "Pa", 0),
    GIGAPASCAL(Dimension.PRESSURE, "GPa", "GPa", 9),
    /** Conventional inch of water, 249.08891 Pa. */
    INCH_OF_WATER(Dimension.PRESSURE, "inH2O", "InH2O", 249.08891),
    KILOGRAM(Dimension.MASS, "kg", "Kg", 0),
    POUND(Dimension.MASS, "lb", "Lb", 0.45359237),
    NEWTON(Dimension.FORCE, "N", "N", 0),
    KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, "kg/m³", "KgPerM3", 0),
    PASCAL_SECOND_PER_SQUARE_METRE(Dimension.FLOW_RESISTIVITY, "Pa·s/m²", "PaSPerM2", 0),
    GRAM_PER_SQUARE_METRE(Dimension.MASS_PER_AREA, "g/m²", "GPerM2", -3),
    PASCAL_SECOND_PER_METRE(Dimension.FLOW_RESISTANCE, "Pa·s/m", "PaSPerM", 0),
    WATT(Dimension.POWER, "W", "W", 0),
    WATT_PER_KELVIN(Dimension.CONDUCTANCE, "W/K", "WPerK", 0),
    CELSIUS(Dimension.TEMPERATURE, "°C", "C", 0),
    /** Zero of this one is elsewhere: t/°F = 1.8 t/°C + 32. */
    FAHRENHEIT(Dimension.TEMPERATURE, "°F", "F", 1 / 1.8) {
        @Override
        public double toSi(double value) {
            return Double.isFinite(value) ? toSi(BigDecimal.valueOf(value)) : value;
        }

        @Override
        public double toSi(BigDecimal value) {
            return value.subtract(FREEZING)
                    .divide(DEGREES_A_KELVIN, MathContext.DECIMAL64)
                    .doubleValue();
        }

        @Override
        public double fromSi(double si) {
            return si * DEGREES_A_KELVIN.doubleValue() + FREEZING.doubleValue();
        }
    },
    DECIBEL(Dimension.LEVEL, "dB", "Db", 0),
    HERTZ(Dimension.FREQUENCY, "Hz", "Hz", 0),
    NUMBER(Dimension.FRACTION, "", "", 0),
    PERCENT(Dimension.FRACTION, "%", "Percent", -2),
    PARTS_PER_MILLION(Dimension.CONCENTRATION, "ppm", "Ppm", -6);

    private static final BigDecimal FREEZING = BigDecimal.valueOf(32);
    private static final BigDecimal DEGREES_A_KELVIN = new BigDecimal("1.8");

    private final Dimension dimension;
    private final String symbol;
    private final String suffix;
    private final int powerOfTen;
    private final double factor;

    Unit(Dimension dimension, String symbol, String suffix, int powerOfTen) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.suffix = suffix;
        this.powerOfTen = powerOfTen;
        this.factor = 0;
    }

    Unit(Dimension dimension, String symbol, String suffix, double factor) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.suffix = suffix;
        this.powerOfTen = 0;
        this.factor = factor;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** As printed: "mm", "L/s". */
    public String symbol() {
        return symbol;
    }

    /** As it ends a field's name in files: "Mm", "Lps". */
    public String suffix() {
        return suffix;
    }

    /** A value in this unit, in SI; the factor is applied in decimals, so that 6 in is 0.1524 m and no digit more. */
    public double toSi(double value) {
        if (!Double.isFinite(value)) {
            return value;
        }
        return factor != 0 ? times(BigDecimal.valueOf(value)) : shift(value, powerOfTen);
    }

    /** A value in SI, in this unit. */
    public double fromSi(double si) {
        return factor != 0 ? si / factor : shift(si, -powerOfTen);
    }

    /** A decimal number in this unit, in SI; exact for units that differ from SI by a power of ten. */
    public double toSi(BigDecimal value) {
        return factor != 0 ? times(value) : value.scaleByPowerOfTen(powerOfTen).doubleValue();
    }

    /**
     * A finite value in SI, in this unit, with all the digits that {@link #toSi(BigDecimal)} needs to give the same number
     * back. (A double would not do: 0.5200000000000001 m and its neighbour are the same number of millimetres.)
     */
    public BigDecimal decimalFromSi(double si) {
        return factor != 0
                ? BigDecimal.valueOf(fromSi(si))
                : BigDecimal.valueOf(si).scaleByPowerOfTen(-powerOfTen);
    }

    private double times(BigDecimal value) {
        return value.multiply(BigDecimal.valueOf(factor)).doubleValue();
    }

    private static double shift(double value, int places) {
        if (places == 0 || !Double.isFinite(value)) {
            return value;
        }
        return BigDecimal.valueOf(value).scaleByPowerOfTen(places).doubleValue();
    }
}
