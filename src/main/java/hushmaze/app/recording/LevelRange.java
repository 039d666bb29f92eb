package hushmaze.app.recording;

import hushmaze.measure.RecordingPicture;
import hushmaze.quantity.BandSet;
import java.util.Arrays;

/**
 * Levels from the first colour to the last, dB: up to the loudest there is, down to the quiet ones, in whole tens of what is shown.
 *
 * @param low and below: the first colour
 * @param high the last colour
 */
record LevelRange(double low, double high) {
    private static final double TEN = 10;
    private static final double LEAST = 30;
    private static final double MOST = 80;
    /** Share of levels that may be below. */
    private static final double RARE = 0.05;

    /** @param added to the levels where they are shown, dB */
    static LevelRange of(RecordingPicture picture, double added) {
        double[] levels = new double[picture.columns() * BandSet.THIRD_OCTAVE.size()];
        int n = 0;
        for (int column = 0; column < picture.columns(); column++) {
            for (int band = 0; band < BandSet.THIRD_OCTAVE.size(); band++) {
                double level = picture.level(column, band);
                if (picture.covered(band) && Double.isFinite(level)) {
                    levels[n++] = level + added;
                }
            }
        }
        if (n == 0) {
            return new LevelRange(added - LEAST, added);
        }
        Arrays.sort(levels, 0, n);
        double high = TEN * Math.ceil(levels[n - 1] / TEN);
        double low = TEN * Math.floor(levels[(int) (RARE * (n - 1))] / TEN);
        return new LevelRange(Math.max(high - MOST, Math.min(high - LEAST, low)), high);
    }

    /** Share of the colours for a level that is shown. */
    double share(double level) {
        return (level - low) / (high - low);
    }
}
