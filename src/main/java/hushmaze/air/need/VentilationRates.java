package hushmaze.air.need;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.Arrays;
import java.util.List;

/**
 * Outdoor air by the number of persons and the floor area.
 *
 * <p>Formula: Q = Rp n + Ra A; Rp rate for each person, L/s; n persons; Ra rate for the floor, L/(s·m²); A floor area, m².
 *
 * <p>Source: with each rule; all read in texts that quote the standards. Range: any; the rates suppose adults who do not
 * smoke and air that reaches them fully mixed. Accuracy: of the standard's rounding: its litres and its cubic feet differ
 * by up to 6 %; the litres are used. Differs from the source: EN 16798-1 adds a part for what the building gives off,
 * which depends on its materials and is left out.
 */
public enum VentilationRates {
    /** Category I, 15 % dissatisfied. */
    EN_CATEGORY_I(10, 0, "EN 16798-1, category I, persons only"),
    /** Category II, 20 % dissatisfied. */
    EN_CATEGORY_II(7, 0, "EN 16798-1, category II, persons only"),
    /** Category III, 30 % dissatisfied. */
    EN_CATEGORY_III(4, 0, "EN 16798-1, category III, persons only"),
    /** Music, theatre, dance. */
    MUSIC(5, 0.3, "ASHRAE 62.1-2016, music/theater/dance"),
    /** 10 cfm a person and 0.12 cfm/ft², given in the standard's litres. */
    MEDIA_CENTRE(5, 0.6, "ASHRAE 62.1-2016, media center"),
    /** 5 cfm a person and 0.06 cfm/ft², given in the standard's litres. */
    OFFICE(2.5, 0.3, "ASHRAE 62.1, office space");

    private final double litresPerPerson;
    private final double litresPerArea;
    private final String source;

    VentilationRates(double litresPerPerson, double litresPerArea, String source) {
        this.litresPerPerson = litresPerPerson;
        this.litresPerArea = litresPerArea;
        this.source = source;
    }

    /** Title of the standard and the row in it. */
    public String source() {
        return source;
    }

    /** For each person, m³/s. */
    public double perPerson() {
        return Unit.LITRE_PER_SECOND.toSi(litresPerPerson);
    }

    /** For each square metre of floor, m³/(s·m²). */
    public double perArea() {
        return Unit.LITRE_PER_SECOND.toSi(litresPerArea);
    }

    /**
     * What a room asks for by this rule.
     *
     * @param persons in the room at once
     * @param floorArea m²
     */
    public NamedFlow of(int persons, double floorArea) {
        InvalidValue.within("persons", persons, 0, 500);
        InvalidValue.within("floorArea", floorArea, 0.1, 1e4, Unit.SQUARE_METRE);
        return new NamedFlow(name(), perPerson() * persons + perArea() * floorArea, source);
    }

    /** All rules, in their order here. */
    public static List<NamedFlow> all(int persons, double floorArea) {
        return Arrays.stream(values()).map(r -> r.of(persons, floorArea)).toList();
    }
}
