package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import java.util.List;

/**
 * One way for air into or out of the room.
 *
 * @param name of the path, also used in file names
 * @param purpose what it is for
 * @param brief what is asked
 * @param box what is chosen; absent until a box was laid out
 * @param kept boxes put by to be compared; none if nothing is said
 * @param readings what was measured of it; absent if nothing was
 */
public record VentPath(
        String name,
        Purpose purpose,
        Brief brief,
        @MayBeAbsent Box box,
        @MayBeAbsent List<KeptBox> kept,
        @MayBeAbsent PathReadings readings) {
    /** Most boxes that are put by for one path. */
    public static final int MAX_KEPT = 8;

    public VentPath {
        InvalidValue.text("name", name, 60);
        InvalidValue.present("purpose", purpose);
        InvalidValue.present("brief", brief);
        kept = kept == null ? List.of() : List.copyOf(kept);
        if (kept.size() > MAX_KEPT) {
            throw new InvalidValue("kept", kept.size() + " boxes", "at most " + MAX_KEPT + " boxes", "");
        }
        if (kept.stream().map(KeptBox::name).distinct().count() != kept.size()) {
            throw new InvalidValue("kept", "two boxes of the same name", "differently named boxes", "");
        }
        readings = readings == null || readings.empty() ? null : readings;
    }

    /** A path for which no other boxes are put by, and of which nothing was measured. */
    public VentPath(String name, Purpose purpose, Brief brief, Box box) {
        this(name, purpose, brief, box, null, null);
    }

    /** The same path with other boxes put by. */
    public VentPath keeping(List<KeptBox> others) {
        return new VentPath(name, purpose, brief, box, others, readings);
    }

    /** The same path with another brief. */
    public VentPath withBrief(Brief other) {
        return new VentPath(name, purpose, other, box, kept, readings);
    }

    /** The same path with another box. */
    public VentPath withBox(Box other) {
        return new VentPath(name, purpose, brief, other, kept, readings);
    }

    /** What was measured of it, which may be nothing. */
    public PathReadings readingsOrNone() {
        return readings == null ? PathReadings.NONE : readings;
    }

    /** The same path with other readings. */
    public VentPath measured(PathReadings other) {
        return new VentPath(name, purpose, brief, box, kept, other);
    }
}
