package hushmaze.assess;

import hushmaze.air.need.Co2Course;
import hushmaze.quantity.Spectrum;

/**
 * The room with all its paths at work.
 *
 * @param air pressure with the door shut and what each path then carries
 * @param co2Steady carbon dioxide after a long time, as a fraction by volume
 * @param temperatureRise of the air by the room's heat, K
 * @param supply air supplied, m³/s
 * @param extract air taken out by return and exhaust paths, m³/s
 * @param course carbon dioxide over {@link #COURSE} with all paths at work, from the level of the air supplied
 * @param sealed the same with the air off
 * @param noise everything that is heard in it, pessimistic edge
 * @param rating of that level
 */
public record RoomResult(
        RoomAir air,
        double co2Steady,
        double temperatureRise,
        double supply,
        double extract,
        Co2Course course,
        Co2Course sealed,
        RoomNoise noise,
        Rating rating) {
    /** Carbon dioxide above which people notice, fraction by volume; a common guideline. */
    public static final double NOTICED_CO2 = 1000e-6;
    /** Carbon dioxide that makes tired, fraction by volume; a common guideline. */
    public static final double STALE_CO2 = 1500e-6;
    /** How long carbon dioxide is followed, s. */
    public static final double COURSE = 7200;

    /** Pressure in the room over that around it with the door shut, high losses, Pa; null when there is no answer. */
    public Double pressure() {
        return air.pressure();
    }

    /** All of it together, third octaves, dB. */
    public Spectrum level() {
        return noise.level();
    }
}
