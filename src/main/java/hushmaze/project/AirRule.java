package hushmaze.project;

/** Published rule for outdoor air by persons and floor. */
public enum AirRule {
    /** EN 16798-1, category I. */
    EN_CATEGORY_I,
    /** EN 16798-1, category II. */
    EN_CATEGORY_II,
    /** EN 16798-1, category III. */
    EN_CATEGORY_III,
    /** ASHRAE 62.1, music, theatre, dance. */
    MUSIC,
    /** ASHRAE 62.1, media centre. */
    MEDIA_CENTRE,
    /** ASHRAE 62.1, office. */
    OFFICE
}
