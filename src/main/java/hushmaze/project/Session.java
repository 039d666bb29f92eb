package hushmaze.project;

import hushmaze.quantity.InvalidValue;

/**
 * A time in which people and air stay as they are.
 *
 * @param minutes it lasts, whole ones
 * @param people in the room
 * @param airOn whether the air is on
 */
public record Session(int minutes, int people, boolean airOn) {
    private static final double SECONDS = 60;

    public Session {
        InvalidValue.within("minutes", minutes, 1, 10_000);
        InvalidValue.within("people", people, 0, 500);
    }

    /** How long it lasts, s. */
    public double duration() {
        return minutes * SECONDS;
    }
}
