package hushmaze.air;

import hushmaze.quantity.Notice;
import java.util.List;

/**
 * The air through one box.
 *
 * @param flow m³/s
 * @param losses in the order of the air
 * @param velocities at every place worth knowing, in the order of the air
 * @param notices about formulas outside their range
 */
public record PathAir(double flow, List<Loss> losses, List<PlaceVelocity> velocities, List<Notice> notices) {
    /**
     * Mean velocity somewhere along the path.
     *
     * @param part "inlet", "pass 1", "turn 1", "outlet"
     * @param opening whether the limit for openings holds there, else the one for the path
     * @param velocity m/s
     */
    public record PlaceVelocity(String part, boolean opening, double velocity) {}

    public PathAir {
        losses = List.copyOf(losses);
        velocities = List.copyOf(velocities);
        notices = List.copyOf(notices);
    }

    /** Low pressure drop of the whole path, Pa. */
    public double pressureLow() {
        return losses.stream().mapToDouble(Loss::pressureLow).sum();
    }

    /** Likely pressure drop of the whole path, Pa: exactly the sum of the listed losses. */
    public double pressure() {
        return losses.stream().mapToDouble(Loss::pressure).sum();
    }

    /** High pressure drop of the whole path, Pa. */
    public double pressureHigh() {
        return losses.stream().mapToDouble(Loss::pressureHigh).sum();
    }
}
