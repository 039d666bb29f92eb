package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;

/**
 * One way for air into or out of the room.
 *
 * @param name of the path, also used in file names
 * @param purpose what it is for
 * @param brief what is asked
 * @param box what is chosen; absent until a box was laid out
 */
public record VentPath(
        String name,
        Purpose purpose,
        Brief brief,
        @MayBeAbsent Box box) {
    public VentPath {
        InvalidValue.text("name", name, 60);
        InvalidValue.present("purpose", purpose);
        InvalidValue.present("brief", brief);
    }

    /** The same path with another brief. */
    public VentPath withBrief(Brief other) {
        return new VentPath(name, purpose, other, box);
    }

    /** The same path with another box. */
    public VentPath withBox(Box other) {
        return new VentPath(name, purpose, brief, other);
    }
}
