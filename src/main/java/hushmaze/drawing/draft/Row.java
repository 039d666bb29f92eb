package hushmaze.drawing.draft;

import hushmaze.drawing.Sketch;

/**
 * A strip of a column of text that stays in one piece.
 *
 * @param gap above it, unless it comes first in its column, mm
 * @param height mm
 * @param keepWithNext whether the next strip must be in the same column
 * @param header drawn again above this strip when it comes first in a column; null for none
 * @param content with its upper left corner at the origin
 */
record Row(double gap, double height, boolean keepWithNext, Row header, Sketch content) {}
