package hushmaze.air;

/**
 * A loss coefficient with its range.
 *
 * @param low low edge
 * @param likely value to expect
 * @param high high edge
 */
record Zeta(double low, double likely, double high) {
    /** A likely value with the same share of it to either side. */
    static Zeta around(double likely, double share) {
        return new Zeta(likely * (1 - share), likely, likely * (1 + share));
    }

    /** The same on another velocity: the factor is the square of this velocity over the other. */
    Zeta times(double factor) {
        return new Zeta(low * factor, likely * factor, high * factor);
    }

    /** The loss this coefficient causes at a velocity in m/s. */
    Loss loss(String key, String part, String source, double velocity, AirState air) {
        return new Loss(key, part, source, low, likely, high, velocity, air.dynamicPressure(velocity));
    }
}
