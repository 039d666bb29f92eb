package hushmaze.air;

import hushmaze.quantity.Notice;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The air through one box.
 *
 * @param flow m³/s
 * @param losses in the order of the air
 * @param velocities at every place worth knowing, in the order of the air
 * @param notices about formulas outside their range
 */
public record PathAir(double flow, List<Loss> losses, List<PlaceVelocity> velocities, List<Notice> notices) {
    /** Kinds of place, for the limits that hold there. */
    public enum Place {
        /** Inside the box or a duct. */
        INSIDE,
        /** Where the box stands over the opening. */
        OPENING_PORT,
        /** Where the air goes into the room or out of it. */
        ROOM_MOUTH
    }

    /**
     * Mean velocity somewhere along the path.
     *
     * @param part "opening port", "pass 1", "turn 1", "room port", "grille room port"
     * @param place kind of place
     * @param velocity m/s
     */
    public record PlaceVelocity(String part, Place place, double velocity) {}

    public PathAir {
        losses = List.copyOf(losses);
        velocities = List.copyOf(velocities);
        notices = List.copyOf(notices);
    }

    /** Low pressure drop of the whole path, Pa. */
    public double pressureLow() {
        return total(Loss::pressureLow);
    }

    /** Likely pressure drop of the whole path, Pa: exactly the sum of the listed losses. */
    public double pressure() {
        return total(Loss::pressure);
    }

    /** High pressure drop of the whole path, Pa. */
    public double pressureHigh() {
        return total(Loss::pressureHigh);
    }

    /** Plain sum from first to last, so that whoever adds up the list gets the same to the last bit. */
    private double total(ToDoubleFunction<Loss> pressure) {
        double total = 0;
        for (Loss loss : losses) {
            total += pressure.applyAsDouble(loss);
        }
        return total;
    }
}
