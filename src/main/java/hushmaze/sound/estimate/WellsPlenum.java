package hushmaze.sound.estimate;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Transmission loss of a lined plenum at frequencies where its field is diffuse.
 *
 * <p>Formula: TL = -10 lg{So [cos θ / (2 π s²) + (1 - α) / (α A)]}.
 *
 * <p>Symbols: TL in dB; So outlet area and A inner surface in m²; s slant distance between the openings in m; θ angle at
 * the inlet between its axis and that distance; α mean absorption coefficient.
 *
 * <p>Source: Wells (Noise Control, 1958; citation from memory), formula as read in an engineering reference on chamber
 * attenuation, whose worked example prints 17.3 dB (computed with 0.3 m² though it states 0.25 m²).
 *
 * <p>Range: wavelength small against the plenum and not below the first cut-on of the inlet; {@link TwoRegionPlenum} keeps
 * to the second and gives a notice of the first. Read with the angle of parallel axes.
 *
 * <p>Accuracy: about 3 dB; known to be low at some angles and high below 250 Hz (from memory).
 *
 * <p>Differs from the source: α is held below 0.99; a result below zero is given as zero.
 */
final class WellsPlenum {
    /** Highest mean absorption the formula is used with. */
    static final double MOST_ABSORPTION = 0.99;

    private WellsPlenum() {}

    /**
     * Transmission loss, dB, at least zero.
     *
     * @param outletArea m²
     * @param innerArea of the whole chamber, m²
     * @param slant distance from inlet to outlet, m
     * @param cosine of the angle between the inlet's axis and that distance, 0 to 1
     * @param absorption mean coefficient, above 0 to 1
     */
    static double transmissionLoss(
            double outletArea, double innerArea, double slant, double cosine, double absorption) {
        InvalidValue.within("outletArea", outletArea, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        InvalidValue.within("innerArea", innerArea, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        InvalidValue.within("slant", slant, 1e-6, Double.POSITIVE_INFINITY, Unit.METRE);
        InvalidValue.within("cosine", cosine, 0, 1, Unit.NUMBER);
        InvalidValue.within("absorption", absorption, 1e-6, 1, Unit.NUMBER);
        double alpha = Math.min(MOST_ABSORPTION, absorption);
        double direct = cosine / (2 * Math.PI * slant * slant);
        double reverberant = (1 - alpha) / (alpha * innerArea);
        return Math.max(0, -10 * Math.log10(outletArea * (direct + reverberant)));
    }
}
