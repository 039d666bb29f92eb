package hushmaze.air.need;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Velocity of the air from an outlet at the nearest person, in the middle of the jet.
 *
 * <p>Formula: v = K v0 √A0 / x, never above v0; v0 velocity in the outlet, m/s; A0 its free area, m²; x distance, m; K 5,
 * from 4 to 7.
 *
 * <p>Source: decay in the main zone of a free round jet; K of compact openings from memory of common practice. Range:
 * compact outlets, distances above about K √A0; nearer than that the jet's core reaches and v0 is given. Accuracy: the
 * range. Differs from the source: none. Simplified: the air is taken as warm as the room and the jet as free; a jet along
 * a ceiling or wall reaches about 1.4 times as far (from memory), a cold one falls, a long slot decays more slowly.
 *
 * @param low m/s
 * @param likely m/s
 * @param high m/s
 */
public record JetVelocity(double low, double likely, double high) {
    /** Decay constants of compact openings, from memory. */
    private static final double K_LOW = 4;

    private static final double K_LIKELY = 5;
    private static final double K_HIGH = 7;

    /**
     * At a distance.
     *
     * @param outletArea free area, m²
     * @param outletVelocity m/s
     * @param distance from the outlet to the person, m
     */
    public static JetVelocity at(double outletArea, double outletVelocity, double distance) {
        InvalidValue.within("outletArea", outletArea, 1e-6, 10, Unit.SQUARE_CENTIMETRE);
        InvalidValue.within("outletVelocity", outletVelocity, 0, 50, Unit.METRE_PER_SECOND);
        InvalidValue.within("distance", distance, 0.01, 100, Unit.METRE);
        double share = Math.sqrt(outletArea) / distance;
        return new JetVelocity(
                outletVelocity * Math.min(1, K_LOW * share),
                outletVelocity * Math.min(1, K_LIKELY * share),
                outletVelocity * Math.min(1, K_HIGH * share));
    }
}
