package hushmaze.sound.criterion;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.OptionalDouble;

/**
 * Room criterion, RC: how loud a room is to speech, and whether it rumbles or hisses.
 *
 * <p>Formula: RC = (L500 + L1000 + L2000) / 3. The curve of a number is the straight line of -5 dB per octave that has the
 * number at 1 kHz. Rumble, R: an octave up to 500 Hz more than 5 dB above the curve of the rating. Hiss, H: an octave from 1
 * to 4 kHz more than 3 dB above it. Neither: neutral, N.
 *
 * <p>Symbols: L level in dB re 20 µPa per octave band; RC without unit.
 *
 * <p>Source: the curves of Blazier (1981, citation from memory); rating and limits as read in two published guides to
 * ventilation noise, which agree; an online reference gives 5 dB for hiss.
 *
 * <p>Range: printed from RC 25 to 50; the line is defined for any number. A room without any sound in one of the three
 * octaves has no number.
 *
 * <p>Accuracy: the definition. Printed ratings are whole numbers, these have fractions.
 *
 * <p>Differs from the source: the octaves at 16 and 31.5 Hz are left out, since the program works from 63 Hz up: rumble
 * there and vibration that is felt are not found. The line is carried on to 8 kHz, where the source has none, so that it can
 * be a limit.
 */
public final class RoomCriterion {
    private static final double SLOPE = 5;
    private static final double RUMBLE = 5;
    private static final double HISS = 3;
    private static final double LOWEST = -50;
    private static final double HIGHEST = 130;

    private static final int AT_500 = 3;
    private static final int AT_1000 = 4;
    private static final int AT_2000 = 5;
    private static final int AT_4000 = 6;

    private RoomCriterion() {}

    /**
     * A spectrum rated.
     *
     * @param number mean of the three speech octaves; empty where one of them is silent
     * @param rumble whether it rumbles
     * @param hiss whether it hisses
     * @param governing the octave that is furthest above its limit for rumble or hiss, or nearest to it
     */
    public record Rating(OptionalDouble number, boolean rumble, boolean hiss, Band governing) {
        /** "N", "R", "H" or "RH"; empty where there is no number. */
        public String tag() {
            if (number.isEmpty()) {
                return "";
            }
            String tag = (rumble ? "R" : "") + (hiss ? "H" : "");
            return tag.isEmpty() ? "N" : tag;
        }
    }

    /** The curve of a number from -50 to 130, octaves, dB. */
    public static Spectrum curve(double number) {
        return line(InvalidValue.within("rc", number, LOWEST, HIGHEST, Unit.NUMBER));
    }

    private static Spectrum line(double number) {
        return Spectrum.of(BandSet.OCTAVE, i -> number - SLOPE * (i - AT_1000));
    }

    /** The rating of levels; thirds are summed to octaves first. */
    public static Rating rate(Spectrum levels) {
        Spectrum octaves = levels.levelsInOctaves();
        double number = (octaves.value(AT_500) + octaves.value(AT_1000) + octaves.value(AT_2000)) / 3;
        if (number == Double.NEGATIVE_INFINITY) {
            return new Rating(
                    OptionalDouble.empty(), false, false, BandSet.OCTAVE.bands().get(AT_1000));
        }
        Spectrum line = line(number);
        boolean rumble = false;
        boolean hiss = false;
        int governing = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= AT_4000; i++) {
            double above = octaves.value(i) - line.value(i) - (i <= AT_500 ? RUMBLE : HISS);
            rumble |= i <= AT_500 && above > 0;
            hiss |= i > AT_500 && above > 0;
            if (above > highest) {
                highest = above;
                governing = i;
            }
        }
        return new Rating(
                OptionalDouble.of(number), rumble, hiss, BandSet.OCTAVE.bands().get(governing));
    }
}
