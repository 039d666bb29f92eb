package hushmaze.assess;

import hushmaze.quantity.Spectrum;

/**
 * The room with all its paths at work.
 *
 * @param pressure above the house with the door shut, Pa; null when it was not computed
 * @param co2Steady carbon dioxide after a long time, as a fraction by volume
 * @param temperatureRise of the air by the room's heat, K
 * @param supply air supplied, m³/s
 * @param extract air taken out by return and exhaust paths, m³/s
 * @param noise everything that is heard in it, pessimistic edge
 * @param rating of that level
 */
public record RoomResult(
        Double pressure,
        double co2Steady,
        double temperatureRise,
        double supply,
        double extract,
        RoomNoise noise,
        Rating rating) {
    /** All of it together, third octaves, dB. */
    public Spectrum level() {
        return noise.level();
    }
}
