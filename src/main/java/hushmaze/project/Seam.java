package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * A plane across the passes at which every board and liner that crosses it is made of two.
 *
 * @param kind glued for good, or made to come apart
 * @param position from the outer face of the near end, where the first pass begins, m (0.05 to 6 m)
 */
public record Seam(Kind kind, @Measured(Unit.MILLIMETRE) double position) {
    /** What holds the two sides together. */
    public enum Kind {
        /** Butted, dowelled and glued: for boards longer than the sheets. Layers are staggered. */
        GLUED,
        /** A gasket and connecting plates: for a box too heavy to lift or too big for the door. */
        PARTING
    }

    /** Whether it comes apart. */
    public boolean comesApart() {
        return kind == Kind.PARTING;
    }

    public Seam {
        InvalidValue.present("kind", kind);
        InvalidValue.within("position", position, 0.05, 6, Unit.MILLIMETRE);
    }
}
