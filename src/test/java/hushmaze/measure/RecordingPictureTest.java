package hushmaze.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.measure.WavBytes.Kind;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.work.Progress;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: bursts of tones are in the columns of their times with the level 20 lg a of their amplitude a, their peaks and the weighting
 * A of the table of IEC 61672-1. Property: the columns add up to the levels of the whole, and there are never more than a few.
 */
class RecordingPictureTest {
    private static final int RATE = 48_000;
    /** Places of 125 Hz, 1 kHz and 4 kHz among the third octaves. */
    private static final int LOW = 4;

    private static final int MIDDLE = 13;
    private static final int HIGH = 19;

    private static RecordingPicture read(byte[] wav, int channel) {
        return read(wav, channel, Progress.NONE);
    }

    private static RecordingPicture read(byte[] wav, int channel, Progress progress) {
        try {
            return RecordingPicture.read(new ByteArrayInputStream(wav), "x.wav", channel, progress);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** A tone of an amplitude while it lasts. */
    private static double burst(int i, double from, double to, double hz, double amplitude) {
        double t = (double) i / RATE;
        return t >= from && t < to ? amplitude * Math.sin(2 * Math.PI * hz * t) : 0;
    }

    @Test
    void burstsAreWhereAndAsLoudAsTheyWere() {
        double low = BandSet.THIRD_OCTAVE.centreHz(LOW);
        double high = BandSet.THIRD_OCTAVE.centreHz(HIGH);
        RecordingPicture picture = read(
                WavBytes.of(
                        Kind.FLOAT32,
                        RATE,
                        1,
                        10 * RATE,
                        i -> burst(i, 1, 2, 1000, 0.5) + burst(i, 4, 4.5, high, 0.1) + burst(i, 6, 9, low, 0.2)),
                1);
        assertThat(picture.columns()).isEqualTo(500);
        assertThat(picture.columnSeconds()).isCloseTo(0.02, within(1e-12));
        // 20 lg 0.5 = -6.02, 20 lg 0.1 = -20, 20 lg 0.2 = -13.98; A is 0, 1.0 and -16.1 dB there
        check(picture, MIDDLE, 1, 2, 0.5, -6.02, 0);
        check(picture, HIGH, 4, 4.5, 0.1, -20, 1.0);
        check(picture, LOW, 6, 9, 0.2, -13.98, -16.1);
    }

    /** In the burst, from a while after its begin, as loud as it is; before it and a while after it hardly anything. */
    private static void check(
            RecordingPicture picture, int band, double from, double to, double amplitude, double level, double a) {
        int first = (int) Math.round(from / 0.02);
        int end = (int) Math.round(to / 0.02);
        int late = (int) Math.ceil(12 / BandSet.THIRD_OCTAVE.centreHz(band) / 0.02) + 2;
        for (int column = first - 25; column < end + 40; column++) {
            String where = "column " + column;
            boolean inside = column >= first && column < end;
            assertThat(picture.greatest(column)).as(where).isCloseTo(inside ? amplitude : 0, within(0.002));
            assertThat(picture.least(column)).as(where).isCloseTo(inside ? -amplitude : 0, within(0.002));
            if (column >= first + late && column < end) {
                assertThat(picture.level(column, band)).as(where).isCloseTo(level, within(0.1));
                assertThat(picture.weighted(column)).as(where).isCloseTo(level + a, within(0.25));
                assertThat(picture.level(column, band > MIDDLE ? LOW : HIGH))
                        .as(where)
                        .isLessThan(level - 60);
            } else if (column < first - 1 || column >= end + 4 * late) {
                assertThat(picture.level(column, band)).as(where).isLessThan(level - 40);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"44100, 7.3, 365", "48000, 1, 50", "8000, 100, 2000", "4000, 50, 2000", "96000, 2.51, 125"})
    void columnsAddUpToTheWhole(int rate, double seconds, int columns) throws IOException {
        Random random = new Random(3);
        int frames = (int) Math.round(seconds * rate);
        IntToDoubleFunction noise = i -> (i / (rate / 3) % 2 == 0 ? 0.02 : 0.1) * random.nextGaussian();
        byte[] wav = WavBytes.of(Kind.FLOAT32, rate, 1, frames, noise);
        RecordingPicture picture = read(wav, 1);
        assertThat(picture.columns()).isEqualTo(columns);
        assertThat(picture.seconds()).isCloseTo(seconds, within(1.0 / rate));
        Recording whole = Recording.read(new ByteArrayInputStream(wav), "x.wav", Recording.Span.ALL, Progress.NONE);
        for (int band = 0; band < BandSet.THIRD_OCTAVE.size(); band++) {
            assertThat(picture.covered(band)).isEqualTo(whole.bands().covered(band));
            if (picture.covered(band)) {
                assertThat(picture.whole().bands().level(band))
                        .isCloseTo(whole.bands().level(band), within(1e-9));
                // low bands run at a low rate: columns differ by one of a few samples
                assertThat(mean(picture, band))
                        .isCloseTo(whole.bands().level(band), within(band < MIDDLE ? 0.2 : 0.02));
            }
        }
        for (Weighting weighting : Weighting.values()) {
            Recording.Levels levels = picture.whole().weighted().get(weighting);
            assertThat(levels.leq()).isCloseTo(whole.weighted().get(weighting).leq(), within(1e-9));
            assertThat(levels.l10()).isEqualTo(whole.weighted().get(weighting).l10());
            assertThat(levels.l90()).isEqualTo(whole.weighted().get(weighting).l90());
        }
        double[] weighted =
                IntStream.range(0, columns).mapToDouble(picture::weighted).toArray();
        assertThat(Energy.mean(weighted))
                .isCloseTo(whole.weighted().get(Weighting.A).leq(), within(0.02));
    }

    private static double mean(RecordingPicture picture, int band) {
        return Energy.mean(IntStream.range(0, picture.columns())
                .mapToDouble(column -> picture.level(column, band))
                .toArray());
    }

    @Test
    void overloadIsWhereItWas() {
        RecordingPicture picture =
                read(WavBytes.of(Kind.PCM16, 8000, 1, 16_000, i -> i == 4000 || i == 15_999 ? -1 : 0.1), 1);
        assertThat(IntStream.range(0, picture.columns()).filter(picture::isFull))
                .containsExactly(25, 99);
        assertThat(picture.whole().overloads()).isEqualTo(2);
    }

    @Test
    void itIsOfOneChannel() {
        byte[] wav = WavBytes.of(Kind.PCM24, 8000, 2, 16_000, i -> i % 2 == 0 ? 0.5 : -0.5);
        RecordingPicture second = read(wav, 2);
        assertThat(second.channels()).isEqualTo(2);
        assertThat(second.channel()).isEqualTo(2);
        assertThat(second.rate()).isEqualTo(8000);
        assertThat(second.greatest(7)).isCloseTo(0.5, within(1e-6));
        assertThat(read(wav, 1).greatest(7)).isCloseTo(0.25, within(1e-6));
        assertThat(second.level(7, 0)).isFinite();
        assertThat(second.covered(23)).isFalse();
    }

    @Test
    void silenceIsSilence() {
        RecordingPicture picture = read(WavBytes.of(Kind.PCM16, 8000, 1, 16_000, i -> 0), 1);
        assertThat(picture.level(3, 5)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(picture.weighted(3)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(picture.greatest(3)).isZero();
    }

    private static void refuses(byte[] wav, String part) {
        assertThatThrownBy(() -> read(wav, 1))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("x.wav")
                .hasMessageContaining(part);
        assertNoThreadIsLeft();
    }

    private static void assertNoThreadIsLeft() {
        assertThat(Thread.getAllStackTraces().keySet())
                .noneMatch(thread -> thread.getName().equals("hushmaze-bands"));
    }

    @Test
    void hostileFilesGiveAMessage() {
        byte[] good = WavBytes.of(Kind.PCM16, 8000, 1, 80_000, i -> 0);
        byte[] pcm = WavBytes.header(Kind.PCM16, 8000, 1);
        refuses(Arrays.copyOf(good, good.length - 10_000), "samples that end after 9.375 s");
        refuses(WavBytes.file(pcm, new byte[160_000], 0x7FFF_FFF0L), "samples that end after 10 s");
        refuses(WavBytes.file(pcm, new byte[0], 0xFFFF_FFFFL), "samples that end after 0 s");
        refuses(WavBytes.of(Kind.FLOAT32, 8000, 1, 80_000, i -> i == 60_000 ? Double.NaN : 0), "sample at 7.5 s: NaN");
        refuses(WavBytes.of(Kind.PCM16, 8000, 1, 7990, i -> 0), "0.99875 s long");
        refuses(WavBytes.file(WavBytes.header(Kind.PCM16, 8000, 0), new byte[8], 8), "channels: 0");
        refuses(new byte[40], "no RIFF WAVE file");
        assertThatThrownBy(() -> read(good, 2)).isInstanceOf(InvalidValue.class).hasMessageContaining("channel: 2");
    }

    @Test
    void itTellsHowFarItIsAndCanBeStopped() {
        byte[] wav = WavBytes.of(Kind.PCM16, 8000, 1, 800_000, i -> 0);
        double[] reached = new double[1];
        Progress stop = (fraction, doing) -> {
            assertThat(fraction).isGreaterThan(reached[0]).isLessThanOrEqualTo(1);
            reached[0] = fraction;
            if (fraction > 0.3) {
                throw new Progress.Cancelled();
            }
        };
        assertThatThrownBy(() -> read(wav, 1, stop)).isInstanceOf(Progress.Cancelled.class);
        assertThat(reached[0]).isBetween(0.3, 0.31);
        assertNoThreadIsLeft();
    }

    @Test
    void anInterruptedThreadReadsOnAndStaysInterrupted() {
        byte[] wav = WavBytes.of(Kind.PCM16, 8000, 1, 400_000, i -> 0.1 * Math.sin(i));
        Thread.currentThread().interrupt();
        RecordingPicture picture = read(wav, 1);
        assertThat(Thread.interrupted()).isTrue();
        assertThat(picture.columns()).isEqualTo(2000);
        assertNoThreadIsLeft();
    }

    @Test
    void aFailureOnTheSecondThreadComesOutOnTheFirst() {
        try (SecondThread second = new SecondThread((lot, count) -> {
            throw new IllegalArgumentException("no more ink");
        })) {
            second.free();
            second.hand(1);
            assertThatThrownBy(second::finish).hasRootCauseMessage("no more ink");
            assertThatThrownBy(second::free).hasRootCauseMessage("no more ink");
        }
        assertNoThreadIsLeft();
    }
}
