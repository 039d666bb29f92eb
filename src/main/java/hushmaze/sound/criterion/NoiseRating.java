package hushmaze.sound.criterion;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;

/**
 * Noise rating, NR: the number of the highest curve that an octave spectrum touches.
 *
 * <p>Formula: L = a + b · NR in each octave band; the rating is the highest (L - a) / b.
 *
 * <p>Symbols: L level in dB re 20 µPa per octave band; a in dB and b without unit, one pair per band.
 *
 * <p>Source: ISO 1996:1971 (annex on noise rating); the coefficients as read in a published explanation of the curves,
 * except at 500 Hz: that copy prints a = 4.2 and b = 0.98, the standard has 4.8 and 0.974 (from memory). The standard's
 * pair is used; the other lies 0.5 dB lower at NR 20.
 *
 * <p>Range: the curves are defined from NR 0; the program gives numbers from 0 to 130.
 *
 * <p>Accuracy: the coefficients are the definition; 0.1 dB.
 *
 * <p>Differs from the source: the octave at 31.5 Hz is left out, since the program works from 63 Hz up.
 */
public final class NoiseRating {
    /** Lowest curve. */
    public static final double LOWEST = 0;
    /** Highest curve. */
    public static final double HIGHEST = 130;

    // 63, 125, 250, 500, 1000, 2000, 4000, 8000 Hz; a in dB.
    private static final double[] A = {35.4, 22, 12, 4.8, 0, -3.5, -6.1, -8};
    private static final double[] B = {0.79, 0.87, 0.93, 0.974, 1, 1.015, 1.025, 1.03};

    private NoiseRating() {}

    /** The curve of a number from 0 to 130, octaves, dB. */
    public static Spectrum curve(double number) {
        return shape(InvalidValue.within("nr", number, LOWEST, HIGHEST, Unit.NUMBER));
    }

    /** The formula of the curves for any number, also below NR 0, where it is no standard curve. */
    static Spectrum shape(double number) {
        return Spectrum.of(BandSet.OCTAVE, i -> A[i] + B[i] * number);
    }

    /** The rating of levels; thirds are summed to octaves first. */
    public static CurveRating rate(Spectrum levels) {
        Spectrum octaves = levels.levelsInOctaves();
        int governing = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < octaves.size(); i++) {
            double number = (octaves.value(i) - A[i]) / B[i];
            if (number > highest) {
                highest = number;
                governing = i;
            }
        }
        return CurveRating.of(highest, LOWEST, HIGHEST, BandSet.OCTAVE.bands().get(governing));
    }
}
