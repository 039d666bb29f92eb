package hushmaze.air.need;

import hushmaze.project.AirRule;
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
 *
 * @param rule the rates are of
 * @param perPerson m³/s
 * @param perArea for each square metre of floor, m³/(s·m²)
 * @param source title of the standard and the row in it
 */
public record VentilationRate(AirRule rule, double perPerson, double perArea, String source) {
    /** The rates of a rule. */
    public static VentilationRate of(AirRule rule) {
        return switch (rule) {
            // 15 % dissatisfied
            case EN_CATEGORY_I -> litres(rule, 10, 0, "EN 16798-1, category I, persons only");
            // 20 %
            case EN_CATEGORY_II -> litres(rule, 7, 0, "EN 16798-1, category II, persons only");
            // 30 %
            case EN_CATEGORY_III -> litres(rule, 4, 0, "EN 16798-1, category III, persons only");
            case MUSIC -> litres(rule, 5, 0.3, "ASHRAE 62.1-2016, music/theater/dance");
            // 10 cfm a person and 0.12 cfm/ft², given in the standard's litres
            case MEDIA_CENTRE -> litres(rule, 5, 0.6, "ASHRAE 62.1-2016, media center");
            // 5 cfm a person and 0.06 cfm/ft², given in the standard's litres
            case OFFICE -> litres(rule, 2.5, 0.3, "ASHRAE 62.1, office space");
        };
    }

    private static VentilationRate litres(AirRule rule, double perPerson, double perArea, String source) {
        return new VentilationRate(
                rule, Unit.LITRE_PER_SECOND.toSi(perPerson), Unit.LITRE_PER_SECOND.toSi(perArea), source);
    }

    /**
     * What a room asks for by this rule.
     *
     * @param persons in the room at once
     * @param floorArea m²
     */
    public NamedFlow flow(int persons, double floorArea) {
        InvalidValue.within("persons", persons, 0, 500);
        InvalidValue.within("floorArea", floorArea, 0.1, 1e4, Unit.SQUARE_METRE);
        return new NamedFlow(rule.name(), perPerson * persons + perArea * floorArea, source);
    }

    /** All rules, in their order. */
    public static List<NamedFlow> all(int persons, double floorArea) {
        return Arrays.stream(AirRule.values())
                .map(r -> of(r).flow(persons, floorArea))
                .toList();
    }
}
