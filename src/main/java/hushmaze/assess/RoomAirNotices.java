package hushmaze.assess;

import hushmaze.air.need.NamedFlow;
import hushmaze.project.Project;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** What the air of the whole room gives reason to say. */
final class RoomAirNotices {
    /** Supply and return that differ by less than this share are equal. */
    private static final double SAME_FLOW = 0.02;

    private final Project project;
    private final RoomResult room;
    private final List<Notice> notices = new ArrayList<>();

    private RoomAirNotices(Project project, RoomResult room) {
        this.project = project;
        this.room = room;
    }

    static List<Notice> of(Project project, RoomResult room) {
        RoomAirNotices air = new RoomAirNotices(project, room);
        air.ways();
        air.pressure();
        air.need();
        air.draughts();
        return air.notices;
    }

    private void ways() {
        double supply = room.supply();
        double extract = room.extract();
        if (supply == 0 || extract == 0) {
            String missing = supply == 0 ? "no supply" : "no return";
            boolean leaks = project.room().leaks();
            notices.add(Notice.of(
                    leaks ? NoticeKind.ONLY_GAPS : NoticeKind.NO_WAY_OUT,
                    leaks ? Severity.WARNING : Severity.STOP,
                    missing));
        } else if (Math.abs(supply - extract) > SAME_FLOW * Math.max(supply, extract)) {
            add(NoticeKind.FLOWS_UNEQUAL, Severity.WARNING, "", supply, extract, Unit.LITRE_PER_SECOND);
        }
    }

    private void pressure() {
        RoomAir air = room.air();
        switch (air.state()) {
            case SOLVED -> {
                if (Math.abs(air.pressure()) > RoomAir.LIMIT) {
                    tooMuch(air);
                }
            }
            case NOTHING_DRIVES -> notices.add(Notice.of(NoticeKind.NOTHING_DRIVES_AIR, Severity.WARNING, ""));
            case SEALED -> {
                // with nothing going one way that has been said
                if (room.supply() > 0 && room.extract() > 0) {
                    notices.add(Notice.of(NoticeKind.ROOM_SEALED, Severity.STOP, ""));
                }
            }
            case NOT_SETTLED -> notices.add(Notice.of(NoticeKind.ROOM_AIR_NOT_SETTLED, Severity.WARNING, ""));
        }
    }

    private void tooMuch(RoomAir air) {
        add(NoticeKind.ROOM_PRESSURE_HIGH, Severity.WARNING, "", air.pressure(), RoomAir.LIMIT, Unit.PASCAL);
        add(NoticeKind.OPENING_MISSING, Severity.NOTE, "", air.missing(), 0, Unit.SQUARE_CENTIMETRE);
        for (Remedy remedy : air.remedies()) {
            boolean door = remedy.kind() == Remedy.Kind.DOOR;
            add(
                    door ? NoticeKind.DOOR_TO_ENLARGE : NoticeKind.OPENING_TO_ENLARGE,
                    Severity.NOTE,
                    remedy.name(),
                    remedy.needed(),
                    remedy.area(),
                    Unit.SQUARE_CENTIMETRE);
        }
    }

    private void need() {
        if (!room.isWithoutAir() && project.room().people() > 0 && room.co2Steady() > RoomResult.NOTICED_CO2) {
            add(
                    NoticeKind.CO2_HIGH,
                    Severity.WARNING,
                    "",
                    room.co2Steady(),
                    RoomResult.NOTICED_CO2,
                    Unit.PARTS_PER_MILLION);
        }
        if (room.need() != null && room.air().fresh() != null && !room.isNeedMet()) {
            NamedFlow governing = room.need().governing();
            add(
                    NoticeKind.NEED_ABOVE_FLOW,
                    Severity.STOP,
                    governing.key(),
                    governing.flow(),
                    room.flow(),
                    Unit.LITRE_PER_SECOND);
        }
    }

    private void draughts() {
        for (DraughtAtPerson draught : room.draughts()) {
            if (draught.rate() > DraughtAtPerson.LIMIT) {
                add(
                        NoticeKind.DRAUGHT,
                        Severity.NOTE,
                        draught.path(),
                        draught.rate() / 100,
                        DraughtAtPerson.LIMIT / 100,
                        Unit.PERCENT);
            }
        }
    }

    private void add(NoticeKind kind, Severity severity, String part, double value, double limit, Unit unit) {
        notices.add(Notice.of(kind, severity, part, value, limit, unit));
    }
}
