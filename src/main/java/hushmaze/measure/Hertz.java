package hushmaze.measure;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/** Frequencies in messages. */
final class Hertz {
    private Hertz() {}

    /** As a person would write it, without the unit. */
    static String text(double hz) {
        return InvalidValue.shown(hz, Unit.HERTZ);
    }
}
