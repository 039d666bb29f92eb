package hushmaze.air.need;

/**
 * What a person does in the room, with the carbon dioxide and heat that come of it.
 *
 * <p>Source of the heat: ASHRAE Handbook, Fundamentals, 2009, table 1 of people's heat, room at 24 °C, adjusted to a usual
 * mix of men, women and children, as read. Source of the metabolic rates: each with its value. Range: rooms about 24 °C;
 * at 27 °C the sensible heat is about 20 % less and the latent heat as much more (as read). Accuracy: metabolic rates
 * about 20 %, our judgement; hard playing, such as drums, is nearer to 3.8 met (compendium of physical activities, from
 * memory).
 */
public enum Activity {
    /** Met from memory (ISO 7730: seated, relaxed). Heat: seated at a theatre, evening. */
    SEATED_QUIET(1.0, 70, 35),
    /** Met from memory (ISO 7730: sedentary work). Heat: seated, very light work. */
    SEATED_WORK(1.2, 70, 45),
    /** Met from memory (ISO 7730: standing, light activity). Heat: standing, light work. */
    STANDING_PLAYING(1.6, 75, 55),
    /** Met computed: 265 W of an adult man over 1.8 m² of body and 58.2 W/m² a met. Heat: moderate dancing. */
    MODERATE_DANCING(2.5, 90, 160);

    /** Body area of an adult, m²; the usual round figure. */
    public static final double ADULT_AREA = 1.8;
    /** Basal metabolic rate of an adult man, MJ a day; from memory of the paper named in {@link PersonCo2}. */
    private static final double ADULT_BASAL_RATE = 7.73;
    /** 20 °C in K. */
    private static final double ROOM_KELVIN = 293.15;

    private static final double SEA_PRESSURE = 101_325;

    private final double met;
    private final double sensible;
    private final double latent;

    Activity(double met, double sensible, double latent) {
        this.met = met;
        this.sensible = sensible;
        this.latent = latent;
    }

    /** Metabolic rate, met of 58.2 W/m². */
    public double met() {
        return met;
    }

    /** Heat that warms the air, W a person. */
    public double sensible() {
        return sensible;
    }

    /** Heat that leaves as moisture and does not warm the air, W a person. */
    public double latent() {
        return latent;
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
