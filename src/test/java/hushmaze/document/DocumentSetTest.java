package hushmaze.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.Assessment;
import hushmaze.assess.BandResult;
import hushmaze.assess.PathResult;
import hushmaze.drawing.Paper;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.SampleReadings;
import hushmaze.project.Reading.Scale;
import hushmaze.project.RoomReadings;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Regression: the CSV of the sample's cut list and of its cuts against reviewed files. Property:
 * files are whole, never overwritten unasked, and failures name the file and the reason.
 */
class DocumentSetTest {
    private static final Assessment SAMPLE = SampleAssessment.twoPaths(UnitSystem.METRIC);

    private static final String PROJECT = "the project's file\n";

    @TempDir
    Path folder;

    @Test
    void cutListIsAsReviewed() throws IOException {
        assertThat(CutListCsv.of(SAMPLE.paths().get(0))).isEqualTo(reviewed("cut-list.csv"));
    }

    @Test
    void cutSequenceIsAsReviewed() throws IOException {
        assertThat(CutSequenceCsv.of(SAMPLE.paths().get(0))).isEqualTo(reviewed("cut-sequence.csv"));
    }

    private static String reviewed(String name) throws IOException {
        try (InputStream golden = DocumentSetTest.class.getResourceAsStream(name)) {
            assertThat(golden).as("the reviewed file").isNotNull();
            return new String(golden.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void bandsKeepEveryDigit() {
        PathResult result = SAMPLE.paths().get(0);
        List<String> lines = BandsCsv.of(result).lines().toList();
        assertThat(lines).hasSize(1 + 24 + 8);
        assertThat(lines.get(0))
                .startsWith("nominalHz,centreHz,fraction,noiseDb,allowedDb,neededDb,estimateDb,quickDb");
        String[] first = lines.get(1).split(",", -1);
        assertThat(first[0]).isEqualTo("50.0");
        // Base-10 centre of the 50 Hz third: 10^(17/10) Hz.
        assertThat(Double.parseDouble(first[1])).isCloseTo(50.1187, within(0.0001));
        assertThat(first[2]).isEqualTo("3");
        assertThat(Double.parseDouble(first[6]))
                .isEqualTo(result.thirds().get(0).estimate());
        assertThat(Double.parseDouble(first[7]))
                .isEqualTo(result.thirds().get(0).quick());
        assertThat(first[8]).as("not computed").isEmpty();
        assertThat(Csv.number(Double.POSITIVE_INFINITY)).isEqualTo("inf");
        assertThat(Csv.line(List.of("a,b", "c\"d", "e"))).isEqualTo("\"a,b\",\"c\"\"d\",e\n");
    }

    /** Levels without the box of 110 dB in every band, 20 dB less with it, 60 dB of background; read by Double.parseDouble alone. */
    @Test
    void measuredBandsKeepEveryDigit() {
        Assessment measured = SampleAssessment.measured(
                UnitSystem.METRIC,
                SampleReadings.of(BandSet.OCTAVE, Scale.CALIBRATED, 110, i -> 20, 60),
                RoomReadings.NONE);
        PathResult result = measured.paths().get(0);
        List<String> lines =
                MeasuredCsv.of(measured.project(), result).orElseThrow().lines().toList();
        assertThat(lines).hasSize(1 + 8);
        assertThat(lines.get(0))
                .isEqualTo("nominalHz,centreHz,fraction,beforeDb,afterDb,reductionDb,uncertaintyDb,overBackgroundDb,"
                        + "atLeast,lowDb,likelyDb,highDb,verdict");
        String[] first = lines.get(1).split(",", -1);
        assertThat(first[0]).isEqualTo("63.0");
        assertThat(first[2]).isEqualTo("1");
        // 110 and 90 dB less 60 dB of background: 10 lg(10^11 - 10^6) and 10 lg(10^9 - 10^6), dB
        assertThat(Double.parseDouble(first[3])).isCloseTo(109.999957, within(1e-6));
        assertThat(Double.parseDouble(first[4])).isCloseTo(89.995655, within(1e-6));
        assertThat(Double.parseDouble(first[5])).isCloseTo(20.004302, within(2e-6));
        assertThat(first[7]).isEqualTo("30.0");
        assertThat(first[8]).isEqualTo("false");
        BandResult octave = result.octaves().get(0);
        assertThat(Double.parseDouble(first[9])).isEqualTo(octave.low());
        assertThat(Double.parseDouble(first[10])).isEqualTo(octave.likely());
        assertThat(Double.parseDouble(first[11])).isEqualTo(octave.high());
        assertThat(first[12]).isEqualTo("ABOVE_HIGH");
    }

    @Test
    void measuredBandsAreWrittenOnlyWhereThereAreReadings() {
        assertThat(MeasuredCsv.of(SAMPLE.project(), SAMPLE.paths().get(0))).isEmpty();
        Assessment measured = SampleReadings.everything(UnitSystem.METRIC, BandSet.THIRD_OCTAVE);
        List<String> names = DocumentSet.write(measured, PROJECT, folder, Paper.A4, UnitSystem.METRIC, false).stream()
                .map(p -> p.getFileName().toString())
                .toList();
        assertThat(names)
                .contains("Voice-booth_Supply-west-wall_measured.csv")
                .doesNotContain("Voice-booth_Return-to-the-hall_measured.csv");
        assertThat(folder.resolve("Voice-booth_Supply-west-wall_measured.csv"))
                .hasContent(MeasuredCsv.of(measured.project(), measured.paths().get(0))
                        .orElseThrow());
    }

    @Test
    void writesAllFilesAndNothingElse() throws IOException {
        List<Path> written = write(false);
        assertThat(written)
                .extracting(p -> p.getFileName().toString())
                .contains(
                        "Voice-booth_project.json",
                        "Voice-booth_Supply-west-wall_drawings.pdf",
                        "Voice-booth_Supply-west-wall_model.glb",
                        "Voice-booth_Supply-west-wall_cut-list.csv",
                        "Voice-booth_Supply-west-wall_cut-sequence.csv",
                        "Voice-booth_Return-to-the-hall_bands.csv",
                        "Voice-booth_Supply-west-wall_part-B1.svg");
        try (Stream<Path> there = Files.list(folder)) {
            assertThat(there).containsExactlyInAnyOrderElementsOf(written);
        }
        assertThat(Files.readString(folder.resolve("Voice-booth_project.json"))).isEqualTo(PROJECT);
    }

    @Test
    void theProjectOfAnotherDayIsNotOverwrittenUnasked() throws IOException {
        Path mine = Files.writeString(folder.resolve("Voice-booth_project.json"), "another day's");
        assertThatThrownBy(() -> write(false))
                .isInstanceOf(ExportFailure.class)
                .hasMessageContaining("Voice-booth_project.json");
        assertThat(mine).hasContent("another day's");
        write(true);
        assertThat(Files.readString(mine)).isEqualTo(PROJECT);
    }

    @Test
    void doesNotOverwriteUnasked() throws IOException {
        Path mine = Files.writeString(folder.resolve("Voice-booth_Supply-west-wall_bands.csv"), "mine");
        assertThatThrownBy(() -> write(false))
                .isInstanceOf(ExportFailure.class)
                .hasMessageContaining(mine.toString())
                .hasMessageContaining("already");
        assertThat(mine).hasContent("mine");
        try (Stream<Path> there = Files.list(folder)) {
            assertThat(there).containsExactly(mine);
        }
        write(true);
        assertThat(Files.readString(mine)).startsWith("nominalHz,centreHz");
    }

    /** The same files again: nothing is replaced, so nothing need be allowed. */
    @Test
    void theVerySameFilesAreNotInTheWay() throws IOException {
        List<Path> first = write(false);
        FileTime before = Files.getLastModifiedTime(first.get(0));
        Files.delete(first.get(1));
        assertThat(write(false)).isEqualTo(first).allMatch(Files::exists);
        assertThat(Files.getLastModifiedTime(first.get(0))).isEqualTo(before);
    }

    @Test
    void picturesOfAnEarlierBoxDoNotStayBehind() throws IOException {
        List<Path> first = DocumentSet.write(SAMPLE, PROJECT, folder, Paper.A4, UnitSystem.METRIC, true);
        String part = first.stream()
                .map(f -> f.getFileName().toString())
                .filter(n -> n.endsWith("_part-B1.svg"))
                .findFirst()
                .orElseThrow();
        Path stale = Files.writeString(folder.resolve(part.replace("B1", "B99")), "an earlier box");
        Path mine = Files.writeString(folder.resolve(part.replace("_part-B1.svg", "_part-B1 as built.svg")), "mine");
        Path other = Files.writeString(folder.resolve("another_part-B99.svg"), "another project's");
        DocumentSet.write(SAMPLE, PROJECT, folder, Paper.A4, UnitSystem.METRIC, true);
        assertThat(stale).doesNotExist();
        assertThat(mine).exists();
        assertThat(other).exists();
        assertThat(first).allMatch(Files::exists);
    }

    @Test
    void saysWhyAFolderCannotBeUsed() throws IOException {
        Path file = Files.writeString(folder.resolve("plain"), "a file");
        assertThatThrownBy(() -> DocumentSet.write(SAMPLE, PROJECT, file, Paper.A4, UnitSystem.METRIC, false))
                .isInstanceOf(ExportFailure.class)
                .hasMessageContaining(file.toString())
                .hasMessageContaining("a file, not a folder");
        assertThatThrownBy(() ->
                        DocumentSet.write(SAMPLE, PROJECT, file.resolve("below"), Paper.A4, UnitSystem.METRIC, false))
                .isInstanceOf(ExportFailure.class)
                .hasMessageContaining("cannot be made");
    }

    @Test
    void aFailedFileLeavesNothingBehind() throws IOException {
        Outbox outbox = new Outbox(folder);
        outbox.write("kept.txt", "before");
        assertThatThrownBy(() -> outbox.write("kept.txt", out -> {
                    out.write(new byte[100]);
                    throw new IOException("disk full");
                }))
                .isInstanceOf(ExportFailure.class)
                .hasMessageContaining("kept.txt")
                .hasMessageContaining("disk full");
        assertThat(folder.resolve("kept.txt")).hasContent("before");
        try (Stream<Path> there = Files.list(folder)) {
            assertThat(there).hasSize(1);
        }
    }

    @Test
    void fileNamesAreSafe() {
        assertThat(FileNames.safe("a/b\\c:d")).isEqualTo("a-b-c-d");
        assertThat(FileNames.safe("../..")).isEqualTo("unnamed");
        assertThat(FileNames.safe("Löwe, Zimmer 2")).isEqualTo("Löwe-Zimmer-2");
        FileNames names = new FileNames();
        assertThat(names.unique("a/b")).isEqualTo("a-b");
        assertThat(names.unique("A:B")).isEqualTo("A-B-2");
    }

    private List<Path> write(boolean overwrite) {
        return DocumentSet.write(SAMPLE, PROJECT, folder, Paper.A4, UnitSystem.METRIC, overwrite);
    }
}
