package hushmaze.sound.wall;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A gap along a joint, as the area it lets all sound through.
 *
 * <p>Formula: leak area = width × length, transmission coefficient τ = 1.
 *
 * <p>Symbols: sizes in m, area in m².
 *
 * <p>Source: the usual treatment of small openings in composite walls (textbook, from memory).
 *
 * <p>Range: any gap. A hairline gap in a thick board damps what passes through it, and a long gap resonates along its depth.
 *
 * <p>Accuracy: pessimistic for gaps below 0.3 mm at low and mid frequency.
 *
 * <p>Differs from the source: nothing.
 *
 * @param width of the gap, m
 * @param length along the joint, m
 */
record SlitLeak(double width, double length) {
    public SlitLeak {
        InvalidValue.within("width", width, 0, 0.1, Unit.MILLIMETRE);
        InvalidValue.within("length", length, 0, Double.POSITIVE_INFINITY, Unit.METRE);
    }

    /** Area with full transmission, m². */
    public double area() {
        return width * length;
    }
}
