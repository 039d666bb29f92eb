package hushmaze.project;

/** What the people in the room do. */
public enum Activity {
    /** Listening, reading. */
    SEATED_QUIET,
    /** Speaking, mixing, light work at a desk. */
    SEATED_WORK,
    /** Singing or playing on one's feet. */
    STANDING_PLAYING,
    /** Lively playing, dancing. */
    MODERATE_DANCING
}
