package hushmaze.app.model;

import hushmaze.project.Activity;
import hushmaze.project.AirRule;
import hushmaze.project.Brief;
import hushmaze.project.DoorLeak;
import hushmaze.project.Drive;
import hushmaze.project.Fitting;
import hushmaze.project.Leakage;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.Room;
import hushmaze.project.RoomUse;
import hushmaze.project.Session;
import hushmaze.project.WallHeat;
import java.util.List;

/**
 * What is filled in when something about air is switched on or added. Every value is an assumption of this program without
 * a source, rounded to what a person would guess, and says so in its own source text.
 */
final class AssumedAir {
    /** Pressure there is in a duct, Pa. */
    static final double DUCT_PRESSURE = 20;

    private static final double FREE_AREA = 0.7;
    private static final double FILTER_LOSS = 20;
    private static final double OTHER_LOSS = 5;
    private static final double DIAMETER_M = 0.125;
    private static final double DUCT_LENGTH_M = 1;
    private static final double COMPRESSION = 0.1;

    private static final double STOREY_M = 2.4;
    private static final double LARGEST_FLOOR = 2000;
    /** Fractions by volume. */
    private static final double CO2_LIMIT = 1000e-6;

    private static final double LEAST_OVER_SUPPLY = 400e-6;
    private static final double LIGHTS_W = 40;
    private static final double MACHINES_W = 100;
    private static final double SUPPLY_C = 20;
    private static final double HIGHEST_C = 26;
    private static final double WALLS_W_PER_K = 30;
    private static final double OUTSIDE_C = 10;
    private static final int SESSION_MINUTES = 60;

    /** Around a door of 2.0 by 0.8 m, m. */
    private static final double DOOR_ROUND = 5.6;

    private static final double DOOR_GAP = 0.001;
    private static final double UNDERCUT_LENGTH = 0.8;
    private static final double UNDERCUT_HEIGHT = 0.01;

    private static final double TEST_PRESSURE = 50;
    private static final double CHANGES_AN_HOUR = 3;
    private static final double USUAL_EXPONENT = 0.65;

    private AssumedAir() {}

    /** What is usual for the opening, so that nothing changes by saying it. */
    static Drive drive(Brief brief) {
        return new Drive(brief.driveOrUsual(), null, null, null, Assumed.source("drive"));
    }

    /**
     * A fitting of usual size.
     *
     * @param end it is at
     * @param path it belongs to: a face is as large as the opening, a loss is known at the path's flow
     */
    static Fitting fitting(Fitting.Kind kind, Fitting.End end, Project project, int path) {
        Opening opening = project.paths().get(path).brief().opening();
        boolean face = kind == Fitting.Kind.GRILLE || kind == Fitting.Kind.WEATHER_LOUVRE;
        boolean known = kind == Fitting.Kind.FILTER || kind == Fitting.Kind.KNOWN_LOSS;
        boolean duct = kind == Fitting.Kind.FLEXIBLE_DUCT;
        return new Fitting(
                kind,
                end,
                when(face, opening.width()),
                when(face, opening.height()),
                when(kind == Fitting.Kind.GRILLE, FREE_AREA),
                when(kind.connects(), DIAMETER_M),
                when(duct, DUCT_LENGTH_M),
                when(duct, COMPRESSION),
                null,
                when(known, kind == Fitting.Kind.FILTER ? FILTER_LOSS : OTHER_LOSS),
                known ? FilledIn.flow(project, path) : null,
                Assumed.source("fitting." + kind));
    }

    private static Double when(boolean needed, double value) {
        return needed ? value : null;
    }

    static RoomUse use(Room room) {
        double floor = Math.max(1, Math.min(LARGEST_FLOOR, Math.rint(room.volume() / STOREY_M)));
        return new RoomUse(
                Activity.SEATED_WORK,
                AirRule.EN_CATEGORY_II,
                floor,
                Math.max(CO2_LIMIT, room.outdoorCo2() + LEAST_OVER_SUPPLY),
                LIGHTS_W,
                MACHINES_W,
                0,
                SUPPLY_C,
                HIGHEST_C,
                null,
                null,
                List.of(),
                Assumed.source("use"));
    }

    static WallHeat walls() {
        return new WallHeat(WALLS_W_PER_K, OUTSIDE_C);
    }

    static Session session(Room room) {
        return new Session(SESSION_MINUTES, room.people(), true);
    }

    static DoorLeak door() {
        return new DoorLeak(DOOR_ROUND, DOOR_GAP, Assumed.source("door"));
    }

    /** The same door with a larger gap below it. */
    static DoorLeak withUndercut(DoorLeak door) {
        return new DoorLeak(door.length(), door.width(), door.depth(), UNDERCUT_LENGTH, UNDERCUT_HEIGHT, door.source());
    }

    /** So many changes of the room's air an hour under the test, to the litre. */
    static Leakage leakage(Room room) {
        double flow = Math.max(1, Math.rint(room.volume() * CHANGES_AN_HOUR / 3600 * 1000)) / 1000;
        return new Leakage(flow, TEST_PRESSURE, USUAL_EXPONENT, Assumed.source("leakage"));
    }
}
