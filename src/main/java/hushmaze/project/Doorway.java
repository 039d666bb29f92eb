package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;
import java.util.Arrays;

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
        Arrays.sort(sides);
        return sides[0] <= narrow() && sides[1] <= wide();
    }

    /** The lesser of width and height, m. */
    public double narrow() {
        return Math.min(width, height);
    }

    /** The greater of width and height, m. */
    public double wide() {
        return Math.max(width, height);
    }
}
