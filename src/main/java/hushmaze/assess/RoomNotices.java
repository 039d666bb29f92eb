package hushmaze.assess;

import hushmaze.project.Project;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.sound.room.RoomField;
import java.util.ArrayList;
import java.util.List;

/** What the room as a whole gives reason to say. */
final class RoomNotices {
    /** Supply and return that differ by less than this share are equal. */
    private static final double SAME_FLOW = 0.02;

    private RoomNotices() {}

    static List<Notice> of(Project project, RoomResult room) {
        List<Notice> notices = new ArrayList<>();
        double supply = room.supply();
        double extract = room.extract();
        if (supply == 0 || extract == 0) {
            notices.add(Notice.of(NoticeKind.NO_WAY_OUT, Severity.STOP, supply == 0 ? "no supply" : "no return"));
        } else if (Math.abs(supply - extract) > SAME_FLOW * Math.max(supply, extract)) {
            notices.add(
                    Notice.of(NoticeKind.FLOWS_UNEQUAL, Severity.WARNING, "", supply, extract, Unit.LITRE_PER_SECOND));
        }
        if (project.room().people() > 0 && room.co2Steady() > RoomResult.NOTICED_CO2) {
            notices.add(Notice.of(
                    NoticeKind.CO2_HIGH,
                    Severity.WARNING,
                    "",
                    room.co2Steady(),
                    RoomResult.NOTICED_CO2,
                    Unit.PARTS_PER_MILLION));
        }
        notices.addAll(RoomField.notices(project.room()));
        envelope(project, room.noise(), notices);
        air(room, notices);
        return notices;
    }

    private static void air(RoomResult room, List<Notice> notices) {
        RoomAir air = room.air();
        switch (air.state()) {
            case SOLVED -> {
                if (Math.abs(air.pressure()) > RoomAir.LIMIT) {
                    notices.add(Notice.of(
                            NoticeKind.ROOM_PRESSURE_HIGH,
                            Severity.WARNING,
                            "",
                            air.pressure(),
                            RoomAir.LIMIT,
                            Unit.PASCAL));
                    notices.add(Notice.of(
                            NoticeKind.OPENING_MISSING, Severity.NOTE, "", air.missing(), 0, Unit.SQUARE_CENTIMETRE));
                }
            }
            case NOTHING_DRIVES -> notices.add(Notice.of(NoticeKind.NOTHING_DRIVES_AIR, Severity.WARNING, ""));
            case SEALED -> {
                // with nothing going one way that has been said
                if (room.supply() > 0 && room.extract() > 0) {
                    notices.add(Notice.of(NoticeKind.ROOM_SEALED, Severity.STOP, ""));
                }
            }
            case NOT_SETTLED -> notices.add(Notice.of(NoticeKind.METHOD_NOT_RUN, Severity.NOTE, "room pressure"));
        }
    }

    private static void envelope(Project project, RoomNoise noise, List<Notice> notices) {
        if (project.room().envelope() == null) {
            return;
        }
        if (noise.envelope() == null) {
            notices.add(Notice.of(NoticeKind.ENVELOPE_NOT_COUNTED, Severity.WARNING, ""));
            return;
        }
        if (noise.envelope().loss().assumed()) {
            notices.add(Notice.of(NoticeKind.ENVELOPE_SHAPE_ASSUMED, Severity.NOTE, ""));
        }
        boolean boxesLimit = false;
        for (int i = 0; i < project.paths().size(); i++) {
            boxesLimit |= noise.routes().limits(i);
        }
        if (!boxesLimit) {
            notices.add(Notice.of(
                    NoticeKind.ENVELOPE_GOVERNS, Severity.NOTE, noise.envelope().governing()));
        }
    }
}
