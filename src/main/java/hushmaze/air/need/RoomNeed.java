package hushmaze.air.need;

import hushmaze.air.AirState;
import hushmaze.air.Need;
import hushmaze.project.Room;
import hushmaze.project.RoomUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a room of a project needs. Figures the room states itself come before those that follow from its use: its carbon
 * dioxide per person before that of the activity, its heat before the sum of people, lights, machines and sun.
 */
public final class RoomNeed {
    private RoomNeed() {}

    /** Carbon dioxide each person gives off, m³/s. */
    public static double co2PerPerson(Room room) {
        return room.co2PerPerson() != null
                ? room.co2PerPerson()
                : PersonRates.of(room.use().activity()).co2();
    }

    /** Heat given off in the room, W. */
    public static double heat(Room room) {
        return room.heatGain() != null
                ? room.heatGain()
                : balance(room).orElseThrow().heat();
    }

    /** Carbon dioxide and heat of a room with everybody in it. */
    public static Need need(Room room) {
        return new Need(
                room.volume(), room.people() * co2PerPerson(room), room.outdoorCo2(), heat(room), AirState.of(room));
    }

    /** By how much the room is warmer than the air supplied, K; flow above zero in m³/s. */
    public static double temperatureRise(Room room, double flow) {
        return balance(room).map(b -> b.riseAt(flow)).orElseGet(() -> need(room).temperatureRise(flow));
    }

    /** The heat balance; nothing if nothing is known of the use. */
    public static Optional<HeatBalance> balance(Room room) {
        RoomUse use = room.use();
        if (use == null) {
            return Optional.empty();
        }
        boolean parts = room.heatGain() == null;
        return Optional.of(new HeatBalance(
                parts ? room.people() : 0,
                use.activity(),
                parts ? use.lights() : 0,
                parts ? use.machines() : room.heatGain(),
                parts ? use.sun() : 0,
                use.supplyTemperature(),
                use.highestTemperature(),
                use.walls(),
                AirState.of(room)));
    }

    /** What each ground asks for: the chosen rule, carbon dioxide, heat; nothing if nothing is known of the use. */
    public static Optional<GoverningNeed> governing(Room room) {
        RoomUse use = room.use();
        return balance(room)
                .map(balance -> GoverningNeed.of(
                        VentilationRate.of(use.rule()).flow(room.people(), use.floorArea()),
                        need(room),
                        use.co2Limit(),
                        balance));
    }

    /**
     * Carbon dioxide over the timetable, or with everybody in the room and the air on where there is none.
     *
     * @param flow while the air is on, m³/s
     * @param leakage all the time, m³/s
     * @param duration where there is no timetable, s
     */
    public static Co2Course course(Room room, double flow, double leakage, double duration) {
        List<Co2Course.Span> spans = new ArrayList<>();
        RoomUse use = room.use();
        if (use != null) {
            use.timetable().forEach(s -> spans.add(new Co2Course.Span(s.duration(), s.people(), s.airOn() ? flow : 0)));
        }
        if (spans.isEmpty()) {
            spans.add(new Co2Course.Span(duration, room.people(), flow));
        }
        double start = use == null || use.startCo2() == null ? room.outdoorCo2() : use.startCo2();
        return new Co2Course(room.volume(), co2PerPerson(room), room.outdoorCo2(), start, leakage, spans);
    }

    /** Everybody in the room with the air off. */
    public static Co2Course sealed(Room room, double duration) {
        return new Co2Course(
                room.volume(),
                co2PerPerson(room),
                room.outdoorCo2(),
                room.outdoorCo2(),
                0,
                List.of(new Co2Course.Span(duration, room.people(), 0)));
    }
}
