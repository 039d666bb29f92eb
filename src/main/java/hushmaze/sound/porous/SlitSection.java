package hushmaze.sound.porous;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A slit of air between two rigid walls that may each carry a porous layer.
 *
 * @param low depth of the layer on the first wall, m; zero for a bare wall
 * @param width of the air, m
 * @param high depth of the layer on the second wall, m; zero for a bare wall
 */
public record SlitSection(double low, double width, double high) {
    /** A layer thinner than this is taken for a bare wall, m. */
    private static final double NOTHING = 1e-6;

    public SlitSection {
        InvalidValue.within("low", low, 0, 100, Unit.MILLIMETRE);
        InvalidValue.within("width", width, 1e-6, 100, Unit.MILLIMETRE);
        InvalidValue.within("high", high, 0, 100, Unit.MILLIMETRE);
        low = low < NOTHING ? 0 : low;
        high = high < NOTHING ? 0 : high;
    }

    /** From wall to wall, m. */
    public double total() {
        return low + width + high;
    }

    /** Whether neither wall carries a layer. */
    public boolean bare() {
        return low == 0 && high == 0;
    }

    /** The same slit seen from the other side. */
    public SlitSection mirrored() {
        return new SlitSection(high, width, low);
    }
}
