package hushmaze.air;

/**
 * A louvre against rain with a mesh of 20 mm behind it, at the outer end of a path.
 *
 * <p>Loss coefficient on the velocity in the whole face of the louvre: 8 (7 to 9) where the air blows out, 9 (8 to 10)
 * where it is drawn in.
 *
 * <p>Source: printed table of loss coefficients of ventilation parts, as read. Range: louvres of Z-shaped blades. Accuracy:
 * the printed range; the middle of it is taken as likely. Differs from the source: the source does not say which area the
 * velocity is of; the whole face is our reading.
 */
final class WeatherLouvre {
    static final String SOURCE = "table of loss coefficients of ventilation parts";
    private static final Zeta OUT = new Zeta(7, 8, 9);
    private static final Zeta IN = new Zeta(8, 9, 10);

    private WeatherLouvre() {}

    /** Loss coefficient on the velocity in the whole face; outwards when the air blows out. */
    static Zeta zeta(boolean outwards) {
        return outwards ? OUT : IN;
    }
}
