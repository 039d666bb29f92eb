package hushmaze.air.need;

import hushmaze.air.AirState;
import hushmaze.air.Need;
import hushmaze.project.Activity;
import hushmaze.project.WallHeat;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Heat in the room and the air that carries it off.
 *
 * <p>Formula, steady: H = ρ cp Q (T - Ts) + UA (T - To), with H = n q + lights + machines + sun. H heat given off, W; n
 * persons; q sensible heat of one, W; ρ density of the air, kg/m³; cp specific heat {@link Need#SPECIFIC_HEAT}; Q air
 * supplied, m³/s; T temperature in the room, Ts of the air supplied, To outside the walls, °C; UA conductance of walls, W/K.
 *
 * <p>Source: heat balance of a well-mixed room. Range: any. Accuracy: as good as the heat given; with no walls stated the
 * balance is on the safe side while it is colder outside than in the room, and on the unsafe side while it is hotter.
 * Differs from the source: heat stored in the walls is left out, and so is moisture.
 *
 * @param people in the room
 * @param activity of each
 * @param lights W
 * @param machines computers and other machines, W
 * @param sun through windows, W
 * @param supplyTemperature of the air supplied, °C
 * @param roomLimit highest temperature wanted in the room, °C, above that of the air supplied
 * @param walls what goes through them; absent when it is left out
 * @param air its state
 */
public record HeatBalance(
        int people,
        Activity activity,
        double lights,
        double machines,
        double sun,
        double supplyTemperature,
        double roomLimit,
        @MayBeAbsent WallHeat walls,
        AirState air) {
    /** Said by {@link #leftOut} when no walls are given. */
    public static final String WALLS_LEFT_OUT = "heat through walls, floor and ceiling";

    private static final double MAX_FLOW = 1000;
    private static final double LEAST_RISE = 0.01;

    public HeatBalance {
        InvalidValue.within("people", people, 0, 500);
        InvalidValue.present("activity", activity);
        InvalidValue.within("lights", lights, 0, 1e6, Unit.WATT);
        InvalidValue.within("machines", machines, 0, 1e6, Unit.WATT);
        InvalidValue.within("sun", sun, 0, 1e6, Unit.WATT);
        InvalidValue.within("supplyTemperature", supplyTemperature, -40, 60, Unit.CELSIUS);
        InvalidValue.within("roomLimit", roomLimit, supplyTemperature + LEAST_RISE, 90, Unit.CELSIUS);
        InvalidValue.present("air", air);
    }

    /** Sensible heat of all together, W. */
    public double heat() {
        return people * PersonRates.of(activity).sensible() + lights + machines + sun;
    }

    /** By how much the room is warmer than the air supplied, K; flow in m³/s, zero only if walls are given. */
    public double riseAt(double flow) {
        if (walls == null) {
            return need(heat()).temperatureRise(flow);
        }
        InvalidValue.within("flow", flow, 0, MAX_FLOW, Unit.LITRE_PER_SECOND);
        double carried = air.density() * Need.SPECIFIC_HEAT * flow;
        double inward = walls.conductance() * (walls.outsideTemperature() - supplyTemperature);
        return (heat() + inward) / (carried + walls.conductance());
    }

    /** Flow at which the room is so many kelvin warmer than the air supplied, m³/s; zero if the walls carry off more. */
    public double flowForRise(double kelvin) {
        double through =
                walls == null ? 0 : walls.conductance() * (supplyTemperature + kelvin - walls.outsideTemperature());
        return need(Math.max(0, heat() - through)).flowForRise(kelvin);
    }

    /** Flow that keeps the room at its limit, m³/s. */
    public double flowForLimit() {
        return flowForRise(roomLimit - supplyTemperature);
    }

    /** What this balance does not count, to be said beside its result; empty if it counts the walls. */
    public List<String> leftOut() {
        return walls == null ? List.of(WALLS_LEFT_OUT) : List.of();
    }

    /** The volume and the carbon dioxide play no part in the heat. */
    private Need need(double watts) {
        return new Need(1, 0, 0, watts, air);
    }
}
