package hushmaze.sound.criterion;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;

/**
 * Noise criterion, NC: the number of the highest curve that an octave spectrum touches.
 *
 * <p>Formula: in each octave band 63 Hz to 8 kHz the level is placed between the two neighbouring curves in a straight
 * line; the rating is the highest of the eight places (tangency).
 *
 * <p>Symbols: levels in dB re 20 µPa per octave band; NC without unit.
 *
 * <p>Source: the curves of Beranek (1957, citation from memory); values NC 15 to NC 70 as read in two published copies
 * of the table, which agree.
 *
 * <p>Range: NC 15 to NC 70. Below the lowest curve and above the highest no number is given.
 *
 * <p>Accuracy: the printed curves are whole decibels, so a number is good to about 0.5.
 *
 * <p>Differs from the source: fractions between the printed steps of 5, by straight lines.
 */
public final class NoiseCriterion {
    /** Lowest printed curve. */
    public static final double LOWEST = 15;
    /** Highest printed curve. */
    public static final double HIGHEST = 70;

    private static final double STEP = 5;

    // Rows NC 15, 20, ... 70; columns 63, 125, 250, 500, 1000, 2000, 4000, 8000 Hz; dB.
    private static final double[][] CURVES = {
        {47, 36, 29, 22, 17, 14, 12, 11},
        {51, 40, 33, 26, 22, 19, 17, 16},
        {54, 44, 37, 31, 27, 24, 22, 21},
        {57, 48, 41, 35, 31, 29, 28, 27},
        {60, 52, 45, 40, 36, 34, 33, 32},
        {64, 56, 50, 45, 41, 39, 38, 37},
        {67, 60, 54, 49, 46, 44, 43, 42},
        {71, 64, 58, 54, 51, 49, 48, 47},
        {74, 67, 62, 58, 56, 54, 53, 52},
        {77, 71, 67, 63, 61, 59, 58, 57},
        {80, 75, 71, 68, 66, 64, 63, 62},
        {83, 79, 75, 72, 71, 70, 69, 68},
    };

    private NoiseCriterion() {}

    /** The curve of a number from 15 to 70, octaves, dB. */
    public static Spectrum curve(double number) {
        InvalidValue.within("nc", number, LOWEST, HIGHEST, Unit.NUMBER);
        double place = (number - LOWEST) / STEP;
        int row = Math.min((int) place, CURVES.length - 2);
        double share = place - row;
        return Spectrum.of(BandSet.OCTAVE, i -> CURVES[row][i] + share * (CURVES[row + 1][i] - CURVES[row][i]));
    }

    /** The rating of levels; thirds are summed to octaves first. */
    public static CurveRating rate(Spectrum levels) {
        Spectrum octaves = levels.levelsInOctaves();
        int governing = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < octaves.size(); i++) {
            double number = place(i, octaves.value(i));
            if (number > highest) {
                highest = number;
                governing = i;
            }
        }
        return CurveRating.of(highest, LOWEST, HIGHEST, BandSet.OCTAVE.bands().get(governing));
    }

    /** Place of a level on the scale of one band; beyond the printed curves only good for comparing bands. */
    private static double place(int band, double level) {
        int row = 0;
        while (row < CURVES.length - 2 && level > CURVES[row + 1][band]) {
            row++;
        }
        double low = CURVES[row][band];
        return LOWEST + STEP * (row + (level - low) / (CURVES[row + 1][band] - low));
    }
}
