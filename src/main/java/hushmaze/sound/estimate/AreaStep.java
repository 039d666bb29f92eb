package hushmaze.sound.estimate;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Loss of a plane wave at a sudden change of area.
 *
 * <p>Formula: D = 10 lg[(1 + m)² / (4 m)] up to a third of an octave below f = c / (2 w), nothing above f, between them a straight line
 * over lg f.
 *
 * <p>Symbols: D in dB; m ratio of the two areas, the same for either direction; f in Hz; c speed of sound in m/s; w larger
 * width of the larger side in m.
 *
 * <p>Source: as read in an engineering reference on duct area changes, whose example m = 5 gives 2.55 dB (printed 2.5).
 *
 * <p>Range: plane waves only, below the first cut-on of the larger width; above it the step is given no loss, with a notice
 * if there is a step at all.
 *
 * <p>Accuracy: exact for one step alone; two steps with little absorption between them interfere.
 *
 * <p>Differs from the source: the limit at the cut-on, which is textbook; the way down to it, so that a millimetre of width
 * does not take a band's loss away, is our own.
 */
final class AreaStep {
    /** A smaller loss is not worth a notice, dB. */
    private static final double WORTH_SAYING = 0.05;

    /** Natural logarithm of the frequency ratio over which the loss goes down to nothing. */
    private static final double FADING = Math.log(2) / 3;

    private AreaStep() {}

    /** Loss of a step between two areas in m², dB. */
    static double loss(double oneArea, double otherArea) {
        InvalidValue.within("area", oneArea, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        InvalidValue.within("area", otherArea, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        double m = oneArea / otherArea;
        return 10 * Math.log10((1 + m) * (1 + m) / (4 * m));
    }

    /** Loss of a step in all bands up to a cut-on in Hz; the part is what a notice calls it. */
    static BandLoss loss(double oneArea, double otherArea, double cutOn, String part) {
        double loss = loss(oneArea, otherArea);
        Spectrum thirds =
                Spectrum.ofFrequency(BandSet.THIRD_OCTAVE, f -> loss * Ramp.share(Math.log(cutOn / f), 0, FADING));
        double highest = BandSet.THIRD_OCTAVE.centreHz(BandSet.THIRD_OCTAVE.size() - 1);
        boolean cut = loss > WORTH_SAYING && cutOn <= highest;
        return BandLoss.atCentres(
                thirds,
                cut
                        ? List.of(Notice.of(
                                NoticeKind.STEP_BELOW_CUT_ON_ONLY, Severity.NOTE, part, highest, cutOn, Unit.HERTZ))
                        : List.of());
    }

    /** First cut-on of a rectangular duct, Hz: half a wavelength across its larger width in m. */
    static double cutOn(double soundSpeed, double largerWidth) {
        return soundSpeed / (2 * largerWidth);
    }
}
