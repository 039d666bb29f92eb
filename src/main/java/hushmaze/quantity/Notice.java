package hushmaze.quantity;

import java.util.List;

/**
 * Something doubtful about a design, as data; the words are made later.
 *
 * @param kind what it is about
 * @param severity how much it matters
 * @param part the part or band it is about, as a person would name it; may be empty
 * @param value the number in question, in SI; null if there is none
 * @param limit the limit it is held against, in SI; null if there is none
 * @param unit the unit to show both in
 * @param places where joints would mend it, in order along the box; none if it is not about joints, or they do not help
 */
public record Notice(
        NoticeKind kind, Severity severity, String part, Double value, Double limit, Unit unit, List<Place> places) {
    /**
     * Where a joint would mend something.
     *
     * @param comesApart whether it is one that comes apart; a glued one otherwise
     * @param position from the near end, m
     */
    public record Place(boolean comesApart, double position) {}

    public Notice {
        InvalidValue.present("kind", kind);
        InvalidValue.present("severity", severity);
        InvalidValue.present("part", part);
        InvalidValue.present("unit", unit);
        places = List.copyOf(places);
    }

    /** A notice that is not about joints. */
    public Notice(NoticeKind kind, Severity severity, String part, Double value, Double limit, Unit unit) {
        this(kind, severity, part, value, limit, unit, List.of());
    }

    /** The same notice with places where joints would mend it. */
    public Notice mendedAt(List<Place> joints) {
        return new Notice(kind, severity, part, value, limit, unit, joints);
    }

    /** A notice without numbers. */
    public static Notice of(NoticeKind kind, Severity severity, String part) {
        return new Notice(kind, severity, part, null, null, Unit.NUMBER);
    }

    /** A notice with a value and its limit, both in SI. */
    public static Notice of(NoticeKind kind, Severity severity, String part, double value, double limit, Unit unit) {
        return new Notice(kind, severity, part, value, limit, unit);
    }
}
