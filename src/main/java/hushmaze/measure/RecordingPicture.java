package hushmaze.measure;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.work.Progress;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * What is to be seen of one channel of a whole recording: columns of equal duration, each with its peaks and its levels in third octaves.
 * A sine at full scale is 0 dB. Immutable; its size does not grow with the recording.
 *
 * <p>Levels come as late as the filters bring them: in a band up to 0.1 s (at 50 Hz, less in proportion to the frequency), with the
 * weighting A not noticeably.
 */
public final class RecordingPicture {
    /** Columns, at most. */
    public static final int MOST_COLUMNS = 2000;

    /** A column is at least so long, s: one period of the lowest band. */
    private static final double SHORTEST_S = 0.02;

    private final Recording whole;
    private final int rate;
    private final int channels;
    private final int channel;
    private final double[] least;
    private final double[] greatest;
    private final boolean[] full;
    private final double[] weighted;
    private final double[] bands;
    private final boolean[] covered;

    private RecordingPicture(WavHeader header, int channel, Meter meter) {
        whole = meter.recording();
        rate = header.rate();
        channels = header.channels();
        this.channel = channel;
        least = meter.least();
        greatest = meter.greatest();
        full = meter.full();
        weighted = each(meter.weightedMeans(), RecordingPicture::level);
        bands = each(meter.bandMeans(), RecordingPicture::level);
        covered = meter.covered();
    }

    private static double level(double meanSquare) {
        return Energy.db(meanSquare) - Recording.SINE;
    }

    private static double[] each(double[] values, DoubleUnaryOperator turned) {
        return DoubleStream.of(values).map(turned).toArray();
    }

    /**
     * Reads all of a WAVE file.
     *
     * @param in its bytes, buffered; not closed
     * @param name for messages
     * @param channel counted from 1
     * @throws hushmaze.quantity.InvalidValue if it cannot be read, or is shorter than a second
     */
    public static RecordingPicture read(InputStream in, String name, int channel, Progress progress)
            throws IOException {
        WavSamples samples = new WavSamples(in, name, channel);
        WavHeader header = samples.header();
        Recording.requireSpan(name, header, 0, header.frames());
        int columns = (int) Math.min(MOST_COLUMNS, header.frames() / (SHORTEST_S * header.rate()));
        Meter meter = new Meter(header.rate(), 0, header.frames(), columns);
        meter.run(samples, progress);
        return new RecordingPicture(header, channel, meter);
    }

    /** Levels of all of it. */
    public Recording whole() {
        return whole;
    }

    /** Duration, s. */
    public double seconds() {
        return whole.seconds();
    }

    /** Sampling rate, Hz. */
    public int rate() {
        return rate;
    }

    /** Channels of the file. */
    public int channels() {
        return channels;
    }

    /** The channel it is of, counted from 1. */
    public int channel() {
        return channel;
    }

    /** Number of columns. */
    public int columns() {
        return least.length;
    }

    /** Duration of a column, s. */
    public double columnSeconds() {
        return seconds() / columns();
    }

    /** Least sample of a column, full scale being -1; zero at most. */
    public double least(int column) {
        return least[column];
    }

    /** Greatest sample of a column, full scale being 1; zero at least. */
    public double greatest(int column) {
        return greatest[column];
    }

    /** Whether a sample of a column was at full scale. */
    public boolean isFull(int column) {
        return full[column];
    }

    /** Whether a third octave has levels; its upper edge may be too high for the sampling rate. */
    public boolean covered(int band) {
        return covered[band];
    }

    /** Level of the mean square of a column in a third octave, dB; negative infinity for silence. */
    public double level(int column, int band) {
        return bands[column * BandSet.THIRD_OCTAVE.size() + band];
    }

    /** A-weighted level of the mean square of a column, dB; negative infinity for silence. */
    public double weighted(int column) {
        return weighted[column];
    }
}
