package hushmaze.air.need;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Share of people who feel a draught.
 *
 * <p>Formula: DR = (34 - t) (v - 0.05)^0.62 (0.37 v Tu + 3.14), %; t temperature of the air, °C; v mean velocity, m/s; Tu
 * intensity of turbulence, %. Velocities below 0.05 m/s count as 0.05; results above 100 % as 100 %.
 *
 * <p>Source: ISO 7730, as read in two public codes of it that agree. Range: 20 to 26 °C, 0.05 to 0.4 m/s, Tu 0 to 70 %;
 * outside it the formula is still computed, {@link #inRange} says so. 34 °C and above is refused. Accuracy: the Danish
 * building regulations' table of velocities for DR 20 % is met within its printed digits, 18 to 28 °C. Differs from the
 * source: none. Limits: 10, 20 and 30 % for the categories A, B and C.
 */
public final class Draught {
    /** Intensity of turbulence to suppose where nothing is known, %. */
    public static final double USUAL_TURBULENCE = 40;

    /** Temperature of the skin in the formula, °C. */
    private static final double SKIN = 34;
    /** Velocity that is not felt, m/s. */
    private static final double STILL = 0.05;

    private static final double MAX_TEMPERATURE = 33.9;
    private static final double MAX_VELOCITY = 50;
    private static final double TOLERANCE = 1e-12;

    private Draught() {}

    /**
     * Draught rate, %.
     *
     * @param velocity mean, m/s
     * @param temperature of the air, °C
     * @param turbulence intensity, %
     */
    public static double rate(double velocity, double temperature, double turbulence) {
        InvalidValue.within("velocity", velocity, 0, MAX_VELOCITY, Unit.METRE_PER_SECOND);
        check(temperature, turbulence);
        return Math.min(100, unheld(velocity, temperature, turbulence));
    }

    /** Whether the formula was made for these; units as in {@link #rate}. */
    public static boolean inRange(double velocity, double temperature, double turbulence) {
        return velocity <= 0.4 && temperature >= 20 && temperature <= 26 && turbulence >= 0 && turbulence <= 70;
    }

    /**
     * Velocity at which the draught rate has a value, m/s.
     *
     * @param rate wanted, %, above 0 and below 100
     * @param temperature of the air, °C
     * @param turbulence intensity, %
     */
    public static double velocityFor(double rate, double temperature, double turbulence) {
        InvalidValue.within("draughtRate", rate, 0.01, 99.99, Unit.NUMBER);
        check(temperature, turbulence);
        double low = STILL;
        double high = 2 * STILL;
        // The rate rises with the velocity without end, so this ends.
        while (unheld(high, temperature, turbulence) < rate) {
            low = high;
            high *= 2;
        }
        while (high - low > TOLERANCE * high) {
            double mid = (low + high) / 2;
            if (unheld(mid, temperature, turbulence) < rate) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return (low + high) / 2;
    }

    private static void check(double temperature, double turbulence) {
        InvalidValue.within("airTemperature", temperature, -30, MAX_TEMPERATURE, Unit.CELSIUS);
        InvalidValue.within("turbulence", turbulence, 0, 100, Unit.NUMBER);
    }

    private static double unheld(double velocity, double temperature, double turbulence) {
        double v = Math.max(STILL, velocity);
        return (SKIN - temperature) * Math.pow(v - STILL, 0.62) * (0.37 * v * turbulence + 3.14);
    }
}
