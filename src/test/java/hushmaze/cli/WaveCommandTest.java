package hushmaze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Validation, file in, figures out: a rigid mitre bend (mode matching, 150 modes) and a slit lined on both sides over 1 m
 * (mode matching, confirmed by an independent finite element method), both computed apart from this program. Property: names,
 * streams and exit codes of the command.
 */
class WaveCommandTest {
    private static final double C = 343.2;

    @TempDir
    private Path folder;

    private Path section(String regions, String inlet, String outlet, double... frequencies) throws IOException {
        String list = DoubleStream.of(frequencies).mapToObj(Double::toString).collect(Collectors.joining(","));
        return Files.writeString(
                folder.resolve("section.json"),
                "{\"air\":{\"soundSpeed\":" + C + ",\"density\":1.2041},\"regions\":[" + regions + "],\"inlet\":"
                        + inlet + ",\"outlet\":" + outlet + ",\"frequenciesHz\":[" + list + "]}");
    }

    private static String air(double x, double y, double width, double height) {
        return String.format(
                Locale.ROOT,
                "{\"kind\":\"air\",\"xMm\":%s,\"yMm\":%s,\"widthMm\":%s,\"heightMm\":%s}",
                x,
                y,
                width,
                height);
    }

    private static String liner(double x, double y, double width, double height, double resistivity) {
        return air(x, y, width, height)
                .replace("\"kind\":\"air\"", "\"kind\":\"liner\",\"flowResistivity\":" + resistivity);
    }

    private static String port(String side, double x, double y, double span) {
        return String.format(Locale.ROOT, "{\"side\":\"%s\",\"xMm\":%s,\"yMm\":%s,\"spanMm\":%s}", side, x, y, span);
    }

    private static double[][] rows(Outcome outcome) {
        assertThat(outcome.code()).as(outcome.err()).isZero();
        List<String> lines = outcome.out().lines().toList();
        assertThat(lines.get(0)).isEqualTo("frequencyHz,tlDb,residual");
        return lines.stream().skip(1).map(WaveCommandTest::numbers).toArray(double[][]::new);
    }

    private static double[] numbers(String line) {
        return Arrays.stream(line.split(",", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    /** kh/π from 0.05 to 0.9, and above the first cross mode with all transmitted modes counted. */
    @Test
    void mitreBend() throws IOException {
        double[] khOverPi = {0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.1, 1.3, 1.5, 1.7, 2.5};
        double[] expected = {
            0.005, 0.021, 0.092, 0.235, 0.505, 1.030, 2.113, 4.473, 9.659, 21.804, 3.29, 4.42, 7.42, 10.19, 6.96
        };
        double h = 100;
        double[] frequencies =
                DoubleStream.of(khOverPi).map(k -> k * C / (2 * h / 1000)).toArray();
        Path file = section(
                air(-150, 0, 250, h) + "," + air(0, 0, h, 250),
                port("left", -150, 0, h),
                port("up", 0, 250, h),
                frequencies);
        double[][] rows = rows(Outcome.run("wave", file.toString(), "--csv"));
        assertThat(rows.length).isEqualTo(expected.length);
        for (int i = 0; i < rows.length; i++) {
            assertThat(rows[i][0]).isEqualTo(frequencies[i]);
            assertThat(rows[i][1])
                    .as("kh/π %s", khOverPi[i])
                    .isCloseTo(expected[i], within(0.005 + 0.003 * expected[i]));
            assertThat(rows[i][2]).isBetween(0.0, 1e-9);
        }
    }

    @Test
    void slitLinedOnBothSides() throws IOException {
        double[] frequencies = {63.10, 125.89, 251.19, 501.19, 1000, 1995.3, 3981.1};
        double[] expected = {1.212, 2.228, 7.401, 21.485, 50.230, 55.231, 35.929};
        Path file = section(
                air(0, 0, 1000, 100) + "," + liner(0, 100, 1000, 50, 20_000) + "," + liner(0, -50, 1000, 50, 20_000),
                port("left", 0, 0, 100),
                port("right", 1000, 0, 100),
                frequencies);
        double[][] rows = rows(Outcome.run("wave", file.toString(), "--csv"));
        for (int i = 0; i < expected.length; i++) {
            assertThat(rows[i][1]).as("%s Hz", frequencies[i]).isCloseTo(expected[i], within(0.02));
        }
    }

    @Test
    void withoutCsvATableForPeople() throws IOException {
        Path file = section(air(0, 0, 600, 100), port("left", 0, 0, 100), port("right", 600, 0, 100), 125, 250);
        Outcome outcome = Outcome.run("wave", file.toString());
        assertThat(outcome.code()).isZero();
        assertThat(outcome.err()).isEmpty();
        List<String> lines = outcome.out().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0)).contains("Hz", "TL dB", "residual");
        // A straight duct loses nothing.
        assertThat(lines.get(1)).matches(" +125\\.00 +-?0\\.00 +.*");
        assertThat(lines.get(2)).matches(" +250\\.00 +-?0\\.00 +.*");
    }

    @Test
    void badInputGivesTwoAndNamesFileFieldValueAndLimit() throws IOException {
        Path file = section(air(0, 0, -600, 100), port("left", 0, 0, 100), port("right", 600, 0, 100), 125);
        Outcome outcome = Outcome.run("wave", file.toString(), "--csv");
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().strip())
                .isEqualTo(file + ": regions[0].widthMm: -600 mm is not accepted; it must be from 0.1 to 100000 mm");
    }

    @Test
    void portsWithNoWayBetweenThemGiveTwo() throws IOException {
        Path file = section(
                air(0, 0, 200, 100) + "," + air(400, 0, 200, 100),
                port("left", 0, 0, 100),
                port("right", 600, 0, 100),
                125);
        Outcome outcome = Outcome.run("wave", file.toString());
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).startsWith(file + ": outlet: no way from the inlet to it");
        assertThat(outcome.out()).isEmpty();
    }

    @Test
    void aSectionLargeToTheWaveGivesTwoAndTheHighestFrequency() throws IOException {
        Path file = section(
                air(0, 0, 100_000, 100_000), port("left", 0, 0, 100), port("right", 100_000, 0, 100), 20, 20_000);
        Outcome outcome = Outcome.run("wave", file.toString());
        assertThat(outcome.code()).isEqualTo(2);
        // The side of a square of 4000 square waves is 63.2 waves: 100 m at 217 Hz.
        assertThat(outcome.err().strip())
                .isEqualTo(
                        file + ": frequenciesHz[1] of a section of this size: 20000.0 Hz is not accepted; it must be at"
                                + " most 217 Hz");
    }

    /** A straight duct in sixty steps of a hundredth of a millimetre loses next to nothing. */
    @Test
    void aSectionOfManyStepsIsSolvedWithSimplerElements() throws IOException {
        StringBuilder steps = new StringBuilder(air(0, 0, 10, 100));
        for (int i = 1; i < 60; i++) {
            steps.append(",").append(air(10 * i, 0, 10, 100 + 0.01 * i));
        }
        Path file = section(steps.toString(), port("left", 0, 0, 100), port("right", 600, 0, 100.59), 250);
        double[][] rows = rows(Outcome.run("wave", file.toString(), "--csv"));
        assertThat(rows[0][1]).isCloseTo(0, within(1e-3));
    }

    @Test
    void aFileThatIsNotThereGivesTwo() {
        Outcome outcome = Outcome.run("wave", folder.resolve("none.json").toString());
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains("none.json: there is no such file");
    }
}
