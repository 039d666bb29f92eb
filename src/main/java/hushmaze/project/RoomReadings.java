package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * What was measured of the air of the room, with the boxes in place, the air on and the door shut.
 *
 * @param doorPressure in the room over that behind the shut door, Pa; absent if it was not measured
 * @param co2 reading of carbon dioxide, as a fraction by volume; absent if there is none
 * @param co2Minutes how long people had been in the room by then, whole minutes; given with the reading
 * @param co2People how many they were; given with the reading
 * @param co2Start reading when they came in, as a fraction by volume; absent for that of the air supplied
 * @param source how it was measured; absent when nothing is said
 */
public record RoomReadings(
        @MayBeAbsent @Measured(Unit.PASCAL) Double doorPressure,
        @MayBeAbsent @Measured(Unit.PARTS_PER_MILLION) Double co2,
        @MayBeAbsent Integer co2Minutes,
        @MayBeAbsent Integer co2People,
        @MayBeAbsent @Measured(Unit.PARTS_PER_MILLION) Double co2Start,
        @MayBeAbsent String source) {
    /** Nothing measured. */
    public static final RoomReadings NONE = new RoomReadings(null, null, null, null, null, null);

    private static final double SECONDS = 60;
    /** Lowest and highest reading of carbon dioxide: outdoor air has more than the one, a common sensor ends at the other. */
    private static final double LEAST_CO2 = 300e-6;

    private static final double MOST_CO2 = 40_000e-6;

    public RoomReadings {
        if (doorPressure != null) {
            InvalidValue.within("doorPressure", doorPressure, -500, 500, Unit.PASCAL);
        }
        if (co2 != null) {
            InvalidValue.within("co2", co2, LEAST_CO2, MOST_CO2, Unit.PARTS_PER_MILLION);
            InvalidValue.present("co2Minutes", co2Minutes);
            InvalidValue.present("co2People", co2People);
        }
        if (co2Minutes != null) {
            InvalidValue.within("co2Minutes", co2Minutes, 1, 1440);
        }
        if (co2People != null) {
            InvalidValue.within("co2People", co2People, 0, 500);
        }
        if (co2Start != null) {
            InvalidValue.within("co2Start", co2Start, LEAST_CO2, MOST_CO2, Unit.PARTS_PER_MILLION);
        }
        if (source != null) {
            InvalidValue.text("source", source, 400);
        }
    }

    /** Whether nothing was measured. */
    public boolean empty() {
        return doorPressure == null && co2 == null;
    }

    /** How long people had been in the room, s. */
    public double co2Seconds() {
        return co2Minutes * SECONDS;
    }
}
