package hushmaze.drawing.draft;

import java.util.stream.DoubleStream;

/**
 * A straight axis of decibels, upwards on the page: place = bottom - (bottom - top) · (value - low) / (high - low).
 *
 * @param low value at the bottom, dB
 * @param high value at the top, dB
 * @param bottom mm
 * @param top mm, less than bottom
 */
public record LevelAxis(double low, double high, double bottom, double top) {
    private static final double STEP = 10;
    /** Least distance of two grid lines, mm. */
    private static final double APART = 4;

    /** An axis in whole tens around all finite values, at least 40 dB long, not lower than a limit. */
    public static LevelAxis around(DoubleStream values, double lowest, double bottom, double top) {
        double[] finite = values.filter(Double::isFinite).toArray();
        double max = DoubleStream.of(finite).max().orElse(lowest + 40);
        double min = DoubleStream.of(finite).min().orElse(lowest);
        double low = Math.max(lowest, Math.floor(min / STEP) * STEP);
        double high = Math.max(low + 4 * STEP, Math.ceil((max + 1) / STEP) * STEP);
        return new LevelAxis(low, high, bottom, top);
    }

    /** Place of a value, mm. */
    public double place(double value) {
        return bottom - (bottom - top) * (value - low) / (high - low);
    }

    /** Distance of two grid lines, dB: so far apart that the figures at them are. */
    public double grid() {
        return high - low > 90 || place(low) - place(low + STEP) < APART ? 2 * STEP : STEP;
    }
}
