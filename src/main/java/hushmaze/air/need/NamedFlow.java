package hushmaze.air.need;

import hushmaze.air.Need;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A flow that something asks for.
 *
 * @param key what asks for it
 * @param flow m³/s
 * @param source where the figure comes from
 */
public record NamedFlow(String key, double flow, String source) {
    /** Key of {@link #forCo2}. */
    public static final String CO2 = "co2Limit";
    /** Key of {@link #forHeat}. */
    public static final String HEAT = "heatRise";

    public NamedFlow {
        InvalidValue.text("key", key, 80);
        InvalidValue.within("flow", flow, 0, 1000, Unit.LITRE_PER_SECOND);
        InvalidValue.text("source", source, 300);
    }

    /** What carbon dioxide asks for; limit of the steady level as a fraction, above the outdoor one. */
    public static NamedFlow forCo2(Need need, double limit) {
        return new NamedFlow(CO2, need.flowForCo2(limit), "mass balance of a well-mixed room, steady level");
    }

    /** What heat asks for. */
    public static NamedFlow forHeat(HeatBalance balance) {
        return new NamedFlow(HEAT, balance.flowForLimit(), "heat balance of the air supplied");
    }
}
