package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.project.Project;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Property: every wrong value in a project file gives a message that names the file, the field, the value, the limit and
 * the unit. One line a case: where in the file, what stands there instead, and the message after the file's name.
 */
class ProjectFileErrorsTest {
    private static final String FILE = "cellar.json";

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', maxCharsPerColumn = 2000, textBlock = """
            # numbers out of range
            /paths/0/brief/flowLps | -3 | paths[0].brief.flowLps: -3 L/s is not accepted; it must be from 0.1 to 5000 L/s
            /paths/1/box/clearWidthMm | 0 | paths[1].box.clearWidthMm: 0 mm is not accepted; it must be from 1 to 3000 mm
            /paths/1/box/shell/1/youngModulusGPa | 4000 | paths[1].box.shell[1].youngModulusGPa: 4000 GPa is not accepted; it must be from 0.01 to 300 GPa
            /room/outdoorCo2Ppm | 9999 | room.outdoorCo2Ppm: 9999 ppm is not accepted; it must be from 0 to 5000 ppm
            /room/ownNoise/valuesDb/2 | 500 | room.ownNoise: 500 dB is not accepted; it must be from -30 to 160 dB
            /stock/saw/kerfMm | 12.00001 | stock.saw.kerfMm: 12.00001 mm is not accepted; it must be from 0 to 12 mm
            /stock/saw/kerfMm | "1 in" | stock.saw.kerfMm: "1 in", that is 25.4 mm is not accepted; it must be from 0 to 12 mm
            /paths/1/box/passes | 7 | paths[1].box.passes: 7 is not accepted; it must be from 1 to 6
            /paths/0/brief/flowLps | 1e300 | paths[0].brief.flowLps: 1E+300 L/s is not accepted; it must be from 0.1 to 5000 L/s
            # rules between fields
            /paths/1/box/liner/thicknessMm | 150 | paths[1].box.liner.thicknessMm: 150 mm is not accepted; it must be no thicker than the clear width of the pass, 140 mm
            /paths/1/box/joinery | {"fitClearanceMm":5,"gasketMm":3,"grooveMm":0} | paths[1].box.joinery.fitClearanceMm: 5 mm is not accepted; it must be from 0 to 3 mm
            /paths/1/box/joinery | {"fitClearanceMm":0.5,"gasketMm":3,"grooveMm":9} | paths[1].box.joinery.grooveMm: 9 mm is not accepted; it must be at most half the innermost board, 8 mm
            /paths/1/box/joinery | {"fitClearanceMm":0.5,"gasketMm":3,"grooveMm":0.4} | paths[1].box.joinery.grooveMm: 0.4 mm is not accepted; it must be 0, or deeper than the fit clearance, 0.5 mm
            /paths/1/box/seams | [{"kind":"GLUED","positionMm":400},{"kind":"PARTING","positionMm":500}] | paths[1].box.seams[1].positionMm: 500 mm is not accepted; it must be at least 250 beyond the one before, 650 mm
            /paths/1/box/seams | [{"kind":"GLUED","positionMm":10}] | paths[1].box.seams[0].positionMm: 10 mm is not accepted; it must be from 50 to 6000 mm
            /paths/1/box/openingPort/heightMm | 200 | paths[1].box.openingPort.heightMm: 200 mm is not accepted; it must be within the pass, 140 mm
            /paths/1/box/turnGapMm | 690 | paths[1].box.turnGapMm: 690 mm is not accepted; it must be from 1 to 650 mm
            /paths/1/name | "Warm air from the furnace" | paths: two paths of the same name is not accepted; it must be differently named paths
            /paths/1/brief/noise/distanceM | null | paths[1].brief.noise.distanceM: nothing is not accepted; it must be given
            /room/target/number | 5 | room.target.number: 5 is not accepted; it must be from 15 to 70
            # no numbers
            /room/volumeM3 | NaN | room.volumeM3: "NaN" is not accepted; it must be a finite number in m³
            /room/volumeM3 | -Infinity | room.volumeM3: "-Infinity" is not accepted; it must be a finite number in m³
            /room/volumeM3 | 1e999 | room.volumeM3: 1E+999 is not accepted; it must be a finite number in m³
            /room/volumeM3 | 1e-2147483640 | room.volumeM3: 1E-2147483640 is not accepted; it must be a finite number in m³
            /room/volumeM3 | [42] | room.volumeM3: [42] is not accepted; it must be a number in m³ or a text with a unit, such as "10 m³"
            /room/volumeM3 | true | room.volumeM3: true is not accepted; it must be a number in m³ or a text with a unit, such as "10 m³"
            /room/people | 2.5 | room.people: 2.5 is not accepted; it must be a whole number
            /room/people | 99999999999 | room.people: 99999999999 is not accepted; it must be a whole number
            /room/people | "two" | room.people: "two" is not accepted; it must be a whole number
            /paths/1/box/baffleBoard/lossFactor | "0.02" | paths[1].box.baffleBoard.lossFactor: "0.02" is not accepted; it must be a number
            # typed texts
            /paths/0/brief/flowLps | "wide" | paths[0].brief.flowLps: "wide" is not accepted; it must be a number with a unit, such as "28 L/s" or "60 cfm"
            /paths/0/brief/flowLps | "30 Pa" | paths[0].brief.flowLps: "30 Pa" (a pressure) is not accepted; it must be an airflow, such as "28 L/s" or "60 cfm"
            /paths/0/brief/flowLps | "30 furlongs" | paths[0].brief.flowLps: "30 furlongs" is not accepted; it must be in a known unit, such as "28 L/s" or "60 cfm"
            /paths/0/brief/flowLps | "1e999 cfm" | paths[0].brief.flowLps: "1e999 cfm" is not accepted; it must be a finite number
            # missing, unknown, null
            /room/use | REMOVE | room.co2PerPersonLps: nothing is not accepted; it must be given
            /room/volumeM3 | REMOVE | room.volumeM3: missing; it must be a number in m³ or a text with a unit, such as "10 m³"
            /stock/saw | REMOVE | stock.saw: missing; it must be an object with the fields name, kerfMm, trimMm, source
            /room/absorptionAreaM2 | REMOVE | room.absorptionAreaM2: missing; it must be a list of numbers in m²
            /paths/1/box/clearWidht | 140 | paths[1].box.clearWidht: this field is not known here; the nearest known field is clearWidthMm
            /formatversion | 1 | formatversion: this field is not known here; the nearest known field is formatVersion
            # choices, dates, texts, yes and no
            /paths/1/box/form | "Maze" | paths[1].box.form: "Maze" is not accepted; it must be one of MAZE, OFFSET_CHAMBER
            /units | 1 | units: 1 is not accepted; it must be one of METRIC, INCH
            /titleBlock/date | "25.11.2026" | titleBlock.date: "25.11.2026" is not accepted; it must be a date such as "2026-11-25"
            /titleBlock/date | "-5000-01-01" | titleBlock.date.year: -5000 is not accepted; it must be from 1 to 9999
            /name | "" | name: a blank text is not accepted; it must be a text of 1 to 60 characters
            /name | 5 | name: 5 is not accepted; it must be a text
            /name | "a\\tb" | name: a text with control characters is not accepted; it must be a text on one line without control characters
            /name | "a\\ud800b" | must be a text on one line without control characters
            /paths/0/brief/construction/linedBroadFaces | "yes" | paths[0].brief.construction.linedBroadFaces: "yes" is not accepted; it must be true or false
            /paths/1/box/linedFaces/walls | "yes" | paths[1].box.linedFaces.walls: "yes" is not accepted; it must be a whole number
            /paths/1/box/linedFaces/ends | 3 | paths[1].box.linedFaces.ends: 3 is not accepted; it must be from 0 to 2
            # lists and spectra
            /paths | {} | paths: {} is not accepted; it must be a list
            /paths | [] | paths: 0 vent paths is not accepted; it must be 1 to 12 vent paths
            /paths/0 | null | paths[0]: null is not accepted; it must be an object with the fields name, purpose, brief, box
            /paths/1/box/shell | [] | paths[1].box.shell: 0 layers is not accepted; it must be 1 to 3 layers of board
            /stock/linerSheets | [] | stock.linerSheets: no sheet is not accepted; it must be at least one sheet size
            /room/absorptionAreaM2 | [1, 2] | room.absorptionAreaM2: 2 values is not accepted; it must be 8 values, 63 Hz to 8 kHz
            /room/absorptionAreaM2/3 | "1 kg" | room.absorptionAreaM2[3]: "1 kg" (a mass) is not accepted; it must be an area, such as "10 m²"
            /room/absorptionAreaM2/3 | null | room.absorptionAreaM2[3]: null is not accepted; it must be a number in m²
            /room/ownNoise | 30 | room.ownNoise: 30 is not accepted; it must be an object {"bands": "octave" or "thirdOctave", "valuesDb": [...]}
            /room/ownNoise/bands | "half" | room.ownNoise.bands: "half" is not accepted; it must be one of "octave", "thirdOctave"
            /room/ownNoise/bands | "thirdOctave" | room.ownNoise.valuesDb: 8 values is not accepted; it must be 24 values, 50 Hz to 10k Hz
            /room/ownNoise/bands | REMOVE | room.ownNoise.bands: missing; it must be one of "octave", "thirdOctave"
            /room/ownNoise/valuesDb | REMOVE | room.ownNoise.valuesDb: missing; it must be a list of 8 numbers in dB
            /room/ownNoise/valuesDb | 7 | room.ownNoise.valuesDb: 7 is not accepted; it must be a list of 8 numbers in dB
            /room/ownNoise/valuesDb/7 | Infinity | room.ownNoise.valuesDb[7]: "Infinity" is not accepted; it must be a finite number in dB
            /room/ownNoise/values | 1 | room.ownNoise.values: this field is not known here; the nearest known field is valuesDb
            # format
            /formatVersion | 2 | formatVersion: written by a newer version: format 2; this program reads up to 1
            /formatVersion | 99999999999999999999 | formatVersion: written by a newer version: format 99999999999999999999; this program reads up to 1
            /formatVersion | 0 | formatVersion: 0 is not accepted; it must be from 1 to 1
            /formatVersion | REMOVE | formatVersion: missing; it must be a whole number
            """)
    void oneWrongValueGivesOneMessage(String pointer, String json, String message) {
        UnreadableFile refused = refusal(changed(pointer, json));
        assertThat(refused.problems()).hasSize(1);
        assertThat(refused).hasMessageStartingWith(FILE + ": ").hasMessageContaining(message);
    }

    /** A flow may be left out only where it follows from the use of the room. */
    @Test
    void aFlowWithoutUseIsAskedFor() {
        String text = ProjectFile.text(TestProjects.read("lesson-cabin"))
                .replaceFirst("\"flowLps\": 28,\\s*\"maxP", "\"maxP");
        assertThat(refusal(text))
                .hasMessageContaining(
                        "paths[0].brief.flowLps: nothing is not accepted; it must be given, or room.use that"
                                + " it follows from");
    }

    @Test
    void severalProblemsComeTogetherInTheOrderOfTheFile() {
        String text = ProjectFile.text(TestProjects.read("trio-cellar"))
                .replace("\"volumeM3\": 42", "\"volumeM3\": \"big\"")
                .replace("\"kerfMm\": 1.8", "\"kerfMm\": 18")
                .replace("\"passes\": 3", "\"passes\": 30");
        assertThat(refusal(text).problems())
                .extracting(FileProblem::field)
                .containsExactly("room.volumeM3", "stock.saw.kerfMm", "paths[1].box.passes");
        assertThat(refusal(text).getMessage().lines()).hasSize(3).allMatch(line -> line.startsWith(FILE));
    }

    @Test
    void newerFormatIsSaidAloneWhateverElseIsWrong() {
        assertThat(refusal("{\"formatVersion\": 7, \"other\": []}"))
                .hasMessage(FILE + ": formatVersion: written by a newer version: format 7; this program reads up to 1");
    }

    @Test
    void longListOfProblemsIsCutAndCounted() {
        StringBuilder text = new StringBuilder("{");
        for (int i = 0; i < 100; i++) {
            text.append("\"unknown").append(i).append("\": 1, ");
        }
        text.append("\"formatVersion\": 1}");
        UnreadableFile refused = refusal(text.toString());
        assertThat(refused.problems()).hasSize(106);
        assertThat(refused.getMessage().lines()).hasSize(21).last().isEqualTo("... and 86 more");
    }

    @Test
    void typedUnitsAreUnderstoodEverywhereANumberHasAUnit() {
        Project project = ProjectFile.parse(
                FILE,
                ProjectFile.text(TestProjects.read("trio-cellar"))
                        .replace("\"volumeM3\": 42", "\"volumeM3\": \"1000 ft3\"")
                        .replace("\"clearWidthMm\": 140", "\"clearWidthMm\": \"5 5/8 in\"")
                        .replace("\"maxMassKg\": 60", "\"maxMassKg\": \"100 lb\"")
                        .replace("[ 6, 8,", "[ \"70 ft2\", 8,"));
        // 1000 ft³, 5.625 in, 100 lb and 70 ft² by the exact definitions of foot, inch and pound
        assertThat(project.room().volume()).isEqualTo(28.316846592);
        assertThat(project.paths().get(1).box().clearWidth()).isEqualTo(0.142875);
        assertThat(project.paths().get(0).brief().construction().maxMass()).isEqualTo(45.359237);
        assertThat(project.room().absorptionArea().get(0)).isEqualTo(6.5032128);
    }

    private static UnreadableFile refusal(String text) {
        return catchThrowableOfType(UnreadableFile.class, () -> ProjectFile.parse(FILE, text));
    }

    /** The default sample with one value replaced, added or removed. */
    private static String changed(String pointer, String json) {
        JsonNode tree = RecordWriter.write(TestProjects.read("trio-cellar"));
        JsonPointer place = JsonPointer.compile(pointer);
        JsonNode owner = tree.at(place.head());
        String name = place.last().getMatchingProperty();
        assertThat(owner.isMissingNode()).as(pointer).isFalse();
        if (json.equals("REMOVE")) {
            ((ObjectNode) owner).remove(name);
        } else if (owner instanceof ArrayNode list) {
            list.set(place.last().getMatchingIndex(), JsonText.parse(pointer, json));
        } else {
            ((ObjectNode) owner).set(name, JsonText.parse(pointer, json));
        }
        return JsonText.print(tree).replaceAll("\"(-?Infinity|NaN)\"", "$1");
    }
}
