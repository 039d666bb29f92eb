package hushmaze.air.need;

import hushmaze.project.Activity;

/**
 * What a person gives off by what they do: carbon dioxide and heat.
 *
 * <p>Source of the heat: ASHRAE Handbook, Fundamentals, 2009, table 1 of people's heat, room at 24 °C, adjusted to a usual
 * mix of men, women and children, as read. Source of the metabolic rates: each with its value. Range: rooms about 24 °C;
 * at 27 °C the sensible heat is about 20 % less and the latent heat as much more (as read). Accuracy: metabolic rates
 * about 20 %, our judgement; hard playing, such as drums, is nearer to 3.8 met (compendium of physical activities, from
 * memory).
 *
 * @param met metabolic rate, met of 58.2 W/m²
 * @param sensible heat that warms the air, W a person
 * @param latent heat that leaves as moisture and does not warm the air, W a person
 */
public record PersonRates(double met, double sensible, double latent) {
    /** Body area of an adult, m²; the usual round figure. */
    public static final double ADULT_AREA = 1.8;
    /** Basal metabolic rate of an adult man, MJ a day; from memory of the paper named in {@link PersonCo2}. */
    private static final double ADULT_BASAL_RATE = 7.73;
    /** 20 °C in K. */
    private static final double ROOM_KELVIN = 293.15;

    private static final double SEA_PRESSURE = 101_325;

    /** Met from memory (ISO 7730: seated, relaxed). Heat: seated at a theatre, evening. */
    private static final PersonRates SEATED_QUIET = new PersonRates(1.0, 70, 35);
    /** Met from memory (ISO 7730: sedentary work). Heat: seated, very light work. */
    private static final PersonRates SEATED_WORK = new PersonRates(1.2, 70, 45);
    /** Met from memory (ISO 7730: standing, light activity). Heat: standing, light work. */
    private static final PersonRates STANDING_PLAYING = new PersonRates(1.6, 75, 55);
    /** Met computed: 265 W of an adult man over 1.8 m² of body and 58.2 W/m² a met. Heat: moderate dancing. */
    private static final PersonRates MODERATE_DANCING = new PersonRates(2.5, 90, 160);

    /** Of a person who does this. */
    public static PersonRates of(Activity activity) {
        return switch (activity) {
            case SEATED_QUIET -> SEATED_QUIET;
            case SEATED_WORK -> SEATED_WORK;
            case STANDING_PLAYING -> STANDING_PLAYING;
            case MODERATE_DANCING -> MODERATE_DANCING;
        };
    }

    /** Carbon dioxide given off, by body area, m³/s a person. */
    public double co2() {
        return PersonCo2.byBodyArea(ADULT_AREA, met);
    }

    /** The same by basal rate of an adult man, 20 °C at sea level, for comparison; m³/s a person. */
    public double co2ByBasalRate() {
        return PersonCo2.byBasalRate(ADULT_BASAL_RATE, met, ROOM_KELVIN, SEA_PRESSURE);
    }
}
