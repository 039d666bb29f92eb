package hushmaze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hushmaze.assess.Methods;
import hushmaze.assess.TestRooms;
import hushmaze.drawing.SampleAssessment;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.VentPath;
import hushmaze.size.SweepRange;
import hushmaze.store.NumberField;
import hushmaze.store.ProjectFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Property: a row is the assessment of the project with that value typed into its file; parts together are the whole; a sweep that
 * was cut off at any byte goes on to the same bytes; what is no sweep is refused with field, value and limit.
 */
class SweepCommandTest {
    private static final String WIDTH = "paths[0].box.clearWidthMm";

    @TempDir
    private Path folder;

    /** One path, "in, \"old\"", with a box of four passes or with none. */
    private static Project project(Box box) {
        VentPath path = TestRooms.path("in, \"old\"", Purpose.SUPPLY, 55, null);
        return TestRooms.project(TestRooms.nc(25), null, path.withBox(box));
    }

    private Path file(Project project) {
        Path file = folder.resolve("project.json");
        ProjectFile.write(project, file);
        return file;
    }

    private Outcome sweep(Path out, String field, String from, String to, int steps, String... more) {
        List<String> args =
                new ArrayList<>(List.of("sweep", folder.resolve("project.json").toString(), "--quick"));
        args.addAll(List.of("--field", field, "--from", from, "--to", to, "--steps", String.valueOf(steps)));
        args.addAll(List.of("--out", out.toString()));
        args.addAll(List.of(more));
        return Outcome.run(args.toArray(String[]::new));
    }

    /** Rows as cells, read without the code that wrote them: a quoted cell may have commas and doubled quotes. */
    private static List<List<String>> cells(Path file) throws IOException {
        return Files.readString(file).lines().map(SweepCommandTest::split).toList();
    }

    private static List<String> split(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.replace("\"\"", "\u0000").toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c == '\u0000' ? '"' : c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    @Test
    void aRowIsTheAssessmentOfTheProjectWithThatValueTypedIn() throws IOException {
        Project project = project(SampleAssessment.fourPasses());
        file(project);
        Path out = folder.resolve("width.csv");
        Outcome outcome = sweep(out, "clearWidthMm", "100", "4.5 in", 3);
        assertThat(outcome.code()).as(outcome.err()).isZero();
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains(WIDTH, "3 rows computed");
        List<List<String>> rows = cells(out);
        assertThat(rows).hasSize(4);
        assertThat(rows.get(0)).startsWith("step", WIDTH, "in, \"old\".laidOut").endsWith("error");
        // By hand: half way from 100 mm to 4.5 · 25.4 = 114.3 mm.
        assertThat(rows.stream().skip(1).map(r -> r.get(1))).containsExactly("100.0", "107.15", "114.3");
        for (List<String> row : rows.subList(1, 4)) {
            Path edited = folder.resolve("edited.json");
            String text = ProjectFile.text(project);
            assertThat(text).containsOnlyOnce("\"clearWidthMm\": 100");
            Files.writeString(edited, text.replace("\"clearWidthMm\": 100", "\"clearWidthMm\": " + row.get(1)));
            Outcome assessed = Outcome.run("assess", edited.toString(), "--json", "--quick");
            requireSame(rows.get(0), row, new ObjectMapper().readTree(assessed.out()));
        }
    }

    private static void requireSame(List<String> head, List<String> row, JsonNode json) {
        JsonNode path = json.path("paths").get(0);
        String prefix = "in, \"old\".";
        same(head, row, prefix + "marginDb", path.at("/quiet/marginDb"));
        same(head, row, prefix + "governingBandHz", path.at("/quiet/governingBandHz"));
        same(head, row, prefix + "dbA", path.at("/quiet/dbA"));
        same(head, row, prefix + "nc", path.at("/quiet/nc"));
        same(head, row, prefix + "flowLps", path.at("/air/flowLps"));
        same(head, row, prefix + "pressureDropPa", path.at("/air/pressureDropPa"));
        same(head, row, prefix + "pressureDropHighPa", path.at("/air/pressureDropHighPa"));
        same(head, row, prefix + "massKg", path.at("/buildable/massKg"));
        same(head, row, prefix + "panels", path.at("/buildable/panels"));
        same(head, row, prefix + "sheets", path.at("/buildable/sheets"));
        same(head, row, "room.pressurePa", json.at("/room/pressurePa"));
        same(head, row, "room.co2SteadyPpm", json.at("/room/co2SteadyPpm"));
        same(head, row, "room.temperatureRiseK", json.at("/room/temperatureRiseK"));
        for (String verdict : List.of("quiet", "air", "fits", "buildable")) {
            assertThat(row.get(head.indexOf(prefix + verdict + "Ok")))
                    .isEqualTo(path.path(verdict).path("ok").asText());
        }
        assertThat(row.get(head.indexOf(prefix + "laidOut"))).isEqualTo("false");
        assertThat(row.get(head.indexOf("error"))).isEmpty();
    }

    private static void same(List<String> head, List<String> row, String column, JsonNode value) {
        String cell = row.get(head.indexOf(column));
        if (value.isNull()) {
            assertThat(cell).as(column).isEmpty();
        } else {
            assertThat(Double.parseDouble(cell))
                    .as(column)
                    .isEqualTo(value.asDouble(), within(Math.ulp(value.asDouble())));
        }
    }

    private static SweepRun run(Project project, String field, double from, double to, int steps, int part, int parts) {
        return new SweepRun(
                project,
                NumberField.find(project, "--field", field),
                new SweepRange(from, to, steps),
                Methods.ESTIMATE,
                part,
                parts);
    }

    @Test
    void aSweepCutOffAnywhereInItsLastTwoRowsGoesOnToTheSameBytes() throws IOException {
        Project project = project(SampleAssessment.fourPasses());
        // The last value is refused: the gap of the turns has no room any more.
        SweepRun run = run(project, "turnGapMm", 60, 900, 5, 1, 1);
        Path whole = folder.resolve("whole.csv");
        SweepRun.Outcome outcome = run.into(whole, false, row -> {});
        assertThat(outcome).isEqualTo(new SweepRun.Outcome(0, 5, 1));
        byte[] bytes = Files.readAllBytes(whole);
        List<String> lines = Files.readString(whole).lines().toList();
        int start = bytes.length - lines.get(4).length() - lines.get(5).length() - 2;
        Path cut = folder.resolve("cut.csv");
        run.into(cut, false, row -> {});
        for (int length = start; length <= bytes.length; length++) {
            Files.write(cut, Arrays.copyOf(bytes, length));
            SweepRun.Outcome again = run.into(cut, false, row -> {});
            assertThat(again.kept() + again.computed()).isEqualTo(5);
            assertThat(Files.readAllBytes(cut)).as("cut at %d", length).isEqualTo(bytes);
        }
    }

    @Test
    void partsTogetherAreTheWhole() throws IOException {
        Project project = project(SampleAssessment.fourPasses());
        Path whole = folder.resolve("whole.csv");
        run(project, WIDTH, 95, 131, 7, 1, 1).into(whole, false, row -> {});
        List<String> lines = new ArrayList<>();
        for (int part = 1; part <= 3; part++) {
            Path file = folder.resolve("part" + part + ".csv");
            run(project, WIDTH, 95, 131, 7, part, 3).into(file, false, row -> {});
            List<String> own = Files.readAllLines(file);
            lines.add(own.remove(0));
            lines.addAll(own);
        }
        assertThat(lines.stream().distinct().sorted())
                .containsExactlyElementsOf(
                        Files.readAllLines(whole).stream().sorted().toList());
    }

    @Test
    void aValueThatIsRefusedIsARowThatSaysWhy() throws IOException {
        file(project(SampleAssessment.fourPasses()));
        Path out = folder.resolve("passes.csv");
        Outcome outcome = sweep(out, "box.passes", "5", "7", 3);
        assertThat(outcome.code()).isZero();
        assertThat(outcome.err()).contains("1 of them refused", "7 is refused");
        List<List<String>> rows = cells(out);
        assertThat(rows.get(3)).startsWith("2", "7", "").hasSameSizeAs(rows.get(0));
        assertThat(rows.get(3).get(rows.get(0).size() - 1)).contains("paths[0].box.passes", "7", "from 1 to 6");
        assertThat(rows.get(2)).startsWith("1", "6", "false").endsWith("");
    }

    @Test
    void aBoxLeftOpenIsLaidOutForEveryValue() throws IOException {
        file(project(null));
        Path out = folder.resolve("flow.csv");
        assertThat(sweep(out, "flowLps", "8", "3000", 2).code()).isZero();
        List<List<String>> rows = cells(out);
        List<String> head = rows.get(0);
        assertThat(rows.get(1).get(head.indexOf("in, \"old\".laidOut"))).isEqualTo("true");
        assertThat(Double.parseDouble(rows.get(1).get(head.indexOf("in, \"old\".widthMm"))))
                .isBetween(100.0, 900.0);
        assertThat(rows.get(2).get(head.indexOf("error"))).startsWith("No box keeps every limit of the path");
    }

    @Test
    void aFinishedSweepIsNotComputedAgainAndAnotherIsRefused() throws IOException {
        file(project(SampleAssessment.fourPasses()));
        Path out = folder.resolve("w.csv");
        assertThat(sweep(out, "clearWidthMm", "100", "101", 2).code()).isZero();
        byte[] bytes = Files.readAllBytes(out);
        assertThat(sweep(out, "clearWidthMm", "100", "101", 2).err()).contains("0 rows computed", "2 were there");
        Outcome other = sweep(out, "clearWidthMm", "100", "102", 2);
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err()).contains("w.csv", "to: 101.0", "to: 102.0");
        assertThat(Files.readAllBytes(out)).isEqualTo(bytes);
        file(project(SampleAssessment.fourPasses()).withPaths(List.of(TestRooms.path("b", Purpose.SUPPLY, 50, null))));
        assertThat(sweep(out, "flowLps", "100", "101", 2).err()).contains("SHA-256");
        file(project(SampleAssessment.fourPasses()));
        assertThat(sweep(out, "clearWidthMm", "100", "102", 2, "--overwrite").code())
                .isZero();
        assertThat(Files.readString(out)).contains("102.0");
    }

    @Test
    void whatIsNoSweepIsRefused() {
        file(project(SampleAssessment.fourPasses()));
        Path out = folder.resolve("none.csv");
        refused(sweep(out, "clearWithMm", "1", "2", 2), "--field", "clearWithMm", WIDTH);
        refused(sweep(out, "thicknessMm", "1", "2", 2), "--field", "paths[0].box.liner.thicknessMm");
        refused(sweep(out, WIDTH, "wide", "2", 2), "--from", "wide");
        refused(sweep(out, WIDTH, "1", "2 kg", 2), "--to", "2 kg");
        refused(sweep(out, WIDTH, "1", "2", 1), "--steps", "1", "2");
        refused(sweep(out, WIDTH, "2", "2", 2), "--to", "2.0");
        refused(sweep(out, "passes", "1", "4", 3), "--steps", "3", "2, 4");
        refused(sweep(out, "passes", "1.5", "4", 3), "--from", "1.5", "whole");
        refused(sweep(out, WIDTH, "1", "2", 2, "--part", "3", "--parts", "2"), "--part", "3");
        refused(Outcome.run("sweep", folder.resolve("no.json").toString()), "--field");
        assertThat(out).doesNotExist();
    }

    private static void refused(Outcome outcome, String... words) {
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).contains(words);
        assertThat(outcome.out()).isEmpty();
    }

    @Test
    void theLanguageOfTheMachineDoesNotMatter() throws IOException {
        Project project = project(SampleAssessment.fourPasses());
        Path plain = folder.resolve("plain.csv");
        run(project, WIDTH, 100, 101, 3, 1, 1).into(plain, false, row -> {});
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Path german = folder.resolve("german.csv");
            run(project, WIDTH, 100, 101, 3, 1, 1).into(german, false, row -> {});
            assertThat(german).hasSameBinaryContentAs(plain);
        } finally {
            Locale.setDefault(before);
        }
    }
}
