package hushmaze.measure;

import hushmaze.quantity.BandLevels;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.work.Progress;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;

/**
 * Levels of a recording: third octaves, and weighted mean and percentiles. A sine at full scale is 0 dB, so that without a
 * calibration only differences between recordings of the same chain mean anything.
 *
 * @param bands mean levels in third octaves, dB; bands too high for the sampling rate have none
 * @param weighted by frequency weighting
 * @param seconds that were measured
 * @param overloads samples at full scale among them
 */
public record Recording(BandLevels bands, Map<Weighting, Levels> weighted, double seconds, long overloads) {
    /** Mean square of a sine at full scale, dB re one. */
    static final double SINE = Energy.db(0.5);

    /** A span is at least so long, s. */
    public static final double SHORTEST_S = 1;

    /** What two times may lose where they are added and taken from each other, s. */
    private static final double ROUNDING_S = 1e-6;

    /**
     * Weighted levels, dB.
     *
     * @param leq mean
     * @param l10 exceeded for a tenth of the time, Fast
     * @param l90 exceeded for nine tenths of the time, Fast
     */
    public record Levels(double leq, double l10, double l90) {}

    /**
     * Which part of a recording.
     *
     * @param channel counted from 1
     * @param from begin of the span, s
     * @param to end of the span, s; null for the end of the recording
     */
    public record Span(int channel, double from, Double to) {
        /** All of the first channel. */
        public static final Span ALL = new Span(1, 0, null);

        public Span {
            InvalidValue.within("from", from, 0, 1e6, Unit.NUMBER);
            if (to != null && !(to >= from + SHORTEST_S - ROUNDING_S && to <= 1e6)) {
                throw new InvalidValue("to", to + " s", "at least " + SHORTEST_S + " s after from", "");
            }
        }
    }

    public Recording {
        weighted = Map.copyOf(weighted);
    }

    /**
     * Measures a WAVE file.
     *
     * @param in its bytes, buffered; read up to the end of the span and not closed
     * @param name for messages
     * @param span which part
     * @throws InvalidValue if it cannot be read, or the span is not in it
     */
    public static Recording read(InputStream in, String name, Span span, Progress progress) throws IOException {
        WavSamples samples = new WavSamples(in, name, span.channel());
        int rate = samples.header().rate();
        long from = Math.round(span.from() * rate);
        long to = span.to() == null ? samples.header().frames() : Math.round(span.to() * rate);
        requireSpan(name, samples.header(), from, to);
        Meter meter = new Meter(rate, from, to, 1);
        meter.run(samples, progress);
        return meter.recording();
    }

    /** Requires a span to be in the recording and long enough. */
    static void requireSpan(String name, WavHeader header, long from, long to) {
        // the span may have lost one sample to rounding
        if (to > header.frames() || to - from < SHORTEST_S * header.rate() - 1) {
            throw new InvalidValue(
                    name,
                    InvalidValue.shown((double) header.frames() / header.rate(), Unit.NUMBER) + " s long",
                    "at least as long as the span, which must have " + SHORTEST_S + " s or more",
                    "");
        }
    }
}
