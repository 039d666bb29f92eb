package hushmaze.assess;

import hushmaze.air.need.Co2Course;
import hushmaze.air.need.GoverningNeed;
import hushmaze.quantity.Spectrum;
import java.util.List;

/**
 * The room with all its paths at work.
 *
 * @param air pressure with the door shut and what each path then carries
 * @param need what each ground asks for; null when nothing is known of the use
 * @param flow air that comes into the room, m³/s: with the door shut and the high losses, or what the briefs ask for when
 *     that has no answer
 * @param co2Steady carbon dioxide after a long time with that air, as a fraction by volume
 * @param temperatureRise of the air by the room's heat, K
 * @param supply air the briefs of supply paths ask for, m³/s
 * @param extract air the briefs of return and exhaust paths ask for, m³/s
 * @param course carbon dioxide over the timetable, or over {@link #COURSE} with that air where there is none
 * @param sealed carbon dioxide over {@link #COURSE} with everybody in the room and the air off
 * @param draughts of the supply paths, at the nearest person
 * @param noise everything that is heard in it, pessimistic edge
 * @param rating of that level
 */
public record RoomResult(
        RoomAir air,
        GoverningNeed need,
        double flow,
        double co2Steady,
        double temperatureRise,
        double supply,
        double extract,
        Co2Course course,
        Co2Course sealed,
        List<DraughtAtPerson> draughts,
        RoomNoise noise,
        Rating rating) {
    /** Carbon dioxide above which people notice, fraction by volume; a common guideline. */
    public static final double NOTICED_CO2 = 1000e-6;
    /** Carbon dioxide that makes tired, fraction by volume; a common guideline. */
    public static final double STALE_CO2 = 1500e-6;
    /** How long carbon dioxide is followed, s. */
    public static final double COURSE = 7200;

    /** Share by which air may fall short of the need. */
    private static final double NEED_SLACK = 0.02;

    public RoomResult {
        draughts = List.copyOf(draughts);
    }

    /** Whether the air that comes in is what the room needs, or short of it by less than 2 %; only where there is a need. */
    public boolean isNeedMet() {
        return need.governing().flow() <= flow * (1 + NEED_SLACK);
    }

    /** Whether no air can come in: it is driven one way, and there is no way for it to go. */
    public boolean isWithoutAir() {
        return air.isWithoutAir(supply, extract);
    }

    /** Pressure in the room over that around it with the door shut, high losses, Pa; null when there is no answer. */
    public Double pressure() {
        return air.pressure();
    }

    /** All of it together, third octaves, dB. */
    public Spectrum level() {
        return noise.level();
    }
}
