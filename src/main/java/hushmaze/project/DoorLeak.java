package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * What leaks around the shut door of the quiet room.
 *
 * @param length of the gaps together, m
 * @param width of the gaps, m
 * @param source measured or assumed: where the sizes are from
 */
public record DoorLeak(
        @Measured(Unit.METRE) double length,
        @Measured(Unit.MILLIMETRE) double width,
        String source) {
    public DoorLeak {
        InvalidValue.within("length", length, 0.01, 50, Unit.METRE);
        InvalidValue.within("width", width, 1e-5, 0.1, Unit.MILLIMETRE);
        InvalidValue.text("source", source, 400);
    }

    /** Free area, m². */
    public double area() {
        return length * width;
    }
}
