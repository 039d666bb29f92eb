package hushmaze.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.build.CutNode;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import hushmaze.drawing.SampleAssessment;
import hushmaze.material.Sheet;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.RandomBoxes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Property: whoever takes the file's sheets and sets the fence as it says gets every part of the cut list, in its number and
 * to a millionth of a millimetre. The cuts are made again here, by subtraction alone.
 */
class CutSequenceCsvTest {
    private static final double MM = 1000;
    private static final double EXACT = 1e-6;

    /** Sizes along the sheet's length and width, mm. */
    private record Size(double length, double width) {}

    @Test
    void fencesAndKerfGiveEveryPart() {
        Assessment sample = SampleAssessment.twoPaths(UnitSystem.METRIC);
        sample.paths().forEach(CutSequenceCsvTest::check);
        RandomBoxes boxes = new RandomBoxes(77);
        int cuts = 0;
        for (int i = 0; i < 20; i++) {
            UnitSystem units = UnitSystem.values()[i % 2];
            cuts += check(SampleAssessment.of(units, boxes.next()).paths().get(0));
        }
        assertThat(cuts).as("the check is no empty one").isGreaterThan(500);
    }

    @Test
    void aSheetOnePanelFillsHasALineWithoutACut() {
        Sheet sheet = new Sheet("to size", 0.5, 0.3, 1.0, 1, "invented for a test");
        SheetPlan plan = new SheetPlan(
                sheet,
                0,
                0.003,
                0.05,
                new CutNode.Leaf("B1", 0.5, 0.3),
                List.of(new SheetPlan.Placed("B1", 0, 0, 0.5, 0.3, true)));
        SheetLayout layout = new SheetLayout("board", 0.018, List.of(plan), 1, List.of(), true, 0.1);
        List<Map<String, String>> lines = read(CutSequenceCsv.of(List.of(layout)));
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0))
                .containsEntry("cut", "")
                .containsEntry("fenceMm", "")
                .containsEntry("firstName", "B1")
                .containsEntry("firstLengthMm", "500.0")
                .containsEntry("firstTurned", "true")
                .containsEntry("secondKind", "");
    }

    /** Replays all sheets of a path; how many cuts it took. */
    private static int check(PathResult result) {
        List<Map<String, String>> lines = read(CutSequenceCsv.of(result));
        Map<String, CutItem> items = result.cutList().items().collect(Collectors.toMap(CutItem::mark, item -> item));
        Map<String, Integer> made = new HashMap<>();
        Map<String, List<Map<String, String>>> sheets =
                lines.stream().collect(Collectors.groupingBy(line -> line.get("sheet")));
        sheets.values().forEach(sheet -> replay(sheet, items, made));
        Map<String, Integer> wanted = new HashMap<>();
        items.values().forEach(item -> wanted.put(item.mark(), item.quantity()));
        result.layouts().stream()
                .flatMap(layout -> layout.unplaced().stream())
                .forEach(mark -> wanted.merge(mark, -1, Integer::sum));
        wanted.values().removeIf(count -> count == 0);
        assertThat(made).isEqualTo(wanted);
        return (int) lines.stream().filter(line -> !line.get("cut").isEmpty()).count();
    }

    private static void replay(List<Map<String, String>> cuts, Map<String, CutItem> items, Map<String, Integer> made) {
        Map<String, Size> bench = new HashMap<>();
        Map<String, String> first = cuts.get(0);
        double trim = number(first, "trimMm");
        bench.put(
                "sheet", new Size(number(first, "sheetLengthMm") - 2 * trim, number(first, "sheetWidthMm") - 2 * trim));
        if (first.get("cut").isEmpty()) {
            finish(first, "first", bench.remove("sheet"), items, made);
        }
        int expected = 1;
        for (Map<String, String> cut : cuts) {
            if (cut.get("cut").isEmpty()) {
                continue;
            }
            assertThat(cut).containsEntry("cut", String.valueOf(expected++));
            Size piece = bench.remove(cut.get("of"));
            assertThat(piece).as("on the bench: %s", cut.get("of")).isNotNull();
            double fence = number(cut, "fenceMm");
            boolean rip = cut.get("direction").equals("rip");
            double left = Math.max(0, (rip ? piece.width() : piece.length()) - fence - number(cut, "kerfMm"));
            Size one = rip ? new Size(piece.length(), fence) : new Size(fence, piece.width());
            Size two = rip ? new Size(piece.length(), left) : new Size(left, piece.width());
            lay(cut, "first", one, bench, items, made);
            lay(cut, "second", two, bench, items, made);
        }
        assertThat(bench).as("cut up whole").isEmpty();
    }

    private static void lay(
            Map<String, String> cut,
            String which,
            Size size,
            Map<String, Size> bench,
            Map<String, CutItem> items,
            Map<String, Integer> made) {
        assertThat(number(cut, which + "LengthMm")).isCloseTo(size.length(), within(EXACT));
        assertThat(number(cut, which + "WidthMm")).isCloseTo(size.width(), within(EXACT));
        switch (cut.get(which + "Kind")) {
            case "piece" ->
                assertThat(bench.put(cut.get(which + "Name"), size))
                        .as("names are given once")
                        .isNull();
            case "panel" -> finish(cut, which, size, items, made);
            case "offcut" -> assertThat(Math.min(size.length(), size.width())).isPositive();
            case "nothing" -> assertThat(Math.min(size.length(), size.width())).isLessThan(EXACT);
            default -> throw new AssertionError("unknown kind of piece in " + cut);
        }
    }

    private static void finish(
            Map<String, String> cut, String which, Size size, Map<String, CutItem> items, Map<String, Integer> made) {
        CutItem item = items.get(cut.get(which + "Name"));
        boolean turned = Boolean.parseBoolean(cut.get(which + "Turned"));
        assertThat(cut).containsEntry("material", item.material());
        assertThat(turned ? size.width() : size.length()).isCloseTo(item.length() * MM, within(EXACT));
        assertThat(turned ? size.length() : size.width()).isCloseTo(item.width() * MM, within(EXACT));
        made.merge(item.mark(), 1, Integer::sum);
    }

    private static double number(Map<String, String> line, String field) {
        return Double.parseDouble(line.get(field));
    }

    /** Lines by the names in the head. */
    private static List<Map<String, String>> read(String csv) {
        List<List<String>> rows = csv.lines().map(CutSequenceCsvTest::fields).toList();
        List<Map<String, String>> lines = new ArrayList<>();
        for (List<String> row : rows.subList(1, rows.size())) {
            assertThat(row).hasSameSizeAs(rows.get(0));
            Map<String, String> line = new HashMap<>();
            for (int i = 0; i < row.size(); i++) {
                line.put(rows.get(0).get(i), row.get(i));
            }
            lines.add(line);
        }
        return lines;
    }

    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        fields.add(field.toString());
        return fields;
    }
}
