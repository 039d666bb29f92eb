package hushmaze.sound.estimate;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Loss of a plane wave at a sudden change of area.
 *
 * <p>Formula: D = 10 lg[(1 + m)² / (4 m)].
 *
 * <p>Symbols: D in dB; m ratio of the two areas, the same for either direction.
 *
 * <p>Source: as read in an engineering reference on duct area changes, whose example m = 5 gives 2.55 dB (printed 2.5).
 *
 * <p>Range: plane waves only, below the first cut-on f = c / (2 w) of the larger width w; above it the step is given no
 * loss.
 *
 * <p>Accuracy: exact for one step alone; two steps with little absorption between them interfere.
 *
 * <p>Differs from the source: nothing.
 */
final class AreaStep {
    private AreaStep() {}

    /** Loss of a step between two areas in m², dB. */
    public static double loss(double oneArea, double otherArea) {
        InvalidValue.within("area", oneArea, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        InvalidValue.within("area", otherArea, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        double m = oneArea / otherArea;
        return 10 * Math.log10((1 + m) * (1 + m) / (4 * m));
    }

    /** First cut-on of a rectangular duct, Hz: half a wavelength across its larger width in m. */
    public static double cutOn(double soundSpeed, double largerWidth) {
        return soundSpeed / (2 * largerWidth);
    }
}
