package hushmaze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hushmaze.assess.ComparedBand;
import hushmaze.assess.Finding;
import hushmaze.measure.WavBytes;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.UnitSystem;
import hushmaze.wording.CompareWording;
import hushmaze.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Property: the command compare keeps its contract; what is measured exactly as predicted is within, a gap is named. */
class CompareCommandTest {
    private static final String SAMPLE = "src/test/resources/hushmaze/store/briefs/trio-cellar.json";
    private static final String SECOND = "Way out to the hall";

    @TempDir
    private Path folder;

    private String levels(String name, IntToDoubleFunction level) throws IOException {
        StringBuilder text = new StringBuilder("Frequency;Level\n");
        for (int i = 0; i < BandSet.THIRD_OCTAVE.size(); i++) {
            text.append(String.format(
                    Locale.ROOT,
                    "%s;%.2f%n",
                    BandSet.THIRD_OCTAVE.bands().get(i).label(),
                    level.applyAsDouble(i)));
        }
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private JsonNode compare(String before, String after) throws IOException {
        Outcome outcome = Outcome.run(
                "compare", SAMPLE, "--path", SECOND, "--before", before, "--after", after, "--json", "--quick");
        assertThat(outcome.code()).isZero();
        return new ObjectMapper().readTree(outcome.out());
    }

    @Test
    void likelyIsWithinAndAGapIsNamed() throws IOException {
        String before = levels("before.csv", i -> 80);
        JsonNode flat = compare(before, levels("after.csv", i -> 80));
        assertThat(flat.path("formatVersion").asInt()).isEqualTo(1);
        assertThat(flat.path("path").asText()).isEqualTo(SECOND);
        assertThat(flat.path("bands")).hasSize(24);
        double[] likely = new double[24];
        for (int i = 0; i < likely.length; i++) {
            likely[i] = flat.path("bands").get(i).path("likelyDb").asDouble();
        }
        JsonNode same = compare(before, levels("likely.csv", i -> 80 - likely[i]));
        for (JsonNode band : same.path("bands")) {
            assertThat(band.path("verdict").asText()).isEqualTo("WITHIN");
            assertThat(band.path("reductionDb").asDouble())
                    .isCloseTo(band.path("likelyDb").asDouble(), within(0.006));
            assertThat(band.path("beforeDb").asDouble()).isEqualTo(80);
            assertThat(band.has("centreHz") && band.has("afterDb") && band.has("uncertaintyDb"))
                    .isTrue();
        }
        assertThat(same.path("diagnosis")).hasSize(1);
        assertThat(same.path("diagnosis").get(0).path("kind").asText()).isEqualTo("AS_PREDICTED");
        JsonNode gap = compare(before, levels("gap.csv", i -> 80 - Math.min(5, likely[i])));
        JsonNode finding = gap.path("diagnosis").get(0);
        assertThat(finding.path("kind").asText()).isEqualTo("GAP_OR_THIN_PANEL");
        assertThat(finding.path("next").asText()).contains("every line of light is a gap");
    }

    @Test
    void textHasTheTableTheClaimAndTheNextStep() throws IOException {
        String before = levels("before.csv", i -> 80);
        String floor = levels("floor.csv", i -> 60);
        Outcome outcome = Outcome.run(
                "compare",
                SAMPLE,
                "--before",
                before,
                "--before",
                before,
                "--after",
                floor,
                "--floor",
                floor,
                "--quick");
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out())
                .contains("third octaves", "not below low", "Only differences are claimed", "\u226523.0")
                .doesNotContain("{");
        assertThat(outcome.err()).contains("compared with the first path", SECOND);
    }

    @Test
    void wrongInputIsToldWithItsPlace() throws IOException {
        String before = levels("before.csv", i -> 80);
        String wrong = Files.writeString(
                        folder.resolve("wrong.csv"), "100;50\n125;NaN\n160;40\n", StandardCharsets.UTF_8)
                .toString();
        Outcome broken = Outcome.run("compare", SAMPLE, "--before", before, "--after", wrong);
        assertThat(broken.code()).isEqualTo(2);
        assertThat(broken.err()).contains("wrong.csv, line 2, level", "NaN");
        assertThat(Outcome.run("compare", SAMPLE, "--before", before, "--after", folder.toString())
                        .err())
                .contains("a folder");
        assertThat(Outcome.run("compare", SAMPLE, "--before", before, "--after", folder.resolve("none") + "")
                        .err())
                .contains("does not exist");
        Outcome path =
                Outcome.run("compare", SAMPLE, "--before", before, "--after", before, "--path", "Nowhere", "--quick");
        assertThat(path.code()).isEqualTo(2);
        assertThat(path.err()).contains("--path", "Nowhere", SECOND);
        assertThat(Outcome.run("compare", SAMPLE, "--before", before).code()).isEqualTo(2);
    }

    private String wav(String name, double amplitude) throws IOException {
        byte[] bytes =
                WavBytes.of(WavBytes.Kind.PCM24, 48_000, 1, 96_000, i -> amplitude * Math.sin(2 * Math.PI * i / 48));
        return Files.write(folder.resolve(name), bytes).toString();
    }

    @Test
    void recordingsAreComparedAndOnlyDifferencesClaimed() throws IOException {
        String before = wav("before.wav", 0.5);
        String after = wav("after.wav", 0.05);
        // By hand: a tenth of the amplitude is 20 dB less; 0.5 of full scale is -6.02 dB.
        JsonNode json = compare(before, after);
        assertThat(json.path("levels").asText()).isEqualTo("FULL_SCALE");
        assertThat(json.path("claims").asText()).contains("Only differences", "no calibration");
        JsonNode band = json.path("bands").get(13);
        assertThat(band.path("reductionDb").asDouble()).isCloseTo(20, within(0.05));
        assertThat(band.path("beforeDb").asDouble()).isCloseTo(-6.02, within(0.05));
        Outcome calibrated = Outcome.run(
                "compare",
                SAMPLE,
                "--before",
                before,
                "--after",
                after,
                "--calibrator",
                before,
                "--calibrator-level",
                "94",
                "--from",
                "1",
                "--json",
                "--quick");
        JsonNode levels = new ObjectMapper().readTree(calibrated.out());
        assertThat(levels.path("levels").asText()).isEqualTo("CALIBRATED");
        assertThat(levels.path("bands").get(13).path("beforeDb").asDouble()).isCloseTo(94, within(0.05));
        assertThat(calibrated.err())
                .contains("before.wav: 1 s, A-weighted Leq 94", " % room air")
                .containsPattern("\\d % .*after\\.wav: reading");
    }

    @Test
    void recordingsThatDoNotGoTogetherAreRefused() throws IOException {
        String text = levels("before.csv", i -> 80);
        String after = wav("after.wav", 1);
        Outcome mixed = Outcome.run("compare", SAMPLE, "--before", text, "--after", after);
        assertThat(mixed.code()).isEqualTo(2);
        assertThat(mixed.err()).contains("recordings without calibration", "overloaded");
        assertThat(Outcome.run("compare", SAMPLE, "--before", after, "--after", after, "--calibrator", text)
                        .err())
                .contains("--calibrator", "a text");
        assertThat(Outcome.run(
                                "compare",
                                SAMPLE,
                                "--before",
                                after,
                                "--after",
                                after,
                                "--calibrator",
                                after,
                                "--offset",
                                "120")
                        .err())
                .contains("--offset", "one of them");
        assertThat(Outcome.run("compare", SAMPLE, "--before", after, "--after", after, "--channel", "2")
                        .err())
                .contains("channel: 2");
        String broken =
                Files.writeString(folder.resolve("broken.wav"), "no sound").toString();
        assertThat(Outcome.run("compare", SAMPLE, "--before", broken, "--after", after)
                        .err())
                .contains("broken.wav");
    }

    @ParameterizedTest
    @EnumSource(Finding.Kind.class)
    void everyFindingHasItsWords(Finding.Kind kind) {
        CompareWording words = new CompareWording(new Wording(UnitSystem.METRIC));
        List<Band> bands = BandSet.THIRD_OCTAVE.bands();
        Finding finding = new Finding(kind, bands.get(0), bands.get(23), 4.25);
        assertThat(words.finding(finding)).endsWith(".").doesNotContain("{");
        assertThat(words.next(finding)).endsWith(".").doesNotContain("{");
    }

    @ParameterizedTest
    @EnumSource(ComparedBand.Verdict.class)
    void everyVerdictHasItsWords(ComparedBand.Verdict verdict) {
        assertThat(new CompareWording(new Wording(UnitSystem.METRIC)).verdict(verdict))
                .isNotBlank();
    }

    @Test
    void readingsAreKeptWithTheProjectAndComparedAgainWithoutTheFiles() throws IOException {
        String before = levels("before.csv", i -> 80);
        String after = levels("after.csv", i -> 80 - i);
        Path saved = folder.resolve("saved.json");
        String[] first = {
            "compare",
            SAMPLE,
            "--path",
            SECOND,
            "--before",
            before,
            "--after",
            after,
            "--flow",
            "64 cfm",
            "--door-pressure",
            "1.5",
            "--co2",
            "1250",
            "--co2-people",
            "3",
            "--save",
            saved.toString(),
            "--json",
            "--quick"
        };
        Outcome once = Outcome.run(first);
        assertThat(once.code()).as(once.err()).isZero();
        JsonNode node = new ObjectMapper().readTree(once.out());
        assertThat(node.path("air")).hasSize(4);
        assertThat(node.path("air").get(0).path("measured").asDouble()).isCloseTo(30.2, within(0.01));
        assertThat(node.path("air").get(1).path("measured").asDouble()).isEqualTo(1.5);
        assertThat(node.path("air").get(2).path("measured").asDouble()).isCloseTo(1250, within(1e-9));
        assertThat(node.path("fitting").path("bands").asInt()).isEqualTo(24);
        Outcome again = Outcome.run("compare", saved.toString(), "--path", SECOND, "--json", "--quick");
        assertThat(again.code()).as(again.err()).isZero();
        assertThat(again.out()).isEqualTo(once.out());
        Outcome words = Outcome.run("compare", saved.toString(), "--path", SECOND, "--quick");
        assertThat(words.out()).contains("Air through the path", "joint of the cover");
        Outcome refused = Outcome.run(first);
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("--save", "there already");
    }

    @Test
    void airAloneIsComparedAndWhatIsMissingIsSaid() {
        Outcome air = Outcome.run("compare", SAMPLE, "--flow", "30", "--quick");
        assertThat(air.code()).as(air.err()).isZero();
        assertThat(air.out()).contains("Air through the path: 30 L/s");
        Outcome nothing = Outcome.run("compare", SAMPLE, "--quick");
        assertThat(nothing.code()).isEqualTo(2);
        assertThat(nothing.err()).contains("--before, --after", "no readings in the project");
        Outcome alone = Outcome.run("compare", SAMPLE, "--co2", "1100", "--quick");
        assertThat(alone.code()).isEqualTo(2);
        assertThat(alone.err()).contains("co2People");
        Outcome unit = Outcome.run("compare", SAMPLE, "--flow", "30 kg", "--quick");
        assertThat(unit.code()).isEqualTo(2);
        assertThat(unit.err()).contains("--flow", "30 kg");
    }
}
