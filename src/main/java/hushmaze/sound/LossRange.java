package hushmaze.sound;

import hushmaze.quantity.Spectrum;

/**
 * A loss as a range, per band, dB.
 *
 * @param low pessimistic edge
 * @param likely our best figure
 * @param high optimistic edge
 */
public record LossRange(Spectrum low, Spectrum likely, Spectrum high) {
    private static final double ROUNDING = 1e-9;

    public LossRange {
        for (int i = 0; i < likely.size(); i++) {
            if (low.value(i) > likely.value(i) + ROUNDING || likely.value(i) > high.value(i) + ROUNDING) {
                throw new IllegalArgumentException("a range that does not rise at band " + i + ": " + low.value(i)
                        + ", " + likely.value(i) + ", " + high.value(i) + " dB");
            }
        }
    }

    /** The same range per octave, for equal incident energy in the three thirds. */
    public LossRange inOctaves() {
        return new LossRange(low.lossesInOctaves(), likely.lossesInOctaves(), high.lossesInOctaves());
    }
}
