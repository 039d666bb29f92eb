package hushmaze.sound.criterion;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;

/**
 * Sound transmission class, STC.
 *
 * <p>Formula: the contour is shifted in steps of 1 dB as high as the sum of deficiencies stays at most 32 dB and none is more
 * than 8 dB; the class is its value at 500 Hz.
 *
 * <p>Symbols: loss in dB in third octaves 125 Hz to 4 kHz, rounded to whole decibels.
 *
 * <p>Source: ASTM E413; contour and rules from memory, the contour the same in two public programs.
 *
 * <p>Range: third octaves. Octaves are interpolated first, which the standard does not do; the class then says so. For
 * seventeen partitions printed with octaves and class it comes within 1 for fourteen and within 3 for all: narrow dips are
 * lost.
 *
 * <p>Accuracy: exact for third octaves.
 *
 * <p>Differs from the source: interpolation of octaves.
 *
 * @param number the class
 * @param deficiency sum of the deficiencies, dB
 * @param largest deficiency in one band, dB
 * @param worst band that has it
 * @param byStandard whether the loss was given in third octaves
 */
public record SoundTransmissionClass(int number, double deficiency, double largest, Band worst, boolean byStandard) {
    private static final int FIRST = 4;
    private static final int MOST_IN_ONE_BAND = 8;
    /** Contour less its value at 500 Hz, 125 Hz to 4 kHz. */
    private static final int[] CONTOUR = {-16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4, 4};

    /**
     * The class of a loss in dB.
     *
     * @throws InvalidValue if it is infinite in every band
     */
    public static SoundTransmissionClass of(Spectrum loss) {
        Spectrum thirds = loss.interpolatedInThirds();
        Spectrum whole = Spectrum.of(BandSet.THIRD_OCTAVE, i -> WeightedReduction.rounded(thirds.value(i), 1));
        ContourFit fit = ContourFit.highest(whole, FIRST, CONTOUR, MOST_IN_ONE_BAND);
        return new SoundTransmissionClass(
                fit.number(),
                fit.sum(),
                fit.largest(),
                BandSet.THIRD_OCTAVE.bands().get(FIRST + fit.worst()),
                loss.bands() == BandSet.THIRD_OCTAVE);
    }
}
