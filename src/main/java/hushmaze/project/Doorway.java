package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * The narrowest place the box must be carried through.
 *
 * @param width clear, m
 * @param height clear, m
 */
public record Doorway(
        @Measured(Unit.MILLIMETRE) double width,
        @Measured(Unit.MILLIMETRE) double height) {
    public Doorway {
        InvalidValue.within("width", width, 0.2, 5, Unit.MILLIMETRE);
        InvalidValue.within("height", height, 0.2, 5, Unit.MILLIMETRE);
    }

    /** Whether a block with these three sides goes through, one way or another, m. */
    public boolean lets(double a, double b, double c) {
        double[] sides = {a, b, c};
        java.util.Arrays.sort(sides);
        return sides[0] <= Math.min(width, height) && sides[1] <= Math.max(width, height);
    }
}
