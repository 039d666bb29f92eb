package hushmaze.assess;

import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.AWeighting;
import hushmaze.sound.criterion.CurveRating;
import hushmaze.sound.criterion.NoiseCriterion;
import hushmaze.sound.criterion.NoiseRating;
import hushmaze.sound.criterion.RoomCriterion;

/**
 * Single numbers of a level spectrum.
 *
 * @param nc noise criterion
 * @param nr noise rating
 * @param rc room criterion with its tags
 * @param dbA A-weighted level, dB
 */
public record Rating(CurveRating nc, CurveRating nr, RoomCriterion.Rating rc, double dbA) {
    /** The ratings of levels in octaves or third octaves, dB. */
    public static Rating of(Spectrum levels) {
        return new Rating(
                NoiseCriterion.rate(levels),
                NoiseRating.rate(levels),
                RoomCriterion.rate(levels),
                AWeighting.total(levels));
    }
}
