package hushmaze.sound.criterion;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Weighted single number of a sound reduction index or a level difference: R_w, D_n,e,w, with the adaptation terms C and
 * C_tr.
 *
 * <p>Formula: the reference curve is shifted in steps of 1 dB as high as the sum of unfavourable deviations stays at most 32.0
 * dB; the number is its value at 500 Hz. C = X1 - R_w, C_tr = X2 - R_w, Xj = -10 lg Σ 10^((Lij - Ri)/10), rounded to whole
 * decibels.
 *
 * <p>Symbols: Ri loss in dB in third octaves 100 Hz to 3150 Hz, rounded to a tenth; Lij spectrum 1 (A-weighted pink noise) or 2
 * (A-weighted urban traffic noise) in dB.
 *
 * <p>Source: ISO 717-1; reference curve, rule and both spectra from memory. The worked example of its annex C (as read in a
 * public copy of table C.1) gives the same curve, deviations, number and terms.
 *
 * <p>Range: third octaves. Octaves are interpolated first, which the standard does not do; the rating then says so.
 *
 * <p>Accuracy: exact for the given spectrum.
 *
 * <p>Differs from the source: interpolation of octaves.
 *
 * @param number R_w or D_n,e,w, dB
 * @param c adaptation term C, dB
 * @param ctr adaptation term C_tr, dB
 * @param unfavourable sum of the unfavourable deviations, dB
 * @param worst band with the largest unfavourable deviation
 * @param byStandard whether the loss was given in third octaves
 */
public record WeightedReduction(int number, int c, int ctr, double unfavourable, Band worst, boolean byStandard) {
    private static final int FIRST = 3;
    /** Reference curve less its value at 500 Hz, 100 Hz to 3150 Hz: 33, 36, ... 56 dB. */
    private static final int[] CURVE = {-19, -16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4};
    /** A-weighted pink noise, dB. */
    private static final int[] PINK = {-29, -26, -23, -21, -19, -17, -15, -13, -12, -11, -10, -9, -9, -9, -9, -9};
    /** A-weighted urban traffic noise, dB. */
    private static final int[] TRAFFIC = {-20, -20, -18, -16, -15, -14, -13, -12, -11, -9, -8, -9, -10, -11, -13, -15};

    /**
     * The rating of a loss in dB.
     *
     * @throws InvalidValue if it is infinite in every band
     */
    public static WeightedReduction of(Spectrum loss) {
        Spectrum thirds = loss.interpolatedInThirds();
        Spectrum tenths = Spectrum.of(BandSet.THIRD_OCTAVE, i -> rounded(thirds.value(i), 10));
        ContourFit fit = ContourFit.highest(tenths, FIRST, CURVE, Double.POSITIVE_INFINITY);
        List<Band> bands = BandSet.THIRD_OCTAVE.bands();
        return new WeightedReduction(
                fit.number(),
                adapted(tenths, PINK) - fit.number(),
                adapted(tenths, TRAFFIC) - fit.number(),
                fit.sum(),
                bands.get(FIRST + fit.worst()),
                loss.bands() == BandSet.THIRD_OCTAVE);
    }

    /**
     * A loss with a given weighted number when nothing else is known: the reference curve 2 dB lower, so that its sixteen
     * deviations add up to 32 dB. Below 100 Hz it goes on at 3 dB a band, above 3150 Hz flat. The shape is an assumption; light
     * elements have less at low frequency and a dip at coincidence.
     *
     * @param number weighted figure, dB
     */
    public static Spectrum assumedShape(double number) {
        InvalidValue.within("weighted", number, -100, 1000, Unit.DECIBEL);
        double flat = ContourFit.MOST_TOGETHER / CURVE.length;
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> {
            int place = Math.min(i - FIRST, CURVE.length - 1);
            double shape = place >= 0 ? CURVE[place] : CURVE[0] + 3 * place;
            return number - flat + shape;
        });
    }

    private static int adapted(Spectrum loss, int[] spectrum) {
        double[] levels = new double[spectrum.length];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = spectrum[i] - loss.value(FIRST + i);
        }
        return (int) rounded(-Energy.sum(levels), 1);
    }

    /** Rounded half up to a whole number of parts of a decibel; infinite stays so. */
    static double rounded(double value, int parts) {
        return Double.isInfinite(value) ? value : Math.floor(value * parts + 0.5) / parts;
    }
}
