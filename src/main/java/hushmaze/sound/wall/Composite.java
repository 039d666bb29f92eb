package hushmaze.sound.wall;

import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Transmission loss of a surface made of parts.
 *
 * <p>Formula: TL = -10 lg(Σ τi Si / Σ Si), τi = 10^(-TLi/10).
 *
 * <p>Symbols: TL in dB; S area in m²; τ transmission coefficient.
 *
 * <p>Source: textbook form, as read in <i>Engineering Acoustics</i>, example 12.13 (a brick wall with a window, 44.8 dB).
 *
 * <p>Range: parts that are large to the wavelength, or leaks with τ = 1.
 *
 * <p>Accuracy: exact for the given parts.
 *
 * <p>Differs from the source: nothing.
 */
public final class Composite {
    private Composite() {}

    /**
     * Loss of the whole, dB.
     *
     * @param areas of the parts, m²
     * @param losses of the parts, dB; zero for a hole
     */
    public static double transmissionLoss(double[] areas, double[] losses) {
        if (areas.length != losses.length || areas.length == 0) {
            throw new IllegalArgumentException(areas.length + " areas and " + losses.length + " losses");
        }
        double through = 0;
        double whole = 0;
        for (int i = 0; i < areas.length; i++) {
            InvalidValue.within("area", areas[i], 0, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
            through += areas[i] * Energy.ratio(-losses[i]);
            whole += areas[i];
        }
        return -Energy.db(through / whole);
    }
}
