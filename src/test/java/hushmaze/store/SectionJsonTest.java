package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.section.SectionTask;
import hushmaze.sound.wave.AirMedium;
import hushmaze.sound.wave.LinerMedium;
import hushmaze.sound.wave.WaveSpace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: a section read field by field. Property: every wrong value gives a message that names the file, the field, the
 * value and the limit; one line a case.
 */
class SectionJsonTest {
    private static final String FILE = "section.json";
    private static final String GOOD = """
            {"air":{"soundSpeed":343.2,"density":1.2041},
             "regions":[{"kind":"air","xMm":0,"yMm":0,"widthMm":600,"heightMm":100},
                        {"kind":"liner","flowResistivity":20000,"xMm":0,"yMm":100,"widthMm":600,"heightMm":50}],
             "inlet":{"side":"left","xMm":0,"yMm":0,"spanMm":100},
             "outlet":{"side":"right","xMm":600,"yMm":0,"spanMm":100},
             "frequenciesHz":[125,250.5]}
            """;

    @Test
    void readsEveryField() {
        SectionTask task = SectionJson.parse(FILE, GOOD);
        WaveSpace space = task.space();
        assertThat(task.frequencies()).containsExactly(125.0, 250.5);
        assertThat(space.soundSpeed()).isEqualTo(343.2);
        assertThat(space.flat()).isTrue();
        assertThat(space.blocks()).hasSize(2);
        assertThat(space.blocks().get(0).medium()).isEqualTo(new AirMedium());
        assertThat(space.blocks().get(1).medium()).isEqualTo(new LinerMedium(new MikiLiner(20_000)));
        Cuboid liner = space.blocks().get(1).place();
        assertThat(new double[] {liner.x0(), liner.y0(), liner.x1(), liner.y1()})
                .containsExactly(new double[] {0, 0.1, 0.6, 0.15}, within(1e-12));
        assertThat(space.inlet().normal()).isEqualTo(Axis.X);
        assertThat(space.inlet().high()).isFalse();
        assertThat(space.inlet().at()).isZero();
        assertThat(space.outlet().high()).isTrue();
        assertThat(space.outlet().at()).isCloseTo(0.6, within(1e-12));
        assertThat(space.outlet().start().size(Axis.Y)).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void portsUpAndDownSpanAlongX() {
        String upright = GOOD.replace("\"left\",\"xMm\":0,\"yMm\":0", "\"down\",\"xMm\":20,\"yMm\":0")
                .replace("\"right\",\"xMm\":600,\"yMm\":0", "\"up\",\"xMm\":400,\"yMm\":150");
        WaveSpace space = SectionJson.parse(FILE, upright).space();
        assertThat(space.inlet().normal()).isEqualTo(Axis.Y);
        assertThat(space.inlet().high()).isFalse();
        assertThat(space.inlet().at()).isZero();
        assertThat(space.inlet().start().low(Axis.X)).isCloseTo(0.02, within(1e-12));
        assertThat(space.inlet().start().high(Axis.X)).isCloseTo(0.12, within(1e-12));
        assertThat(space.outlet().high()).isTrue();
        assertThat(space.outlet().at()).isCloseTo(0.15, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', maxCharsPerColumn = 2000, textBlock = """
            /air/soundSpeed | 0 | air.soundSpeed: 0 m/s is not accepted; it must be from 50 to 2000 m/s
            /air/soundSpeed | "fast" | air.soundSpeed: "fast" is not accepted
            /air/soundSpeed | REMOVE | air.soundSpeed: missing; it must be a number in m/s
            /air/density | -1 | air.density: -1 kg/m³ is not accepted; it must be from 0.01 to 1000 kg/m³
            /air | REMOVE | air: missing; it must be an object with the fields soundSpeed, density
            /air | 3 | air: 3 is not accepted; it must be an object with the fields soundSpeed, density
            /regions | REMOVE | regions: missing; it must be a list of 1 to 1000 regions
            /regions | {} | regions: {} is not accepted; it must be a list of 1 to 1000 regions
            /regions | [] | regions: 0 regions is not accepted; it must be a list of 1 to 1000 regions
            /regions/1 | 7 | regions[1]: 7 is not accepted; it must be an object with the fields kind, xMm, yMm, widthMm, heightMm, flowResistivity
            /regions/1/kind | "foam" | regions[1].kind: "foam" is not accepted; it must be one of "air", "liner"
            /regions/0/kind | REMOVE | regions[0].kind: missing; it must be one of "air", "liner"
            /regions/1/flowResistivity | REMOVE | regions[1].flowResistivity: missing; it must be a number in Pa·s/m²
            /regions/1/flowResistivity | -5 | regions[1].flowResistivity: -5 Pa·s/m² is not accepted; it must be from 1 to 10000000 Pa·s/m²
            /regions/0/flowResistivity | 20000 | regions[0].flowResistivity: this field is not known here
            /regions/0/widthMm | -600 | regions[0].widthMm: -600 mm is not accepted; it must be from 0.1 to 100000 mm
            /regions/0/heightMm | 0 | regions[0].heightMm: 0 mm is not accepted; it must be from 0.1 to 100000 mm
            /regions/0/xMm | 1e9 | regions[0].xMm: 1000000000 mm is not accepted; it must be from -100000 to 100000 mm
            /regions/0/xMm | null | regions[0].xMm: null is not accepted; it must be a number in mm
            /regions/0/widht | 600 | regions[0].widht: this field is not known here; the nearest known field is widthMm
            /inlet | REMOVE | inlet: missing; it must be an object with the fields side, xMm, yMm, spanMm
            /inlet/side | "west" | inlet.side: "west" is not accepted; it must be one of "left", "right", "up", "down"
            /inlet/side | REMOVE | inlet.side: missing; it must be one of "left", "right", "up", "down"
            /inlet/spanMm | 0 | inlet.spanMm: 0 mm is not accepted; it must be from 0.1 to 100000 mm
            /inlet/spanMm | 180 | inlet: a line at x = 0 mm from 0 to 180 mm is not accepted; it must be on the outline of the regions, facing away from them, over its whole span
            /inlet/side | "right" | inlet: a line at x = 0 mm from 0 to 100 mm is not accepted; it must be on the outline of the regions
            /outlet/xMm | 500 | outlet: a line at x = 500 mm from 0 to 100 mm is not accepted; it must be on the outline of the regions
            /outlet/side | "up" | outlet: a line at y = 0 mm from 600 to 700 mm is not accepted; it must be on the outline of the regions
            /outlet/yMm | -1 | outlet: a line at x = 600 mm from -1 to 99 mm is not accepted; it must be on the outline of the regions
            /outlet/widthMm | 1 | outlet.widthMm: this field is not known here
            /frequenciesHz | REMOVE | frequenciesHz: missing; it must be a list of 1 to 10000 frequencies
            /frequenciesHz | [] | frequenciesHz: 0 frequencies is not accepted; it must be a list of 1 to 10000 frequencies
            /frequenciesHz | 125 | frequenciesHz: 125 is not accepted; it must be a list of 1 to 10000 frequencies
            /frequenciesHz/1 | 0 | frequenciesHz[1]: 0 Hz is not accepted; it must be from 1 to 20000 Hz
            /frequenciesHz/1 | 1e5 | frequenciesHz[1]: 100000 Hz is not accepted; it must be from 1 to 20000 Hz
            /frequenciesHz/1 | "125" | frequenciesHz[1]: "125" is not accepted; it must be a number
            /formatVersion | 1 | formatVersion: this field is not known here
            """)
    void everyWrongValueIsNamed(String pointer, String value, String message) {
        assertThat(problem(changed(pointer, value))).startsWith(FILE + ": " + message);
    }

    @Test
    void numbersThatAreNoneAreRefused() {
        assertThat(problem(GOOD.replace("1.2041", "NaN")))
                .isEqualTo(FILE + ": air.density: \"NaN\" is not accepted; it must be a finite number in kg/m³");
        assertThat(problem(GOOD.replace("250.5", "-Infinity")))
                .isEqualTo(FILE + ": frequenciesHz[1]: \"-Infinity\" is not accepted; it must be a finite number");
        assertThat(problem(GOOD.replace("\"heightMm\":100", "\"heightMm\":1e999")))
                .isEqualTo(FILE + ": regions[0].heightMm: 1E+999 is not accepted; it must be a finite number in mm");
    }

    @Test
    void portsMayNotOverlap() {
        String text = GOOD.replace("\"right\",\"xMm\":600,\"yMm\":0", "\"left\",\"xMm\":0,\"yMm\":50");
        assertThat(problem(text))
                .isEqualTo(FILE + ": outlet: a line at x = 0 mm from 50 to 150 mm is not accepted; it must be clear of"
                        + " the inlet, a line at x = 0 mm from 0 to 100 mm");
    }

    @Test
    void severalProblemsAreFoundTogether() {
        String text = GOOD.replace("\"widthMm\":600", "\"widthMm\":-600").replace("[125,", "[-125,");
        UnreadableFile refused = catchThrowableOfType(UnreadableFile.class, () -> SectionJson.parse(FILE, text));
        assertThat(refused.problems()).hasSize(3);
    }

    @Test
    void tooManyRegionsAreRefused() {
        ObjectNode tree = (ObjectNode) JsonText.parse(FILE, GOOD);
        ArrayNode regions = (ArrayNode) tree.get("regions");
        JsonNode one = regions.get(0);
        while (regions.size() <= 1000) {
            regions.add(one);
        }
        assertThat(problem(tree.toString())).contains("regions: 1001 regions is not accepted");
    }

    @Test
    void whatIsNoJsonIsRefused() {
        assertThatThrownBy(() -> SectionJson.parse(FILE, GOOD.substring(0, 90)))
                .isInstanceOf(UnreadableFile.class)
                .hasMessageStartingWith("section.json: the file ends too early");
        assertThatThrownBy(() -> SectionJson.parse(FILE, "[]"))
                .hasMessage(
                        "section.json: [] is not accepted; it must be an object with the fields air, regions, inlet,"
                                + " outlet, frequenciesHz");
    }

    private static String problem(String text) {
        UnreadableFile refused = catchThrowableOfType(UnreadableFile.class, () -> SectionJson.parse(FILE, text));
        assertThat(refused).as("refused: %s", text).isNotNull();
        return refused.problems().get(0).message();
    }

    private static String changed(String pointer, String value) {
        JsonNode tree = JsonText.parse(FILE, GOOD);
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode owner = tree.at(at.head());
        String name = at.last().getMatchingProperty();
        if (owner instanceof ArrayNode list) {
            list.set(at.last().getMatchingIndex(), JsonText.parse("value", value));
        } else if (value.equals("REMOVE")) {
            ((ObjectNode) owner).remove(name);
        } else {
            ((ObjectNode) owner).set(name, JsonText.parse("value", value));
        }
        return tree.toString();
    }
}
