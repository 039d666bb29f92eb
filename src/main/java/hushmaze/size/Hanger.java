package hushmaze.size;

import hushmaze.assess.BoxFit;
import hushmaze.build.fixing.Hanging;
import hushmaze.project.Brief;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;
import java.util.Optional;

/** Finds out how a box can be fixed as its brief has it. The rows of screws follow the box; all else stays as it was
 * asked for. What is not computed, as screws into anything but studs and joists, keeps no box away. */
final class Hanger {
    /** Distances that are tried where the one asked for will not do, as shares of what the box reaches; our own choice. */
    private static final double[] SHARES = {0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.55, 0.5, 0.45, 0.4, 0.35, 0.3};

    private static final double STEP = 0.01;

    private Hanger() {}

    /** The brief with rows at a distance that holds the box; nothing where none of those tried does. */
    static Optional<Brief> on(Solid solid, Brief brief) {
        Mounting mounting = brief.construction().mounting();
        Opening.Surface surface = brief.opening().surface();
        if (!brief.onCleats() || BoxFit.holds(solid, brief)) {
            return Optional.of(brief);
        }
        Axis level = BoxFit.level(solid, brief);
        double reach = Hanging.of(solid, surface, level, mounting).reach();
        for (double share : SHARES) {
            double distance = Math.floor(share * reach / STEP) * STEP;
            if (distance >= Mounting.LEAST_ROWS) {
                Mounting moved = mounting.withRowDistance(distance);
                Brief other = brief.withConstruction(brief.construction().mounted(moved));
                if (BoxFit.holds(solid, other)) {
                    return Optional.of(other);
                }
            }
        }
        return Optional.empty();
    }
}
