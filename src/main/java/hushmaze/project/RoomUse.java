package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * What goes on in the room, as far as its need of air depends on it.
 *
 * @param activity of the people
 * @param rule for outdoor air by persons and floor
 * @param floorArea m²
 * @param co2Limit highest steady carbon dioxide wanted, as a fraction by volume; above that of the air supplied
 * @param lights heat of lights, W
 * @param machines heat of computers, amplifiers and other machines, W
 * @param sun heat through windows, W
 * @param supplyTemperature of the air supplied, °C
 * @param highestTemperature wanted in the room, °C, above that of the air supplied
 * @param walls heat through walls; absent when it is left out
 * @param startCo2 carbon dioxide at the beginning, as a fraction; absent for that of the air supplied
 * @param timetable one after the other; empty for everybody in the room with the air on
 * @param source measured or assumed: where this is from
 */
public record RoomUse(
        Activity activity,
        AirRule rule,
        @Measured(Unit.SQUARE_METRE) double floorArea,
        @Measured(Unit.PARTS_PER_MILLION) double co2Limit,
        @Measured(Unit.WATT) double lights,
        @Measured(Unit.WATT) double machines,
        @Measured(Unit.WATT) double sun,
        @Measured(Unit.CELSIUS) double supplyTemperature,
        @Measured(Unit.CELSIUS) double highestTemperature,
        @MayBeAbsent WallHeat walls,
        @MayBeAbsent @Measured(Unit.PARTS_PER_MILLION) Double startCo2,
        @MayBeAbsent List<Session> timetable,
        String source) {
    /** Most entries of a timetable. */
    public static final int MAX_SESSIONS = 50;
    /** Least difference between the air supplied and the highest temperature, K. */
    public static final double LEAST_RISE = 0.1;

    public RoomUse {
        InvalidValue.present("activity", activity);
        InvalidValue.present("rule", rule);
        InvalidValue.within("floorArea", floorArea, 0.5, 2000, Unit.SQUARE_METRE);
        InvalidValue.within("co2Limit", co2Limit, 0, 0.01, Unit.PARTS_PER_MILLION);
        InvalidValue.within("lights", lights, 0, 1e5, Unit.WATT);
        InvalidValue.within("machines", machines, 0, 1e5, Unit.WATT);
        InvalidValue.within("sun", sun, 0, 1e5, Unit.WATT);
        InvalidValue.within("supplyTemperature", supplyTemperature, -40, 60, Unit.CELSIUS);
        InvalidValue.within("highestTemperature", highestTemperature, supplyTemperature + LEAST_RISE, 90, Unit.CELSIUS);
        if (startCo2 != null) {
            InvalidValue.within("startCo2", startCo2, 0, 0.05, Unit.PARTS_PER_MILLION);
        }
        timetable = timetable == null ? List.of() : List.copyOf(timetable);
        if (timetable.size() > MAX_SESSIONS) {
            throw new InvalidValue(
                    "timetable", timetable.size() + " entries", "at most " + MAX_SESSIONS + " entries", "");
        }
        InvalidValue.text("source", source, 400);
    }
}
