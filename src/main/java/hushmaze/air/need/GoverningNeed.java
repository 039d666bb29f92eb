package hushmaze.air.need;

import hushmaze.air.Need;
import hushmaze.quantity.InvalidValue;
import java.util.Comparator;
import java.util.List;

/**
 * What each ground asks for; the largest governs.
 *
 * @param flows at least one, in the order they are shown
 */
public record GoverningNeed(List<NamedFlow> flows) {
    public GoverningNeed {
        flows = List.copyOf(InvalidValue.present("flows", flows));
        if (flows.isEmpty()) {
            throw new InvalidValue("flows", "none", "at least one", "");
        }
    }

    /**
     * Persons, carbon dioxide and heat.
     *
     * @param persons by one of {@link VentilationRate}
     * @param need for the carbon dioxide
     * @param co2Limit of its steady level, as a fraction
     * @param balance of the heat
     */
    public static GoverningNeed of(NamedFlow persons, Need need, double co2Limit, HeatBalance balance) {
        return new GoverningNeed(List.of(persons, NamedFlow.forCo2(need, co2Limit), NamedFlow.forHeat(balance)));
    }

    /** The largest; of equal ones the first. */
    public NamedFlow governing() {
        // max() would give the last of equal ones
        return flows.stream()
                .sorted(Comparator.comparingDouble(NamedFlow::flow).reversed())
                .findFirst()
                .orElseThrow();
    }
}
