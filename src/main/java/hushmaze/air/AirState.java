package hushmaze.air;

import hushmaze.project.Room;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * The state of still, dry air at a height above the sea and a temperature.
 *
 * <p>Formulas: pressure p = 101325 Pa · (1 - 0.0065 h / 288.15)^5.256; density ρ = p / (287.053 T); viscosity μ =
 * 1.458e-6 T^1.5 / (T + 110.4); speed of sound c = √(1.4 · 287.053 T); with h the height above the sea in m and T the
 * absolute temperature of the air in K.
 *
 * <p>Source: International Standard Atmosphere (ICAO Doc 7488) for the pressure, as read in a public code of it; the
 * exponent is g / (R · lapse rate). Gas law for the density at the real temperature. Sutherland's constants from memory;
 * they give the published 1.789e-5 Pa·s at 15 °C. Range: -500 m to 11 000 m, -60 °C to 100 °C; outside is refused.
 * Accuracy: 0.02 % of the printed atmosphere; the weather moves the pressure by about 3 %. Differs from the source:
 * humidity is left out, which makes the density at most 1 % too high at room temperature.
 *
 * @param density kg/m³
 * @param viscosity dynamic viscosity, Pa·s
 * @param soundSpeed m/s
 * @param temperature °C
 * @param pressure absolute, Pa
 */
public record AirState(double density, double viscosity, double soundSpeed, double temperature, double pressure) {
    /** Absolute temperature at 0 °C, K. */
    private static final double ZERO_CELSIUS = 273.15;
    /** Gas constant of dry air, J/(kg·K). */
    private static final double GAS_CONSTANT = 287.053;
    /** Ratio of the specific heats. */
    private static final double GAMMA = 1.4;
    /** Pressure at sea level, Pa. */
    private static final double SEA_PRESSURE = 101_325;
    /** Temperature at sea level, K. */
    private static final double SEA_TEMPERATURE = 288.15;
    /** Fall of temperature with height, K/m. */
    private static final double LAPSE_RATE = 0.0065;
    /** Exponent of the pressure: 9.80665 / (287.053 · 0.0065), printed as 5.256. */
    private static final double PRESSURE_EXPONENT = 9.80665 / (GAS_CONSTANT * LAPSE_RATE);
    /** Sutherland's factor, Pa·s/√K. */
    private static final double SUTHERLAND_FACTOR = 1.458e-6;
    /** Sutherland's temperature, K. */
    private static final double SUTHERLAND_TEMPERATURE = 110.4;

    /**
     * The air at a height and temperature.
     *
     * @param altitude above the sea, m
     * @param temperature °C
     */
    public static AirState of(double altitude, double temperature) {
        InvalidValue.within("altitude", altitude, -500, 11_000, Unit.METRE);
        InvalidValue.within("airTemperature", temperature, -60, 100, Unit.CELSIUS);
        double kelvin = temperature + ZERO_CELSIUS;
        // standard atmosphere, pressure in the layer of constant lapse rate
        double pressure = SEA_PRESSURE * Math.pow(1 - LAPSE_RATE * altitude / SEA_TEMPERATURE, PRESSURE_EXPONENT);
        // Sutherland's law
        double viscosity = SUTHERLAND_FACTOR * Math.pow(kelvin, 1.5) / (kelvin + SUTHERLAND_TEMPERATURE);
        return new AirState(
                pressure / (GAS_CONSTANT * kelvin),
                viscosity,
                Math.sqrt(GAMMA * GAS_CONSTANT * kelvin),
                temperature,
                pressure);
    }

    /** The air in a room. */
    public static AirState of(Room room) {
        return of(room.altitude(), room.airTemperature());
    }

    /** Density times velocity squared over two, Pa; velocity in m/s. */
    public double dynamicPressure(double velocity) {
        return density * velocity * velocity / 2;
    }

    /** Reynolds number on the hydraulic diameter; velocity in m/s, diameter in m. */
    public double reynolds(double velocity, double hydraulicDiameter) {
        return density * velocity * hydraulicDiameter / viscosity;
    }
}
