package hushmaze.assess;

import hushmaze.sound.room.Received;

/**
 * What somebody outside the room hears of it through a path.
 *
 * @param kind who
 * @param received level and margin, pessimistic edge of the box
 */
public record Heard(Kind kind, Received received) {
    /** Who hears it. */
    public enum Kind {
        /** Neighbours or a hall, through the opening. */
        NEIGHBOURS,
        /** The other room on the same duct. */
        OTHER_ROOM
    }
}
