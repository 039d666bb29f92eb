package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.air.network.FanCurve;
import hushmaze.project.Brief;
import hushmaze.project.Drive;
import hushmaze.project.VentPath;
import hushmaze.solid.Solid;

/** Judges the air of one path: pressure drop at the high edge, and every velocity, against the brief's limits. */
public final class AirJudge {
    /** Velocities this close to their limit keep it: sizes are rounded to whole steps. */
    private static final double SLACK = 1e-9;

    private AirJudge() {}

    /** The air through a box at the brief's flow. */
    public static PathAir air(VentPath path, Solid solid, AirState air) {
        return new DrivenPath(path, solid, air).losses(path.brief().flow());
    }

    /** The verdict on it, as far as the box alone decides. */
    public static PathResult.Air verdict(Brief brief, PathAir air) {
        boolean pressure = air.pressureHigh() <= allowed(brief);
        boolean velocity = air.velocities().stream().allMatch(v -> kept(brief, v));
        return new PathResult.Air(pressure && velocity, pressure, velocity, true);
    }

    /** The verdict on it with what the path carries in the room; null when that has no answer. */
    static PathResult.Air verdict(Brief brief, PathAir air, PathFlow carried) {
        PathResult.Air box = verdict(brief, air);
        boolean enough = carried == null || !carried.answers() || carried.least() >= brief.flow() * (1 - SLACK);
        return new PathResult.Air(box.ok() && enough, box.pressureOk(), box.velocityOk(), enough);
    }

    /** Most the path may cost at the flow of the brief: the brief's limit, or what its drive gives if that is less, Pa. */
    public static double allowed(Brief brief) {
        Drive drive = brief.drive();
        if (drive == null) {
            return brief.maxPressureDrop();
        }
        return switch (drive.kind()) {
            case NOTHING, GIVEN_FLOW -> brief.maxPressureDrop();
            case GIVEN_PRESSURE -> Math.min(brief.maxPressureDrop(), drive.pressure());
            case FAN_CURVE -> Math.min(brief.maxPressureDrop(), fanPressure(brief));
        };
    }

    private static double fanPressure(Brief brief) {
        FanCurve fan = FanCurve.of(brief.drive());
        double flow = Math.max(brief.flow(), fan.leastFlow());
        return flow > fan.largestFlow() ? 0 : fan.pressure(flow);
    }

    /** The limit at one place, m/s. The port over the opening is as large as that is, so it is held to the path's limit. */
    public static double limit(Brief brief, PathAir.PlaceVelocity place) {
        return place.place() == PathAir.Place.ROOM_MOUTH ? brief.maxOpeningVelocity() : brief.maxPathVelocity();
    }

    /** Whether the air keeps its limit at one place. */
    public static boolean kept(Brief brief, PathAir.PlaceVelocity place) {
        return place.velocity() <= limit(brief, place) + SLACK;
    }
}
