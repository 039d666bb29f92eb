package hushmaze.cli;

import hushmaze.project.PathReadings;
import hushmaze.project.RoomReadings;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitParser;
import picocli.CommandLine.Option;

/** What was measured of the air, with the box in place, the air on and the door shut. */
final class AirOptions {
    @Option(
            names = "--flow",
            paramLabel = "FLOW",
            description = "Air through the path, in L/s or with its unit (\"60 cfm\").")
    private String flow;

    @Option(
            names = "--door-pressure",
            paramLabel = "PRESSURE",
            description = "In the room over that behind the shut door, in Pa or with its unit.")
    private String doorPressure;

    @Option(names = "--co2", paramLabel = "PPM", description = "Carbon dioxide in the room.")
    private String co2;

    @Option(
            names = "--co2-minutes",
            paramLabel = "N",
            description = "How long people had been in the room by then (60).",
            defaultValue = "60")
    private int minutes;

    @Option(names = "--co2-people", paramLabel = "N", description = "How many they were (needed with --co2).")
    private Integer people;

    @Option(
            names = "--co2-start",
            paramLabel = "PPM",
            description = "Carbon dioxide when they came in (that of the air supplied).")
    private String start;

    /** Readings of a path with the flow stated here, if one is. */
    PathReadings over(PathReadings readings) {
        return flow == null ? readings : readings.withFlow(parsed("--flow", flow, Unit.LITRE_PER_SECOND), null);
    }

    /** Readings of a room with those stated here. */
    RoomReadings over(RoomReadings readings) {
        boolean gas = co2 != null;
        return new RoomReadings(
                doorPressure == null ? readings.doorPressure() : parsed("--door-pressure", doorPressure, Unit.PASCAL),
                gas ? parsed("--co2", co2, Unit.PARTS_PER_MILLION) : readings.co2(),
                gas ? Integer.valueOf(minutes) : readings.co2Minutes(),
                gas ? people : readings.co2People(),
                start == null ? readings.co2Start() : parsed("--co2-start", start, Unit.PARTS_PER_MILLION),
                readings.source());
    }

    private static Double parsed(String option, String text, Unit unit) {
        return UnitParser.parse(option, text, unit);
    }
}
