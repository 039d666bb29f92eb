package hushmaze.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.measure.Recording.Span;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.work.Progress;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: synthetic recordings whose levels are known by how they were made: a sine of amplitude a is 20 lg a dB, a sum of
 * lines the sum of their energies. Hostile files give a message.
 */
class RecordingTest {
    private static Recording read(byte[] wav, Span span) {
        try {
            return Recording.read(new ByteArrayInputStream(wav), "x.wav", span, Progress.NONE);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Span last(int channels, double from) {
        return new Span(channels, from, null);
    }

    @ParameterizedTest
    @EnumSource(WavBytes.Kind.class)
    void aToneInEveryFormat(WavBytes.Kind kind) {
        // 0.1 of full scale: -20 dB; A at 1 kHz is 0 dB; in the first channel half as much, -26.02 dB.
        byte[] wav = WavBytes.of(kind, 48_000, 2, 144_000, i -> 0.1 * Math.sin(2 * Math.PI * 1000 * i / 48_000.0));
        Recording recording = read(wav, last(2, 1));
        assertThat(recording.bands().level(13)).isCloseTo(-20, within(0.05));
        for (Weighting weighting : Weighting.values()) {
            Recording.Levels levels = recording.weighted().get(weighting);
            assertThat(levels.leq()).isCloseTo(-20, within(0.05));
            assertThat(levels.l10()).isCloseTo(-20, within(0.1));
            assertThat(levels.l90()).isCloseTo(-20, within(0.1));
        }
        assertThat(recording.seconds()).isEqualTo(2);
        assertThat(recording.overloads()).isZero();
        assertThat(read(wav, last(1, 1)).bands().level(13)).isCloseTo(-26.02, within(0.05));
    }

    @ParameterizedTest
    @ValueSource(ints = {44_100, 48_000, 96_000})
    void periodicNoiseOfAKnownSpectrum(int rate) {
        // Lines 1 Hz apart with random phases that repeat every second; each band holds the lines between its edges.
        Random random = new Random(7);
        int period = rate;
        double[] signal = new double[period];
        double[] energy = new double[24];
        for (int line = 40; line < 11_300; line++) {
            double hz = line;
            double amplitude = 2e-3 * Math.pow(hz / 1000, -0.5);
            addLine(signal, line, amplitude, 2 * Math.PI * random.nextDouble());
            for (int band = 0; band < energy.length; band++) {
                Band third = BandSet.THIRD_OCTAVE.bands().get(band);
                energy[band] += hz >= third.lowerHz() && hz < third.upperHz() ? amplitude * amplitude : 0;
            }
        }
        byte[] wav = WavBytes.of(WavBytes.Kind.FLOAT32, rate, 1, 3 * period, i -> signal[i % period]);
        BandLevels levels = read(wav, last(1, 1)).bands();
        for (int band = 0; band < energy.length; band++) {
            // below 100 Hz a third holds so few lines that those at its edges count
            double tolerance = band < 3 ? 0.7 : 0.2;
            assertThat(levels.level(band))
                    .as(BandSet.THIRD_OCTAVE.bands().get(band).label())
                    .isCloseTo(10 * Math.log10(energy[band]), within(tolerance));
        }
    }

    /** Adds a line of a whole number of periods, by turning a pointer. */
    private static void addLine(double[] signal, int line, double amplitude, double phase) {
        double turn = 2 * Math.PI * line / signal.length;
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double x = amplitude * Math.cos(phase);
        double y = amplitude * Math.sin(phase);
        for (int i = 0; i < signal.length; i++) {
            signal[i] += y;
            double next = x * cos - y * sin;
            y = x * sin + y * cos;
            x = next;
        }
    }

    @Test
    void percentilesOfASignalThatIsLoudAFifthOfTheTime() {
        byte[] wav = WavBytes.of(
                WavBytes.Kind.PCM16,
                8000,
                1,
                80_000,
                i -> (i / 8000 % 5 == 4 ? 0.5 : 0.005) * Math.sin(2 * Math.PI * 500 * i / 8000.0));
        Recording.Levels levels = read(wav, Span.ALL).weighted().get(Weighting.Z);
        // loud -6.02 dB for a fifth: mean 6.99 dB lower, -13.01 dB; L10 is the loud part, settled to 0.1 dB
        assertThat(levels.leq()).isCloseTo(-13.01, within(0.05));
        assertThat(levels.l10()).isCloseTo(-6.02, within(0.2));
        assertThat(levels.l90()).isCloseTo(-46.02, within(0.2));
    }

    @Test
    void aLowRateHasNoHighBands() {
        byte[] wav = WavBytes.of(WavBytes.Kind.PCM16, 8000, 1, 16_000, i -> 0.1 * Math.sin(0.3 * i));
        assertThat(read(wav, Span.ALL).bands().missing().stream().map(Band::label))
                .containsExactly("3.15k", "4k", "5k", "6.3k", "8k", "10k");
    }

    @Test
    void overloadIsCounted() {
        byte[] wav = WavBytes.of(WavBytes.Kind.PCM16, 8000, 1, 16_000, i -> i % 100 == 0 ? 1 : 0);
        assertThat(read(wav, Span.ALL).overloads()).isEqualTo(160);
        // those before the span do not count
        assertThat(read(wav, last(1, 0.5)).overloads()).isEqualTo(120);
    }

    @Test
    void aCalibratorsToneGivesTheOffset() {
        byte[] tone = WavBytes.of(
                WavBytes.Kind.PCM24, 48_000, 1, 144_000, i -> 0.01 * Math.sin(2 * Math.PI * 1000 * i / 48_000.0));
        // -40 dB of full scale are 94 dB, so full scale is 134 dB
        assertThat(Calibration.offset(read(tone, last(1, 1)), "x.wav", 94)).isCloseTo(134, within(0.05));
        Random random = new Random(1);
        byte[] noise = WavBytes.of(WavBytes.Kind.PCM24, 48_000, 1, 48_000, i -> 0.1 * random.nextGaussian());
        assertThatThrownBy(() -> Calibration.offset(read(noise, Span.ALL), "x.wav", 94))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("tone of a calibrator");
    }

    private static void refuses(byte[] wav, String part) {
        assertThatThrownBy(() -> read(wav, Span.ALL))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("x.wav")
                .hasMessageContaining(part);
    }

    @Test
    void hostileFilesGiveAMessage() {
        byte[] good = WavBytes.of(WavBytes.Kind.PCM16, 8000, 1, 16_000, i -> 0);
        byte[] pcm = WavBytes.header(WavBytes.Kind.PCM16, 8000, 1);
        refuses(Arrays.copyOf(good, good.length - 10_000), "samples that end after 1.375 s");
        refuses(Arrays.copyOf(good, 30), "ends before its first sample");
        refuses(new byte[0], "ends before its first sample");
        refuses(new byte[1000], "no RIFF WAVE file");
        refuses("125; 48.2\n250; 46.0\n".getBytes(StandardCharsets.UTF_8), "no RIFF WAVE file");
        refuses("125; 48.2\n250; 46.0\n".getBytes(StandardCharsets.UTF_16), "no RIFF WAVE file");
        refuses("RIFF".getBytes(StandardCharsets.UTF_16), "ends before its first sample");
        byte[] turned = good.clone();
        turned[3] = 'X';
        refuses(turned, "no RIFF WAVE file");
        refuses(WavBytes.file(pcm, new byte[16_000], 0x7FFF_FFF0L), "samples that end after 1 s");
        refuses(WavBytes.file(pcm, new byte[16_000], 0xFFFF_FFFFL), "samples that end after 1 s");
        refuses(WavBytes.file(pcm, new byte[0], 0), "no sample");
        refuses(WavBytes.file(new byte[4], new byte[0], 0), "a format of 4 bytes");
        refuses(WavBytes.file(WavBytes.header(WavBytes.Kind.PCM16, 8000, 0), new byte[8], 8), "channels: 0");
        refuses(WavBytes.file(WavBytes.header(WavBytes.Kind.PCM16, 0, 1), new byte[8], 8), "sampling rate, Hz: 0");
        refuses(WavBytes.file(WavBytes.header(WavBytes.Kind.PCM16, 8000, 65), new byte[130], 130), "channels: 65");
        refuses(
                WavBytes.file(WavBytes.header(WavBytes.Kind.PCM16, 2000, 1), new byte[8], 8),
                "sampling rate, Hz: 2000");
        byte[] other = pcm.clone();
        other[0] = 85;
        refuses(WavBytes.file(other, new byte[8], 8), "format 85 with 16 bits");
        byte[] frame = pcm.clone();
        frame[12] = 7;
        refuses(WavBytes.file(frame, new byte[8], 8), "7 bytes a frame");
        refuses(
                WavBytes.of(WavBytes.Kind.FLOAT32, 8000, 1, 16_000, i -> i == 4000 ? Double.NaN : 0),
                "sample at 0.5 s: NaN");
        refuses(
                WavBytes.of(WavBytes.Kind.FLOAT32, 8000, 1, 16_000, i -> i == 4000 ? Double.NEGATIVE_INFINITY : 0),
                "sample at 0.5 s: -Infinity");
        refuses(WavBytes.of(WavBytes.Kind.PCM16, 8000, 1, 100, i -> 0), "at least as long as the span");
        assertThatThrownBy(() -> read(good, last(2, 0))).hasMessageContaining("channel: 2");
        assertThatThrownBy(() -> read(good, new Span(1, 5, 9.0))).hasMessageContaining("2 s long");
        assertThatThrownBy(() -> new Span(1, 5, 5.5)).isInstanceOf(InvalidValue.class);
    }

    @Test
    void silenceIsSilence() {
        Recording recording = read(WavBytes.of(WavBytes.Kind.PCM16, 8000, 1, 16_000, i -> 0), Span.ALL);
        assertThat(recording.bands().level(5)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(recording.weighted().get(Weighting.A).leq()).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void itCanBeStopped() {
        byte[] wav = WavBytes.of(WavBytes.Kind.PCM16, 8000, 1, 80_000, i -> 0);
        double[] reached = new double[1];
        Progress stop = (fraction, doing) -> {
            reached[0] = fraction;
            if (fraction > 0.3) {
                throw new Progress.Cancelled();
            }
        };
        assertThatThrownBy(() -> Recording.read(new ByteArrayInputStream(wav), "x.wav", Span.ALL, stop))
                .isInstanceOf(Progress.Cancelled.class);
        assertThat(reached[0]).isBetween(0.3, 0.4);
    }
}
