package hushmaze.assess;

/**
 * An opening that would keep the room's pressure if it were larger.
 *
 * @param kind of opening
 * @param name of the path; empty for the door
 * @param area narrowest clear area of the path, or free area of the gaps, m²
 * @param needed area that would do, m²
 */
public record Remedy(Kind kind, String name, double area, double needed) {
    /** Kinds of opening. */
    public enum Kind {
        PATH,
        DOOR
    }
}
