package hushmaze.air;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.OptionalDouble;

/**
 * What the people, lights and machines in a room need of air: carbon dioxide and heat.
 *
 * <p>Formulas, for a well-mixed room: steady carbon dioxide C = Co + G / Q; with time C(t) = C + (C0 - C) exp(-Q t / V);
 * without air C0 + G t / V; temperature rise ΔT = H / (ρ cp Q). Co outdoor and C0 first concentration as fractions by
 * volume; G carbon dioxide given off, m³/s; Q air supplied, m³/s; V volume of the room, m³; t time, s; H heat, W; ρ density,
 * kg/m³; cp 1006 J/(kg·K).
 *
 * <p>Source: mass balance of a well-mixed room, as printed in ventilation texts (one older copy has a sign error, avoided
 * here); heat balance of the air supplied. cp from memory. Range: any. Accuracy: as good as the mixing; the heat balance
 * leaves out what walls, floor and ceiling take up and is on the safe side. Differs from the source: none.
 *
 * @param volume of the room, m³
 * @param co2Source carbon dioxide given off by everybody together, m³/s
 * @param outdoorCo2 carbon dioxide in the air supplied, as a fraction by volume
 * @param heat given off, W
 * @param air its state
 */
public record Need(double volume, double co2Source, double outdoorCo2, double heat, AirState air) {
    /** Specific heat of air at constant pressure, J/(kg·K). */
    public static final double SPECIFIC_HEAT = 1006;

    private static final double MAX_FLOW = 1000;
    /** Least flow that counts as air supplied, m³/s. */
    private static final double MIN_FLOW = 1e-9;

    public Need {
        InvalidValue.within("volume", volume, 0.1, 1e6, Unit.CUBIC_METRE);
        InvalidValue.within("co2Source", co2Source, 0, 1, Unit.LITRE_PER_SECOND);
        InvalidValue.within("outdoorCo2", outdoorCo2, 0, 1, Unit.PARTS_PER_MILLION);
        InvalidValue.within("heat", heat, 0, 1e7, Unit.WATT);
        InvalidValue.present("air", air);
    }

    /** Carbon dioxide after a long time, as a fraction; flow above zero in m³/s. */
    public double co2Steady(double flow) {
        return outdoorCo2 + co2Source / supplied(flow);
    }

    /**
     * Carbon dioxide after some time, as a fraction.
     *
     * @param start concentration at the beginning, as a fraction
     * @param flow air supplied, m³/s; may be zero
     * @param seconds since the beginning
     */
    public double co2After(double start, double flow, double seconds) {
        InvalidValue.within("start", start, 0, 1, Unit.PARTS_PER_MILLION);
        InvalidValue.within("flow", flow, 0, MAX_FLOW, Unit.LITRE_PER_SECOND);
        InvalidValue.within("seconds", seconds, 0, Double.MAX_VALUE, Unit.NUMBER);
        double changes = flow * seconds / volume;
        // both limits, no flow and no time, come out of (1 - exp(-x)) / x going to 1
        double growth = changes < 1e-12 ? 1 : -Math.expm1(-changes) / changes;
        return outdoorCo2 + (start - outdoorCo2) * Math.exp(-changes) + co2Source * seconds / volume * growth;
    }

    /**
     * How long until carbon dioxide rises to a limit, s; nothing if it never does.
     *
     * @param limit as a fraction
     * @param start concentration at the beginning, as a fraction
     * @param flow air supplied, m³/s; zero for a sealed room or a fan that is off
     */
    public OptionalDouble secondsToReach(double limit, double start, double flow) {
        InvalidValue.within("limit", limit, 0, 1, Unit.PARTS_PER_MILLION);
        InvalidValue.within("start", start, 0, 1, Unit.PARTS_PER_MILLION);
        InvalidValue.within("flow", flow, 0, MAX_FLOW, Unit.LITRE_PER_SECOND);
        if (start >= limit) {
            return OptionalDouble.of(0);
        }
        if (flow < MIN_FLOW) {
            return co2Source > 0 ? OptionalDouble.of((limit - start) * volume / co2Source) : OptionalDouble.empty();
        }
        double steady = co2Steady(flow);
        if (steady <= limit) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(volume / flow * Math.log((steady - start) / (steady - limit)));
    }

    /** By how much the air supplied is warmed, K; flow above zero in m³/s. */
    public double temperatureRise(double flow) {
        return heat / (air.density() * SPECIFIC_HEAT * supplied(flow));
    }

    /** Air that keeps steady carbon dioxide at a limit, m³/s; the limit, a fraction, above the outdoor one. */
    public double flowForCo2(double limit) {
        if (!(limit > outdoorCo2 && limit <= 1)) {
            Unit unit = Unit.PARTS_PER_MILLION;
            throw new InvalidValue(
                    "co2Limit",
                    Double.toString(unit.fromSi(limit)),
                    "above the outdoor " + unit.fromSi(outdoorCo2),
                    unit.symbol());
        }
        return co2Source / (limit - outdoorCo2);
    }

    /** Air that is warmed by so many kelvin, m³/s. */
    public double flowForRise(double kelvin) {
        InvalidValue.within("temperatureRise", kelvin, 0.01, 100, Unit.CELSIUS);
        return heat / (air.density() * SPECIFIC_HEAT * kelvin);
    }

    private static double supplied(double flow) {
        return InvalidValue.within("flow", flow, MIN_FLOW, MAX_FLOW, Unit.LITRE_PER_SECOND);
    }
}
