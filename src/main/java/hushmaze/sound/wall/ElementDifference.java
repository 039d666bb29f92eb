package hushmaze.sound.wall;

import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;

/**
 * Element-normalized level difference, D_n,e: the loss of a small element referred to 10 m² instead of its own area.
 *
 * <p>Formula: D_n,e = R + 10 lg(A0/S). An open hole, R = 0: 10 lg(A0/So). A box over an opening: insertion loss + 10
 * lg(A0/So).
 *
 * <p>Symbols: R loss in dB; S area of the element, So of the bare opening in m²; A0 = 10 m².
 *
 * <p>Source: EN ISO 10140-1 and -2, definition and A0 as read in public glossaries; the conversion from memory.
 *
 * <p>Range: elements of less than 1 m². The hole is taken to let all sound pass; at low frequency a small or a deep one lets
 * through more or less by up to 3 dB.
 *
 * <p>Accuracy: exact but for the hole.
 *
 * <p>Differs from the source: nothing.
 */
public final class ElementDifference {
    /** Reference absorption area, m². */
    public static final double REFERENCE_AREA = 10;

    private ElementDifference() {}

    /** Difference of an open hole of an area in m², dB. */
    public static double ofOpening(double area) {
        InvalidValue.within("area", area, 1e-6, 1e3, Unit.SQUARE_METRE);
        return Energy.db(REFERENCE_AREA / area);
    }

    /** Difference of a box with an insertion loss in dB over a bare opening of an area in m². */
    public static Spectrum ofBox(Spectrum insertionLoss, double openingArea) {
        return insertionLoss.plus(ofOpening(openingArea));
    }

    /** Loss of an element referred to an area in m², dB. */
    public static Spectrum reduction(Spectrum difference, double area) {
        return difference.plus(-ofOpening(area));
    }
}
