package hushmaze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** Validation: what the command prints and returns for small jobs worked by hand, and for bad input. */
class NestCommandTest {
    @TempDir
    private Path folder;

    private StringWriter out;
    private StringWriter err;
    private Path parts;

    @BeforeEach
    void twoPieces() throws IOException {
        parts = Files.writeString(
                folder.resolve("parts.csv"), "mark,quantity,lengthMm,widthMm\nA,2,400,300\nB,1,200,100\n");
    }

    private int run(String... arguments) {
        out = new StringWriter();
        err = new StringWriter();
        List<String> all = new ArrayList<>(List.of(parts.toString(), "--seconds", "0.05"));
        all.addAll(List.of(arguments));
        return new CommandLine(new NestCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(all.toArray(new String[0]));
    }

    @Test
    void printsTheLayoutAsJson() throws IOException {
        assertThat(run("--sheet", "1000x500", "--kerf", "3", "--trim", "10", "--json"))
                .isZero();
        JsonNode root = new ObjectMapper().readTree(out.toString());
        assertThat(root.fieldNames()).toIterable().containsExactly("sheets", "lowerBound", "provedBest", "offcuts");
        assertThat(root.get("provedBest").asBoolean()).isTrue();
        // 980 x 480 less 2 x 400 x 300 and 200 x 100: the largest rest of a row or column has more than 0.1 x 0.2 m
        assertThat(root.get("offcuts").get(0).fieldNames())
                .toIterable()
                .containsExactly("sheet", "lengthMm", "widthMm");
        assertThat(root.get("lowerBound").asInt()).isEqualTo(1);
        assertThat(root.get("sheets")).hasSize(1);
        JsonNode sheet = root.get("sheets").get(0);
        assertThat(sheet.fieldNames()).toIterable().containsExactly("lengthMm", "widthMm", "cuts", "panels");
        assertThat(sheet.get("lengthMm").asDouble()).isEqualTo(1000);
        assertThat(sheet.get("panels"))
                .hasSize(3)
                .allSatisfy(panel -> assertThat(panel.fieldNames())
                        .toIterable()
                        .containsExactly("mark", "xMm", "yMm", "lengthMm", "widthMm", "rotated"));
        List<String> leaves = new ArrayList<>();
        walk(sheet.get("cuts"), 980, 480, leaves);
        assertThat(leaves).contains("A", "B", "offcut");
        assertThat(leaves.stream().filter("A"::equals)).hasSize(2);
    }

    /** Makes the cuts of the JSON alone: sizes of the pieces follow, and no cut may lie outside its piece. */
    private static void walk(JsonNode node, double length, double width, List<String> leaves) {
        if (node.isTextual()) {
            leaves.add(node.asText());
            if (node.asText().equals("A")) {
                assertThat(List.of(length, width)).containsExactlyInAnyOrder(400.0, 300.0);
            }
            return;
        }
        assertThat(node.fieldNames()).toIterable().containsExactly("along", "atMm", "first", "second");
        boolean rip = node.get("along").asText().equals("length");
        double at = node.get("atMm").asDouble();
        double rest = Math.max(0, (rip ? width : length) - at - 3);
        assertThat(at).isPositive().isLessThan(rip ? width : length);
        walk(node.get("first"), rip ? length : at, rip ? at : width, leaves);
        walk(node.get("second"), rip ? length : rest, rip ? rest : width, leaves);
    }

    @Test
    void printsStepsForPeople() {
        assertThat(run("--sheet", "1000x500", "--kerf", "3", "--trim", "10")).isZero();
        assertThat(out.toString())
                .startsWith("Sheet 1 of 1: 1000 x 500 mm, 3 panels, 48.0 % waste")
                .contains("trim 10 mm off all four edges first")
                .contains("PANEL A (", "crosscut", "rip", "fence");
        assertThat(err.toString()).contains("1 sheet; none can do with fewer than 1");
    }

    @Test
    void piecesThatFitNowhereGiveOneAndAreNamed() {
        assertThat(run("--sheet", "380x330", "--kerf", "3", "--trim", "10", "--json"))
                .isEqualTo(1);
        assertThat(out.toString()).contains("\"unplaced\" : [ \"A\", \"A\" ]");
        assertThat(err.toString())
                .contains("not placed: 2 of 2 pieces A (400.0 x 300.0 mm): larger than every sheet inside its trim");
        assertThat(run("--sheet", "430x330@5:1", "--kerf", "3", "--trim", "10")).isEqualTo(1);
        assertThat(err.toString()).contains("1 of 2 pieces A (400.0 x 300.0 mm): not enough sheets in stock");
    }

    @Test
    void piecesKeepTheirDirectionWhenTold() {
        assertThat(run("--sheet", "330x430", "--kerf", "3", "--trim", "10")).isZero();
        assertThat(run("--sheet", "330x430", "--kerf", "3", "--trim", "10", "--no-rotate"))
                .isEqualTo(1);
    }

    @Test
    void badInputGivesTwoAndAMessageWithLimit() throws IOException {
        assertThat(run("--sheet", "2440*1220")).isEqualTo(2);
        assertThat(err.toString()).contains("--sheet: \"2440*1220\"", "LENGTHxWIDTH");
        assertThat(run("--sheet", "0x1220")).isEqualTo(2);
        assertThat(err.toString()).contains("--sheet 0x1220, length: 0 mm", "from 50 to 10000 mm");
        assertThat(run("--sheet", "60x60", "--trim", "30")).isEqualTo(2);
        assertThat(err.toString()).contains("--sheet: 60 x 60 mm", "63.2 mm");
        assertThat(run("--sheet", "2440x1220", "--kerf", "-1")).isEqualTo(2);
        assertThat(err.toString()).contains("--kerf: -1 mm", "from 0 to 12 mm");
        assertThat(run("--sheet", "2440x1220", "--seconds", "0")).isEqualTo(2);
        assertThat(run()).isEqualTo(2);
        assertThat(err.toString()).contains("--sheet");
        Files.writeString(parts, "A,0,400,300\n");
        assertThat(run("--sheet", "2440x1220")).isEqualTo(2);
        assertThat(err.toString()).contains("parts.csv, line 1, quantity: 0");
        assertThat(out.toString()).isEmpty();
    }

    /** What is wrong in a list, or with a saw, is told with its line, the value and the limit. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            A,1000000,50,30 | quantity: 1000000 is not accepted; it must be from 1 to 20000
            A,-1,50,30 | quantity: -1 is not accepted; it must be from 1 to 20000
            A,1,-50,30 | lengthMm: -50 mm is not accepted; it must be from 1 to 10000 mm
            A,1,NaN,30 | lengthMm: not a number
            A,1,50 | 3 fields is not accepted; it must be 4 or 5
            A,1,50,30,maybe | grain: "maybe" is not accepted; it must be yes or no
            """)
    void badListsGiveTwoAndAMessageWithTheLine(String line, String message) throws IOException {
        Files.writeString(parts, "mark,quantity,lengthMm,widthMm,grain\n" + line + "\n");
        assertThat(run("--sheet", "2440x1220")).isEqualTo(2);
        assertThat(err.toString()).contains("line 2", message);
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void filesThatAreNoListsGiveTwoAndAMessage() throws IOException {
        Files.writeString(parts, "");
        assertThat(run("--sheet", "2440x1220")).isEqualTo(2);
        assertThat(err.toString()).contains("parts.csv: no piece");
        Files.writeString(parts, "mark,quantity,lengthMm,widthMm\nA,1,400,300,yes\n");
        assertThat(run("--sheet", "2440x1220")).isEqualTo(2);
        assertThat(err.toString()).contains("line 2", "5 fields", "4, as the first line names them");
        Files.writeString(parts, "length,width\n");
        assertThat(run("--sheet", "2440x1220")).isEqualTo(2);
        assertThat(err.toString()).contains("line 1", "mark,quantity,lengthMm,widthMm");
        Files.write(parts, new byte[] {'A', ',', '1', ',', (byte) 0xff, (byte) 0xfe, ',', '5', '\n'});
        assertThat(run("--sheet", "2440x1220")).isEqualTo(2);
        assertThat(err.toString()).contains("UTF-8");
        Files.writeString(parts, "A,1,400,300\nA,1,200,100\n");
        assertThat(run("--sheet", "2440x1220")).isEqualTo(2);
        assertThat(err.toString()).contains("line 2", "\"A\"", "used once");
    }

    /** By hand: a strip of 20 mm is less than the 30 mm a saw can hold; of 500 x 300 nothing else is cut but it. */
    @Test
    void costAndNarrowStripsAreSaid() throws IOException {
        Files.writeString(parts, "A,2,500,20\n");
        assertThat(run("--sheet", "500x60@8:1", "--kerf", "3", "--trim", "0")).isZero();
        assertThat(err.toString()).contains("1 sheet", "proved best", "cost 8.00");
        assertThat(out.toString()).contains("NARROW");
        assertThat(run("--sheet", "500x60", "--kerf", "3", "--trim", "0")).isZero();
        assertThat(err.toString()).doesNotContain("cost");
    }
}
