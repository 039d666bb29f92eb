package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * What leaks around the shut door of the quiet room.
 *
 * @param length of the gaps together, m
 * @param width of the gaps, m
 * @param depth of the gaps in the direction of the air, m; absent for sharp edges, where depth does not count
 * @param undercutLength of the gap below the door, where it is larger than the others, m; absent if it is not
 * @param undercutHeight of that gap, m; absent if it is not
 * @param source measured or assumed: where the sizes are from
 */
public record DoorLeak(
        @Measured(Unit.METRE) double length,
        @Measured(Unit.MILLIMETRE) double width,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double depth,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double undercutLength,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double undercutHeight,
        String source) {
    public DoorLeak {
        InvalidValue.within("length", length, 0.01, 50, Unit.METRE);
        InvalidValue.within("width", width, 1e-5, 0.1, Unit.MILLIMETRE);
        if (depth != null) {
            InvalidValue.within("depth", depth, 0.001, 0.5, Unit.MILLIMETRE);
        }
        if (undercutLength != null) {
            InvalidValue.within("undercutLength", undercutLength, 0.1, 5, Unit.MILLIMETRE);
            InvalidValue.present("undercutHeight", undercutHeight);
        }
        if (undercutHeight != null) {
            InvalidValue.within("undercutHeight", undercutHeight, 0.0005, 0.1, Unit.MILLIMETRE);
            InvalidValue.present("undercutLength", undercutLength);
        }
        InvalidValue.text("source", source, 400);
    }

    /** Gaps with sharp edges, all alike. */
    public DoorLeak(double length, double width, String source) {
        this(length, width, null, null, null, source);
    }

    /** Free area of all gaps, m². */
    public double area() {
        return length * width + undercutArea();
    }

    /** Free area below the door, m²; zero if that gap is like the others. */
    public double undercutArea() {
        return undercutLength == null ? 0 : undercutLength * undercutHeight;
    }
}
