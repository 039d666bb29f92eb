package hushmaze.app.model;

import hushmaze.project.DoorLeak;
import hushmaze.project.Envelope;
import hushmaze.project.Joinery;
import hushmaze.project.Project;

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
    TALK_BACK("path.brief.sharedDuct.levelHere"),
    /** What moves the air through the path. */
    DRIVE("path.brief.drive"),
    /** What goes on in the room. */
    USE("room.use"),
    /** Heat that goes through its walls. */
    WALLS("room.use.walls"),
    /** Gaps of its shut door. */
    DOOR("room.door"),
    /** A larger gap below that door. */
    UNDERCUT("room.door.undercutLength"),
    /** What the room leaks besides its door. */
    LEAKAGE("room.leakage"),
    /** How a hanging box is fixed. */
    MOUNTING("path.brief.construction.mounting"),
    /** How its boards are joined. */
    JOINERY("path.brief.construction.joinery"),
    /** The narrowest place it must be carried through. */
    DOORWAY("path.brief.construction.doorway");

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
        return switch (this) {
            case OUTSIDE_LEVEL ->
                ENVELOPE.field.with(
                        project,
                        path,
                        new Envelope(
                                project.room().envelope().elements(),
                                assumed.outsideLevel(),
                                Assumed.source("outsideLevel")));
            case UNDERCUT ->
                DOOR.field.with(
                        project, path, AssumedAir.withUndercut(project.room().door()));
            default -> field.with(project, path, value(project, path, assumed));
        };
    }

    private Object value(Project project, int path, Assumed assumed) {
        return switch (this) {
            case OWN_NOISE -> assumed.ownNoise();
            case FAN -> assumed.fan();
            case ENVELOPE -> assumed.envelope(project);
            case OUTGOING -> assumed.outgoing(project, path);
            case SHARED_DUCT -> assumed.sharedDuct(project, path);
            case TALK_BACK -> assumed.played();
            case DRIVE -> AssumedAir.drive(project.paths().get(path).brief());
            case USE -> AssumedAir.use(project.room());
            case WALLS -> AssumedAir.walls();
            case DOOR -> AssumedAir.door();
            case LEAKAGE -> AssumedAir.leakage(project.room());
            case MOUNTING -> Assumed.mounting();
            case JOINERY -> Joinery.usual();
            case DOORWAY -> Assumed.doorway();
            case OUTSIDE_LEVEL, UNDERCUT -> throw new IllegalStateException("part of a record: " + this);
        };
    }

    /** The project without it; what followed from it is written down first. */
    Project takenFrom(Project project, int path) {
        return switch (this) {
            case OUTSIDE_LEVEL ->
                ENVELOPE.field.with(
                        project, path, new Envelope(project.room().envelope().elements(), null, null));
            case UNDERCUT -> {
                DoorLeak door = project.room().door();
                yield DOOR.field.with(
                        project,
                        path,
                        new DoorLeak(door.length(), door.width(), door.depth(), null, null, door.source()));
            }
            case USE -> field.with(FilledIn.of(project), path, null);
            default -> field.with(project, path, null);
        };
    }
}
