package hushmaze.sound.criterion;

import hushmaze.quantity.Band;
import java.util.OptionalDouble;

/**
 * A spectrum held against a family of curves.
 *
 * @param place whether the number is on the family's scale
 * @param number the rating; empty when {@code place} is not {@link Place#WITHIN}
 * @param governing the octave band that decides: the one highest up the scale
 */
public record CurveRating(Place place, OptionalDouble number, Band governing) {
    /** Where a rating is on the scale of its curves. */
    public enum Place {
        /** Every band is below the lowest curve. */
        BELOW,
        /** Between the lowest and the highest curve. */
        WITHIN,
        /** At least one band is above the highest curve: no number is given. */
        ABOVE
    }

    /** The rating of a number on a scale, or of one beyond its ends. */
    static CurveRating of(double number, double lowest, double highest, Band governing) {
        if (number < lowest) {
            return new CurveRating(Place.BELOW, OptionalDouble.empty(), governing);
        }
        if (number > highest) {
            return new CurveRating(Place.ABOVE, OptionalDouble.empty(), governing);
        }
        return new CurveRating(Place.WITHIN, OptionalDouble.of(number), governing);
    }
}
