package hushmaze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hushmaze.store.ProjectFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: the commands keep their contract: names, JSON fields, exit codes, data and talk on their own streams. */
class MainTest {
    private static final String SAMPLE = "presets/projects/trio-cellar.json";
    /** The same brief with one box. */
    private static final String BRIEF = "src/test/resources/hushmaze/store/briefs/trio-cellar.json";

    @TempDir
    private Path folder;

    @Test
    void assessPrintsVerdicts() {
        Outcome outcome = Outcome.run("assess", BRIEF, "--quick");
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out())
                .contains("uiet enough", "nough air", "Fits", "uildable")
                .doesNotContain("{");
        assertThat(outcome.err().lines())
                .containsExactly("Warm air from the furnace: the box was laid out from the brief.");
    }

    @Test
    void aBriefNoBoxCanMeetNamesWhatWouldHaveToGive() throws IOException {
        String text = Files.readString(Path.of(BRIEF)).replaceAll("\"depthMm\"\\s*:\\s*350", "\"depthMm\": 60");
        Path file = Files.writeString(folder.resolve("shallow.json"), text);
        Outcome outcome = Outcome.run("assess", file.toString());
        assertThat(outcome.code()).isEqualTo(1);
        assertThat(outcome.err()).contains("Warm air from the furnace", " deep instead of 60 mm");
        assertThat(outcome.out()).isEmpty();
    }

    @Test
    void assessJsonHasTheContractsFields() throws IOException {
        Outcome outcome = Outcome.run("assess", SAMPLE, "--json", "--quick");
        JsonNode json = new ObjectMapper().readTree(outcome.out());
        assertThat(json.path("formatVersion").asInt()).isEqualTo(1);
        assertThat(has(json.path("room"), "pressurePa", "co2SteadyPpm", "temperatureRiseK"))
                .isTrue();
        for (JsonNode path : json.path("paths")) {
            assertThat(has(path, "name", "quiet", "air", "fits", "buildable", "bands"))
                    .isTrue();
            assertThat(has(path.path("quiet"), "ok", "marginDb", "governingBandHz", "nc", "dbA"))
                    .isTrue();
            assertThat(has(path.path("air"), "ok", "flowLps", "pressureDropPa", "losses"))
                    .isTrue();
            assertThat(has(path.path("air").path("losses").get(0), "name", "zeta", "velocityMps", "pressurePa"))
                    .isTrue();
            assertThat(has(path.path("buildable"), "ok", "massKg", "panels", "sheets", "wasteFraction"))
                    .isTrue();
            assertThat(path.path("bands")).hasSize(24 + 8);
            for (JsonNode band : path.path("bands")) {
                assertThat(has(
                                band,
                                "centreHz",
                                "fraction",
                                "neededDb",
                                "estimateDb",
                                "quickDb",
                                "waveDb",
                                "wallsDb",
                                "lowDb",
                                "likelyDb",
                                "highDb",
                                "levelDb"))
                        .isTrue();
                assertThat(band.path("waveDb").isNull()).isTrue();
            }
            double sum = 0;
            for (JsonNode loss : path.path("air").path("losses")) {
                sum += loss.path("pressurePa").asDouble();
            }
            assertThat(sum).isEqualTo(path.path("air").path("pressureDropPa").asDouble());
        }
        assertThat(json.path("notices")).anySatisfy(n -> {
            assertThat(n.path("kind").asText()).isEqualTo("METHOD_NOT_RUN");
            assertThat(n.path("text").asText()).contains("wave");
        });
        for (JsonNode notice : json.path("notices")) {
            assertThat(has(notice, "kind", "severity", "part", "value", "limit", "unit", "text"))
                    .isTrue();
        }
    }

    private static boolean has(JsonNode node, String... names) {
        return Stream.of(names).allMatch(node::has);
    }

    @Test
    void strictEndsWithOneWhenTheDesignFails() throws IOException {
        String text = Files.readString(Path.of(SAMPLE))
                .replaceAll("\"maxPressureDropPa\"\\s*:\\s*[0-9.]+", "\"maxPressureDropPa\": 0.5");
        Path file = Files.writeString(folder.resolve("tight.json"), text);
        Outcome strict = Outcome.run("assess", file.toString(), "--strict", "--quick");
        assertThat(strict.code()).isEqualTo(1);
    }

    @Test
    void aMissingFileIsBadInput() {
        Outcome outcome = Outcome.run("assess", folder.resolve("none.json").toString());
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains("none.json");
        assertThat(outcome.out()).isEmpty();
    }

    @Test
    void aWrongValueNamesFileFieldValueAndLimit() throws IOException {
        String text = Files.readString(Path.of(SAMPLE)).replaceAll("\"volumeM3\"\\s*:\\s*[0-9.]+", "\"volumeM3\": -3");
        Path file = Files.writeString(folder.resolve("wrong.json"), text);
        Outcome outcome = Outcome.run("assess", file.toString());
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains("wrong.json", "room.volumeM3", "-3", "5000", "m³");
    }

    @Test
    void exportWritesTheDocumentSet() throws IOException {
        Path to = folder.resolve("out");
        Outcome outcome =
                Outcome.run("export", SAMPLE, "--to", to.toString(), "--paper", "Letter", "--units", "in", "--quick");
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out()).isEmpty();
        try (Stream<Path> files = Files.list(to)) {
            List<String> names = files.map(f -> f.getFileName().toString()).toList();
            assertThat(names)
                    .anyMatch(n -> n.endsWith(".pdf"))
                    .anyMatch(n -> n.endsWith("cut-list.csv"))
                    .anyMatch(n -> n.endsWith("bands.csv"))
                    .anyMatch(n -> n.endsWith("cut-sequence.csv"))
                    .anyMatch(n -> n.endsWith("model.glb"))
                    .noneMatch(n -> n.startsWith("."));
        }
    }

    @Test
    void theProjectInTheSetMakesTheSameSetAgain() throws IOException {
        Path to = folder.resolve("out");
        assertThat(Outcome.run("export", SAMPLE, "--to", to.toString(), "--quick")
                        .code())
                .isZero();
        Path project = only(to, "_project.json");
        assertThat(ProjectFile.read(project).paths()).allMatch(path -> path.box() != null);
        Path again = folder.resolve("again");
        assertThat(Outcome.run("export", project.toString(), "--to", again.toString(), "--quick")
                        .code())
                .isZero();
        try (Stream<Path> files = Files.list(to)) {
            for (Path file : files.toList()) {
                assertThat(again.resolve(file.getFileName())).hasSameBinaryContentAs(file);
            }
        }
    }

    @Test
    void exportReplacesNothingUnasked() throws IOException {
        Path to = folder.resolve("out");
        String[] first = {"export", SAMPLE, "--to", to.toString(), "--quick"};
        assertThat(Outcome.run(first).code()).isZero();
        Path cuts = only(to, "furnace_cut-list.csv");
        Path pdf = only(to, "furnace_drawings.pdf");
        assertThat(Outcome.run(first).code()).as("the very same set").isZero();
        byte[] made = Files.readAllBytes(pdf);
        Outcome other = Outcome.run("export", SAMPLE, "--to", to.toString(), "--quick", "--units", "in");
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err()).contains(pdf.toString(), "allow overwriting");
        assertThat(pdf).hasBinaryContent(made);
        Files.writeString(cuts, "mine");
        assertThat(Outcome.run("export", SAMPLE, "--to", to.toString(), "--quick", "--units", "in", "--overwrite")
                        .code())
                .isZero();
        assertThat(Files.readAllBytes(pdf)).isNotEqualTo(made);
        try (PDDocument drawings = Loader.loadPDF(pdf.toFile())) {
            // 8.5 by 11 inches of 72 points
            assertThat(drawings.getPage(0).getMediaBox().getHeight())
                    .as("Letter")
                    .isEqualTo(792);
        }
        assertThat(Files.readString(cuts)).isNotEqualTo("mine");
    }

    private static Path only(Path folder, String end) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> found =
                    files.filter(f -> f.getFileName().toString().endsWith(end)).toList();
            assertThat(found).hasSize(1);
            return found.get(0);
        }
    }

    @Test
    void exportRefusesUnknownUnitsAndPaper() {
        assertThat(Outcome.run("export", SAMPLE, "--to", folder.toString(), "--units", "cubits")
                        .code())
                .isEqualTo(2);
        assertThat(Outcome.run("export", SAMPLE, "--to", folder.toString(), "--paper", "B7")
                        .code())
                .isEqualTo(2);
    }

    @Test
    void exportIntoAFileIsBadInput() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine");
        Outcome outcome = Outcome.run("export", SAMPLE, "--to", file.toString(), "--quick");
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains(file.toString());
        assertThat(Files.readString(file)).isEqualTo("mine");
    }

    @Test
    void theSampleDoesTheWholeJobInFewLines() {
        Outcome outcome =
                Outcome.run("sample", "--quick", "--to", folder.resolve("s").toString());
        assertThat(outcome.code()).isZero();
        assertThat(outcome.out().lines().count()).isLessThan(40);
        assertThat(outcome.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void helpAndMistakes() {
        assertThat(Outcome.run("--help").code()).isZero();
        assertThat(Outcome.run("assess", "--help").out()).contains("PROJECT.json");
        assertThat(Outcome.run("fly").code()).isEqualTo(2);
        assertThat(Outcome.run().code()).isEqualTo(2);
    }
}
