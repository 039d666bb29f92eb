package hushmaze.app.model;

import hushmaze.project.Envelope;
import hushmaze.project.Project;
import hushmaze.quantity.Spectrum;

/** What a project may say or leave out: each is a switch that turns on a group of entries. */
public enum Extra {
    /** What the room has of noise by itself. */
    OWN_NOISE("room.ownNoise"),
    /** A fan in the path. */
    FAN("path.brief.fan"),
    /** Walls, doors, windows and gaps of the room. */
    ENVELOPE("room.envelope"),
    /** The noise in front of those. */
    OUTSIDE_LEVEL("room.envelope.outsideLevel"),
    /** Who hears the quiet room. */
    OUTGOING("path.brief.outgoing"),
    /** Another room on the same duct. */
    SHARED_DUCT("path.brief.sharedDuct"),
    /** What that other room hears of this one. */
    TALK_BACK("path.brief.sharedDuct.levelHere");

    private final String name;
    private final Field field;

    Extra(String name) {
        this.name = name;
        this.field = Field.of(name);
    }

    /** Name of the field, also key of the switch's texts. */
    public String fieldName() {
        return name;
    }

    Field field() {
        return field;
    }

    /** Whether the project says it. */
    boolean isIn(Project project, int path) {
        return field.get(project, path) != null;
    }

    /** The project with assumed values for this. */
    Project addedTo(Project project, int path, Assumed assumed) {
        Object value = switch (this) {
            case OWN_NOISE -> assumed.ownNoise();
            case FAN -> assumed.fan();
            case ENVELOPE -> assumed.envelope(project);
            case OUTSIDE_LEVEL -> assumed.outsideLevel();
            case OUTGOING -> assumed.outgoing(project, path);
            case SHARED_DUCT -> assumed.sharedDuct(project, path);
            case TALK_BACK -> assumed.played();
        };
        if (this == OUTSIDE_LEVEL) {
            Envelope envelope = project.room().envelope();
            return ENVELOPE.field.with(
                    project, path, new Envelope(envelope.elements(), (Spectrum) value, Assumed.source("outsideLevel")));
        }
        return field.with(project, path, value);
    }

    /** The project without it. */
    Project takenFrom(Project project, int path) {
        if (this == OUTSIDE_LEVEL) {
            Envelope envelope = project.room().envelope();
            return ENVELOPE.field.with(project, path, new Envelope(envelope.elements(), null, null));
        }
        return field.with(project, path, null);
    }
}
