package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * The room there is for the box.
 *
 * @param width along the surface the opening is in, m
 * @param height along that surface, the other way, m
 * @param depth away from that surface, m
 */
public record Space(
        @Measured(Unit.MILLIMETRE) double width,
        @Measured(Unit.MILLIMETRE) double height,
        @Measured(Unit.MILLIMETRE) double depth) {
    public Space {
        InvalidValue.within("width", width, 0.05, 10, Unit.MILLIMETRE);
        InvalidValue.within("height", height, 0.05, 10, Unit.MILLIMETRE);
        InvalidValue.within("depth", depth, 0.05, 10, Unit.MILLIMETRE);
    }
}
