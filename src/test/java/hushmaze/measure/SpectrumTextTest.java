package hushmaze.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Property: the same three bands come out of every way to write them. Validation: narrow bands of a known density add up to
 * what is worked by hand, 10 lg of the band's width over the step. Hostile texts give a message.
 */
class SpectrumTextTest {
    private static final int HZ_1000 = 13;

    private static BandLevels read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static BandLevels read(byte[] bytes) {
        try {
            return SpectrumText.read(new ByteArrayInputStream(bytes), "x.txt");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "800,61.5\n1000,54.3\n1250,47.9\n",
                "800;61,5\n1000;54,3\n1250;47,9\n",
                "800\t61,5\r\n1k\t54,3\r\n1,25 kHz\t47,9\r\n",
                "800 61,5\n1000 54,3\n1250 47,9",
                "0.8 kHz 61.5 dB\n1 kHz 54.3 dB\n1k25 47.9 dB\n",
                "800 Hz, 61.5\n1000 Hz, 54.3\n1250 Hz, 47.9\n",
                "# note\nFrequency;Level;;\n\nHz;dB(Z)\n\"800\";\"61,5\";;\n1000;54,3 dB;;\n1250;47,9;;\nTotal;63,0\n",
                "2026-11-26 10:00\n3 positions of 5\n48000 Hz sampling\n800: 61.5\n1000 = 54.3\n1250: 47.9\n",
                "794.33 61.5\n1000.00 54.3\n1258.93 47.9\n",
                "793.7 61.5\n1000.0 54.3\n1259.9 47.9\n",
                "1250 47.9\n1000 54.3\n800 61.5\n"
            })
    void everyWayToWriteIt(String text) {
        BandLevels levels = read(text);
        assertThat(levels.bands()).isEqualTo(BandSet.THIRD_OCTAVE);
        assertThat(levels.missing()).hasSize(21);
        assertThat(levels.level(HZ_1000 - 1)).isEqualTo(61.5);
        assertThat(levels.level(HZ_1000)).isEqualTo(54.3);
        assertThat(levels.level(HZ_1000 + 1)).isEqualTo(47.9);
    }

    @ParameterizedTest
    @CsvSource({"UTF-16LE,''", "UTF-16BE,''", "UTF-16LE,\uFEFF", "UTF-16BE,\uFEFF", "UTF-8,\uFEFF", "ISO-8859-1,''"})
    void everyEncoding(String charset, String mark) {
        String text = mark + "Grösse\n800;61,5\n1000;54,3\n1250;47,9\n";
        assertThat(read(text.getBytes(Charset.forName(charset))).level(HZ_1000)).isEqualTo(54.3);
    }

    @Test
    void octavesAndBandsOutsideAreKnown() {
        BandLevels levels = read("31.5 70\n63 60\n125 50\n250 40\n16k 10\n");
        assertThat(levels.bands()).isEqualTo(BandSet.OCTAVE);
        assertThat(levels.level(1)).isEqualTo(50);
        assertThat(levels.missing()).hasSize(5);
        assertThatThrownBy(() -> levels.level(4)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void linesOfEqualHeightAddUpToTheWidthOfTheBand() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i <= 8000; i++) {
            text.append(String.format(Locale.ROOT, "%.1f\t30.0%n", i * 1.5));
        }
        BandLevels levels = read(text.toString());
        assertThat(levels.missing()).isEmpty();
        for (int i = 0; i < levels.bands().size(); i++) {
            // By hand: width of a third 0.23077 f, so that 1 kHz has 230.8 / 1.5 = 153.8 lines, 21.87 dB more than one.
            Band band = levels.bands().bands().get(i);
            double expected = 30 + 10 * Math.log10(0.230768 * band.centreHz() / 1.5);
            assertThat(levels.level(i)).isCloseTo(expected, within(0.01));
        }
    }

    @Test
    void aToneAmongLinesIsTheLevelOfItsBand() {
        StringBuilder text = new StringBuilder();
        for (int i = 1; i <= 2400; i++) {
            text.append(i * 5).append(' ').append(i == 200 ? 80 : -50).append('\n');
        }
        assertThat(read(text.toString()).level(HZ_1000)).isCloseTo(80, within(0.01));
    }

    @Test
    void twelfthsOfAnOctaveAddUpFourToAThird() {
        StringBuilder text = new StringBuilder();
        // Centres of IEC 61260-1 for an even number of bands per octave: 1000 G^((2x+1)/24); 10 lg 4 = 6.02 dB.
        for (int x = -60; x < 48; x++) {
            text.append(String.format(Locale.ROOT, "%.4f 40%n", 1000 * Math.pow(10, 0.3 * (2 * x + 1) / 24.0)));
        }
        BandLevels levels = read(text.toString());
        assertThat(levels.missing()).isEmpty();
        assertThat(levels.level(HZ_1000)).isCloseTo(46.02, within(0.02));
    }

    @Test
    void thirdsThatLinesDoNotCoverHaveNoLevel() {
        StringBuilder text = new StringBuilder();
        for (int i = 10; i <= 500; i++) {
            if (i < 100 || i > 110) {
                text.append(i * 10).append(",40.0\n");
            }
        }
        BandLevels levels = read(text.toString());
        // A third of the width holds a step of 10 Hz from 130 Hz up; the hole is at 1000 to 1100 Hz; 4925 Hz is not
        // reached.
        assertThat(levels.missing().stream().map(Band::label).toList())
                .contains("50", "100", "125", "1k", "5k", "6.3k", "10k")
                .doesNotContain("160", "800", "1.25k", "4k");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'800 50\n1000 NaN\n1250 40\n' | line 2, level",
                "'800;50\n1000;\n1250;40\n' | line 2, level",
                "'800;50\n1000;-inf\n1250;40\n' | line 2, level",
                "'800 50\n1000 4000\n1250 40\n' | from -300 to 300 dB",
                "'800 50\n-1000 40\n1250 40\n' | line 2, frequency",
                "'800 50\n800 40\n1250 40\n' | 800 Hz twice",
                "'800;50;51;52\n1000;40;41;42\n' | line 1, columns: 4 numbers",
                "'100,54,3\n125,53,2\n160,51,0\n' | commas between columns and perhaps within numbers",
                "'100 50\n200 50\n600 50\n700 40\n' | evenly apart",
                "'800 50\n1000 50\n' | at least 3",
                "'hello\nworld\n' | no line with a frequency and a level",
                "'20 30\n25 30\n31.5 30\n' | no band from 50 Hz to 10 kHz",
                "'100 30\n1000 30\n1900 30\n2800 20\n' | which cover no third octave",
                "'710 30\n700 30\n690 30\n' | rising from line to line",
                "'800 50\n1e9 50\n1250 50\n' | from 0 to 1000000 Hz"
            })
    void whatCannotBeReadGivesAMessage(String text, String part) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("x.txt")
                .hasMessageContaining(part);
    }

    @Test
    void emptyAndBinaryAndHugeTextsGiveAMessage() {
        byte[] random = new byte[100_000];
        new Random(7).nextBytes(random);
        assertThatThrownBy(() -> read(random)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> read(new byte[0])).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> read(new byte[5000])).hasMessageContaining("binary");
        assertThatThrownBy(() -> read("9".repeat(20_000))).hasMessageContaining("10000 characters");
        assertThatThrownBy(() -> SpectrumText.read(new Endless(), "x.txt")).hasMessageContaining("1000000 lines");
    }

    @Test
    void noTextMakesItCrash() {
        Random random = new Random(20261126);
        String letters = "0123456789.,;\t -+kHzdBeNaninf\n\n#\"%";
        for (int i = 0; i < 5000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(80); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            try {
                assertThat(read(text.toString()).missing().size()).isLessThan(24);
            } catch (InvalidValue e) {
                assertThat(e).hasMessageContaining("x.txt");
            }
        }
    }

    @Test
    void positionsAreAveragedByEnergy() {
        BandLevels one = BandLevels.of(BandSet.THIRD_OCTAVE, i -> 50);
        BandLevels two = BandLevels.of(BandSet.THIRD_OCTAVE, i -> 60);
        // By hand: 10 lg((10^5 + 10^6) / 2) = 57.40 dB; in octaves 10 lg 3 more.
        assertThat(BandLevels.mean(List.of(one, two)).level(3)).isCloseTo(57.40, within(0.005));
        assertThat(BandLevels.mean(List.of(one, two.inOctaves())).level(3))
                .isCloseTo(10 * Math.log10((3e5 + 3e6) / 2), within(1e-9));
        assertThat(one.plus(3).level(0)).isEqualTo(53);
    }

    /** Lines without end. */
    private static final class Endless extends InputStream {
        private int at;

        @Override
        public int read() {
            return "100 50\n".charAt(at++ % 7);
        }
    }
}
