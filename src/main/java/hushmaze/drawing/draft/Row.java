package hushmaze.drawing.draft;

import hushmaze.drawing.Sketch;
import java.util.function.Supplier;

/**
 * A strip of a column of text that stays in one piece.
 *
 * @param gap above it, unless it comes first in its column, mm
 * @param height mm
 * @param keepWithNext whether the next strip must be in the same column
 * @param header drawn again above this strip when it comes first in a column; null for none
 * @param content draws it at its height, with its upper left corner at the origin
 * @param stretch to other heights; null if it has one height only
 */
record Row(double gap, double height, boolean keepWithNext, Row header, Supplier<Sketch> content, Stretch stretch) {
    Row(double gap, double height, boolean keepWithNext, Row header, Sketch content) {
        this(gap, height, keepWithNext, header, () -> content, null);
    }

    /** By how much it can be made lower, mm. */
    double give() {
        return stretch == null ? 0 : height - stretch.least();
    }

    /** Draws it. */
    Sketch at(double other) {
        return other == height ? content.get() : stretch.drawn().apply(other);
    }
}
