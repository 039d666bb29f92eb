package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.air.PathLosses;
import hushmaze.project.Brief;
import hushmaze.project.VentPath;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;

/** Judges the air of one path: pressure drop at the high edge, and every velocity, against the brief's limits. */
public final class AirJudge {
    /** Velocities this close to their limit keep it: sizes are rounded to whole steps. */
    private static final double SLACK = 1e-9;

    private AirJudge() {}

    /** The air through a box at the brief's flow. */
    public static PathAir air(VentPath path, Solid solid, AirState air) {
        return PathLosses.of(solid, path.brief().opening(), path.brief().flow(), air, path.purpose());
    }

    /** The verdict on it. */
    public static PathResult.Air verdict(Brief brief, PathAir air) {
        boolean pressure = air.pressureHigh() <= brief.maxPressureDrop();
        boolean velocity = air.velocities().stream().allMatch(v -> kept(brief, v));
        return new PathResult.Air(pressure && velocity, pressure, velocity);
    }

    /** The limit at one place, m/s. The port over the opening is as large as that is, so it is held to the path's limit. */
    public static double limit(Brief brief, PathAir.PlaceVelocity place) {
        return place.part().equals(PortPlace.IN_ROOM) ? brief.maxOpeningVelocity() : brief.maxPathVelocity();
    }

    /** Whether the air keeps its limit at one place. */
    public static boolean kept(Brief brief, PathAir.PlaceVelocity place) {
        return place.velocity() <= limit(brief, place) + SLACK;
    }
}
