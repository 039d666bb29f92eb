package hushmaze.assess;

import hushmaze.project.Project;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.sound.room.RoomField;
import java.util.ArrayList;
import java.util.List;

/** What the room as a whole gives reason to say. */
final class RoomNotices {
    private RoomNotices() {}

    static List<Notice> of(Project project, RoomResult room) {
        List<Notice> notices = new ArrayList<>();
        notices.addAll(RoomField.notices(project.room()));
        envelope(project, room.noise(), notices);
        notices.addAll(0, RoomAirNotices.of(project, room));
        return notices;
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
