package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.Need;
import hushmaze.air.need.RoomNeed;
import hushmaze.project.PathReadings;
import hushmaze.project.Room;
import hushmaze.project.RoomReadings;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Measured air against predicted: what goes through the path, the pressure across the shut door, and carbon dioxide after some
 * time with what that says of the air the room gets.
 *
 * <p>Uncertainties are our own allowances, no source: of a flow 15 % (velocities read at nine places of a grille times its
 * area), of a pressure 0.5 Pa or 10 %, whichever is more, of carbon dioxide 50 ppm and 5 % of the reading, of what people give
 * off 20 %.
 *
 * @param lines one for each thing that was measured
 */
public record AirComparison(List<Line> lines) {
    private static final double FLOW_SHARE = 0.15;
    private static final double PRESSURE_SHARE = 0.1;
    private static final double LEAST_PRESSURE = 0.5;
    private static final double CO2_SHARE = 0.05;
    private static final double LEAST_CO2 = 50e-6;
    private static final double PEOPLE_SHARE = 0.2;
    /** Most air that a reading is looked for by, changes of the room an hour. */
    private static final double MOST_CHANGES = 100;

    private static final double HOUR = 3600;
    private static final int HALVINGS = 60;

    /** What was measured, or follows from it. */
    public enum Kind {
        /** Through the path, m³/s. */
        FLOW,
        /** In the room over that behind the shut door, Pa. */
        DOOR_PRESSURE,
        /** Carbon dioxide, as a fraction by volume. */
        CO2,
        /** Air the room gets by its carbon dioxide, m³/s. */
        AIR_BY_CO2
    }

    /** How it stands to the prediction. */
    public enum Verdict {
        AS_PREDICTED,
        LESS,
        MORE,
        /** The prediction has no answer. */
        NOT_PREDICTED
    }

    /**
     * One thing measured.
     *
     * @param kind what, which gives the unit
     * @param measured value
     * @param uncertainty either way
     * @param least predicted; null if there is no prediction
     * @param most predicted; null if there is no prediction
     * @param verdict how it stands
     * @param beyondLimit whether it is beyond a limit that holds whatever was predicted: 3 Pa across the door, carbon dioxide
     *     that makes tired
     */
    public record Line(
            Kind kind,
            double measured,
            double uncertainty,
            Double least,
            Double most,
            Verdict verdict,
            boolean beyondLimit) {}

    public AirComparison {
        lines = List.copyOf(lines);
    }

    /**
     * Readings held against an assessment.
     *
     * @param assessment of the project
     * @param path one of its paths
     * @param readings of that path
     * @param room readings of the room's air
     */
    public static AirComparison of(Assessment assessment, PathResult path, PathReadings readings, RoomReadings room) {
        List<Line> lines = new ArrayList<>();
        if (readings.flow() != null) {
            lines.add(flow(path, readings.flow()));
        }
        if (room.doorPressure() != null) {
            lines.add(door(assessment.room().air(), room.doorPressure()));
        }
        if (room.co2() != null) {
            co2(assessment, room, lines);
        }
        return new AirComparison(lines);
    }

    private static Line flow(PathResult path, double measured) {
        PathFlow carried = path.carried();
        double asked = path.path().brief().flow();
        double least = carried == null ? asked : Math.min(carried.least(), carried.most());
        double most = carried == null ? asked : Math.max(carried.least(), carried.most());
        return line(Kind.FLOW, measured, FLOW_SHARE * measured, least, most, false);
    }

    private static Line door(RoomAir air, double measured) {
        double doubt = Math.max(LEAST_PRESSURE, PRESSURE_SHARE * Math.abs(measured));
        boolean beyond = Math.abs(measured) > RoomAir.LIMIT;
        if (air.pressure() == null) {
            return new Line(Kind.DOOR_PRESSURE, measured, doubt, null, null, Verdict.NOT_PREDICTED, beyond);
        }
        return line(
                Kind.DOOR_PRESSURE,
                measured,
                doubt,
                Math.min(air.pressure(), air.likely()),
                Math.max(air.pressure(), air.likely()),
                beyond);
    }

    private static void co2(Assessment assessment, RoomReadings readings, List<Line> lines) {
        Room room = assessment.project().room();
        double air = assessment.room().isWithoutAir() ? 0 : assessment.room().flow();
        double measured = readings.co2();
        double doubt = LEAST_CO2 + CO2_SHARE * measured;
        double least = after(room, readings, 1 - PEOPLE_SHARE, air);
        double most = after(room, readings, 1 + PEOPLE_SHARE, air);
        lines.add(line(Kind.CO2, measured, doubt, least, most, measured > RoomResult.STALE_CO2));
        OptionalDouble low = airFor(room, readings, 1 - PEOPLE_SHARE, measured + doubt);
        OptionalDouble high = airFor(room, readings, 1 + PEOPLE_SHARE, measured - doubt);
        OptionalDouble likely = airFor(room, readings, 1, measured);
        if (low.isPresent() && high.isPresent() && likely.isPresent()) {
            double either = (high.getAsDouble() - low.getAsDouble()) / 2;
            lines.add(line(Kind.AIR_BY_CO2, likely.getAsDouble(), either, air, air, false));
        }
    }

    /** Carbon dioxide by the time of the reading, for people who give off so much of the usual. */
    private static double after(Room room, RoomReadings readings, double share, double flow) {
        double start = readings.co2Start() == null ? room.outdoorCo2() : readings.co2Start();
        double source = share * readings.co2People() * RoomNeed.co2PerPerson(room);
        return new Need(room.volume(), source, room.outdoorCo2(), 0, AirState.of(room))
                .co2After(start, flow, readings.co2Seconds());
    }

    /** Air with which carbon dioxide comes to a level by the time of the reading; nothing if no air does. */
    private static OptionalDouble airFor(Room room, RoomReadings readings, double share, double level) {
        double low = 0;
        double high = MOST_CHANGES * room.volume() / HOUR;
        if (after(room, readings, share, low) < level || after(room, readings, share, high) > level) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (after(room, readings, share, middle) > level) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(low);
    }

    private static Line line(Kind kind, double measured, double doubt, double least, double most, boolean beyond) {
        Verdict verdict = Verdict.AS_PREDICTED;
        if (measured + doubt < least) {
            verdict = Verdict.LESS;
        } else if (measured - doubt > most) {
            verdict = Verdict.MORE;
        }
        return new Line(kind, measured, doubt, least, most, verdict, beyond);
    }
}
