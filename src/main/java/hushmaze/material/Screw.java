package hushmaze.material;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * A screw for panels.
 *
 * @param name as bought
 * @param diameter nominal, m
 * @param length m
 * @param pilot diameter of the hole to drill first, m
 * @param source where the numbers are from
 */
public record Screw(
        String name,
        @Measured(Unit.MILLIMETRE) double diameter,
        @Measured(Unit.MILLIMETRE) double length,
        @Measured(Unit.MILLIMETRE) double pilot,
        String source) {
    public Screw {
        InvalidValue.text("name", name, 80);
        InvalidValue.within("diameter", diameter, 0.002, 0.02, Unit.MILLIMETRE);
        InvalidValue.within("length", length, 0.01, 0.3, Unit.MILLIMETRE);
        InvalidValue.within("pilot", pilot, 0.001, diameter, Unit.MILLIMETRE);
        InvalidValue.text("source", source, 400);
    }

    /** Hole through the board a screw only passes, m: half a millimetre wider than the screw; common practice, no source. */
    public double clearanceHole() {
        return diameter + 0.0005;
    }
}
