package hushmaze.material;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * How boards are cut.
 *
 * @param name of the saw or blade
 * @param kerf width of the cut, m (0 to 12 mm)
 * @param trim strip taken off every factory edge before it is used, m (0 to 50 mm)
 * @param source where the numbers are from
 */
public record Saw(
        String name,
        @Measured(Unit.MILLIMETRE) double kerf,
        @Measured(Unit.MILLIMETRE) double trim,
        String source) {
    public Saw {
        InvalidValue.text("name", name, 80);
        InvalidValue.within("kerf", kerf, 0, 0.012, Unit.MILLIMETRE);
        InvalidValue.within("trim", trim, 0, 0.05, Unit.MILLIMETRE);
        InvalidValue.text("source", source, 400);
    }
}
