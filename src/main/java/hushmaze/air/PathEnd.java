package hushmaze.air;

import hushmaze.project.Fitting;
import hushmaze.project.Opening;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.solid.PortPlace;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One end of a path: the port of the box and all that is outside it.
 *
 * <p>From outside in: grilles, louvres, filters and known losses in the order given; then either a mouth (entry 0.5 or exit
 * 1.0) or a duct that goes on; then what leads to the port, a sudden change of area, a flexible duct or a round collar. A
 * wall opening smaller than the port counts as a mouth of its own size. A flexible duct has a collar at the box and, at the
 * end at the opening, one at the opening; in the room it ends in a mouth of its own size unless a duct goes on. After a
 * round collar a round duct goes on, whose own losses are not counted.
 *
 * @param part name of the port
 * @param roomEnd whether it is the end in the room
 * @param port area of the box's port, m²
 * @param opening the box is set over
 * @param connection flexible duct or collar that leads to the port; null without one
 * @param faces all other fittings of this end, from outside in
 */
record PathEnd(String part, boolean roomEnd, double port, Opening opening, Fitting connection, List<Fitting> faces) {
    private static final String GRILLE = "grille ";
    /** Flows that differ by more than this many times are far from each other. */
    private static final double FAR = 2;

    static PathEnd of(PortPlace place, boolean roomEnd, Opening opening, List<Fitting> all) {
        Fitting.End end = roomEnd ? Fitting.End.IN_ROOM : Fitting.End.AT_OPENING;
        List<Fitting> here = all.stream().filter(f -> f.end() == end).toList();
        return new PathEnd(
                roomEnd ? PortPlace.IN_ROOM : PortPlace.AT_OPENING,
                roomEnd,
                place.area(),
                opening,
                here.stream().filter(f -> f.kind().connects()).findFirst().orElse(null),
                here.stream().filter(f -> !f.kind().connects()).toList());
    }

    /** Losses of the air that comes in here. */
    void enter(LossList list) {
        faces(list, true);
        if (!hasDuct()) {
            list.add("entry", part, Entry.SOURCE, Entry.ZETA, outside());
        }
        connect(list, true);
        list.velocity(part, place(), port);
    }

    /** Losses of the air that goes out here. */
    void leave(LossList list) {
        list.velocity(part, place(), port);
        connect(list, false);
        if (!hasDuct()) {
            list.add("exit", part, Exit.SOURCE, Exit.ZETA, outside());
        }
        faces(list, false);
    }

    private PathAir.Place place() {
        return roomEnd ? PathAir.Place.ROOM_MOUTH : PathAir.Place.OPENING_PORT;
    }

    private boolean isCollar() {
        return connection != null && connection.kind() == Fitting.Kind.ROUND_COLLAR;
    }

    /** Whether a duct goes on beyond this end. */
    private boolean hasDuct() {
        return isCollar()
                || opening.kind() == Opening.Kind.IN_DUCT
                || (!roomEnd && opening.kind() == Opening.Kind.REGISTER);
    }

    /** Clear area where the duct goes on or the mouth is, m². */
    private double outside() {
        if (isCollar()) {
            return round();
        }
        if (hasDuct()) {
            return opening.area();
        }
        if (roomEnd) {
            return connection == null ? port : round();
        }
        return connection == null ? Math.min(port, opening.area()) : opening.area();
    }

    /** Clear area of the connection, m². */
    private double round() {
        return Math.PI * connection.diameter() * connection.diameter() / 4;
    }

    /** What leads from outside to the port, or back. */
    private void connect(LossList list, boolean inwards) {
        if (connection == null) {
            list.areaChange(part, inwards ? outside() : port, inwards ? port : outside());
            return;
        }
        List<Runnable> steps = new ArrayList<>();
        if (connection.kind() == Fitting.Kind.FLEXIBLE_DUCT) {
            if (!roomEnd || hasDuct()) {
                steps.add(() -> collar(list, outside(), 0, inwards));
            }
            steps.add(() -> flexible(list));
        }
        double projection = connection.projection() == null ? 0 : connection.projection();
        steps.add(() -> collar(list, port, projection, !inwards));
        if (!inwards) {
            Collections.reverse(steps);
        }
        steps.forEach(Runnable::run);
    }

    private void collar(LossList list, double partArea, double projection, boolean intoCollar) {
        Zeta zeta = RoundCollar.zeta(partArea, connection.diameter(), projection, intoCollar);
        list.add("collar", part, RoundCollar.SOURCE, zeta, round());
    }

    private void flexible(LossList list) {
        double diameter = connection.diameter();
        double reynolds = list.air().reynolds(list.flow() / round(), diameter);
        Zeta friction = FlexibleDuct.zeta(connection.length(), diameter, connection.compression(), reynolds);
        list.add("flexibleDuct", part, FlexibleDuct.SOURCE, friction, round());
        list.velocity("flexible duct " + part, place(!roomEnd || hasDuct()), round());
    }

    /** A duct is held to the limit of the path; one that ends in the room to that of the mouth. */
    private static PathAir.Place place(boolean goesOn) {
        return goesOn ? PathAir.Place.INSIDE : PathAir.Place.ROOM_MOUTH;
    }

    private void faces(LossList list, boolean inwards) {
        List<Fitting> order = new ArrayList<>(faces);
        if (!inwards) {
            Collections.reverse(order);
        }
        for (Fitting fitting : order) {
            face(list, fitting, inwards);
        }
    }

    private void face(LossList list, Fitting fitting, boolean inwards) {
        switch (fitting.kind()) {
            case GRILLE -> {
                double face = fitting.width() * fitting.height();
                Zeta zeta = PerforatedPlate.zeta(fitting.freeArea());
                list.add("grille", part, PerforatedPlate.SOURCE, zeta, face);
                list.velocity(GRILLE + part, place(), face * fitting.freeArea());
            }
            case WEATHER_LOUVRE -> {
                double face = fitting.width() * fitting.height();
                list.add("louvre", part, WeatherLouvre.SOURCE, WeatherLouvre.zeta(!inwards), face);
            }
            case FILTER -> {
                far(list, fitting);
                double area = outside();
                Zeta zeta = FilterLoss.zeta(fitting.pressure(), fitting.flow(), list.flow(), area, list.air());
                list.add("filter", part, FilterLoss.SOURCE, zeta, area);
            }
            case KNOWN_LOSS -> {
                far(list, fitting);
                double area = outside();
                Zeta zeta = KnownLoss.zeta(fitting.pressure(), fitting.flow(), list.flow(), area, list.air());
                list.add("knownLoss", part, KnownLoss.SOURCE, zeta, area);
            }
            case FLEXIBLE_DUCT, ROUND_COLLAR -> throw new IllegalArgumentException("connects: " + fitting.kind());
        }
    }

    private void far(LossList list, Fitting fitting) {
        double times = fitting.flow() / list.flow();
        if (times > FAR || times < 1 / FAR) {
            list.note(Notice.of(NoticeKind.KNOWN_LOSS_FAR, Severity.NOTE, part, times, FAR, Unit.NUMBER));
        }
    }
}
