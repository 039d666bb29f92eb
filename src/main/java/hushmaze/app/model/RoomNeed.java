package hushmaze.app.model;

import hushmaze.air.AirState;
import hushmaze.air.Need;
import hushmaze.air.need.GoverningNeed;
import hushmaze.air.need.HeatBalance;
import hushmaze.air.need.PersonRates;
import hushmaze.air.need.VentilationRate;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Room;
import hushmaze.project.RoomUse;
import hushmaze.project.VentPath;
import java.util.List;
import java.util.Objects;

/** Figures that follow from what goes on in the room, for where they have to be written down. */
final class RoomNeed {
    private static final Field FLOW = Field.of("path.brief.flow");
    private static final Field CO2 = Field.of("room.co2PerPerson");
    private static final Field HEAT = Field.of("room.heatGain");

    /** m³/s, L/s being shown to one decimal. */
    private static final double FLOW_STEP = 1e-4;

    private static final double LEAST_FLOW = 1e-3;
    private static final double MOST_FLOW = 5;
    /** m³/s a person. */
    private static final double CO2_STEP = 1e-7;

    private RoomNeed() {}

    /** The project with every figure that was left to the use of the room written down. */
    static Project filledIn(Project project) {
        Room room = project.room();
        Project full = project;
        for (int i = 0; i < project.paths().size(); i++) {
            if (project.paths().get(i).brief().flow() == null) {
                full = FLOW.with(full, i, flow(project, i));
            }
        }
        if (room.co2PerPerson() == null) {
            full = CO2.with(full, 0, rounded(co2(room), CO2_STEP));
        }
        return room.heatGain() == null ? HEAT.with(full, 0, Math.rint(heat(room))) : full;
    }

    /** Flow of a path: what is given, or its share of the need among the paths of its direction that leave it open, m³/s. */
    static double flow(Project project, int path) {
        Double given = project.paths().get(path).brief().flow();
        if (given != null) {
            return given;
        }
        boolean in = isIn(project.paths().get(path));
        List<Double> alike = project.paths().stream()
                .filter(p -> isIn(p) == in)
                .map(p -> p.brief().flow())
                .toList();
        double told = alike.stream()
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .sum();
        long open = alike.stream().filter(Objects::isNull).count();
        double share = rounded((need(project.room()) - told) / open, FLOW_STEP);
        return Math.max(LEAST_FLOW, Math.min(MOST_FLOW, share));
    }

    private static boolean isIn(VentPath path) {
        return path.purpose() == Purpose.SUPPLY;
    }

    /** Outdoor air the room needs, m³/s. */
    private static double need(Room room) {
        RoomUse use = room.use();
        AirState air = AirState.of(room);
        HeatBalance balance = new HeatBalance(
                room.people(),
                use.activity(),
                use.lights(),
                use.machines(),
                use.sun(),
                use.supplyTemperature(),
                use.highestTemperature(),
                use.walls(),
                air);
        Need need = new Need(room.volume(), room.people() * co2(room), room.outdoorCo2(), heat(room), air);
        return GoverningNeed.of(
                        VentilationRate.of(use.rule()).flow(room.people(), use.floorArea()),
                        need,
                        use.co2Limit(),
                        balance)
                .governing()
                .flow();
    }

    private static double co2(Room room) {
        return room.co2PerPerson() == null
                ? PersonRates.of(room.use().activity()).co2()
                : room.co2PerPerson();
    }

    private static double heat(Room room) {
        if (room.heatGain() != null) {
            return room.heatGain();
        }
        RoomUse use = room.use();
        return room.people() * PersonRates.of(use.activity()).sensible() + use.lights() + use.machines() + use.sun();
    }

    private static double rounded(double value, double step) {
        // by the number of steps, so that no digit of 0.1 + 0.2 is left over
        return Math.rint(value / step) / Math.rint(1 / step);
    }
}
