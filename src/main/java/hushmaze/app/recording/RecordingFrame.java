package hushmaze.app.recording;

/**
 * Where things are on the canvas, pixels: the wave above, the third octaves below, one time axis for both.
 *
 * @param left of both
 * @param width of both
 * @param waveTop of the wave
 * @param waveHeight of the wave
 * @param top of the third octaves
 * @param height of the third octaves
 * @param seconds over the whole width
 */
record RecordingFrame(
        double left, double width, double waveTop, double waveHeight, double top, double height, double seconds) {
    /** Room for the figures of frequency, of the legend and of time. */
    private static final double AT_LEFT = 40;

    static final double AT_RIGHT = 56;
    private static final double AT_BOTTOM = 22;
    private static final double AT_TOP = 6;
    private static final double BETWEEN = 6;
    private static final double WAVE_SHARE = 0.28;
    private static final double LEAST_WAVE = 30;
    private static final double MOST_WAVE = 110;

    static RecordingFrame of(double width, double height, double seconds) {
        double all = height - AT_TOP - AT_BOTTOM - BETWEEN;
        double wave = Math.round(Math.max(LEAST_WAVE, Math.min(MOST_WAVE, WAVE_SHARE * all)));
        return new RecordingFrame(
                AT_LEFT,
                Math.max(1, Math.floor(width - AT_LEFT - AT_RIGHT)),
                AT_TOP,
                wave,
                AT_TOP + wave + BETWEEN,
                Math.max(1, Math.floor(all - wave)),
                seconds);
    }

    double bottom() {
        return top + height;
    }

    /** Pixel of a time. */
    double x(double time) {
        return left + width * time / seconds;
    }

    /** Time of a pixel, inside the recording, s. */
    double time(double x) {
        return Math.max(0, Math.min(seconds, (x - left) / width * seconds));
    }
}
