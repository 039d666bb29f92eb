package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Property: a number set by its name is the number a person would change in the file, whichever it is; what the file's reader
 * refuses is refused here with the same words.
 */
class NumberFieldTest {
    private static final Project CELLAR = TestProjects.read("trio-cellar");
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void everyNumberOfASampleIsTheOneInItsFile() throws Exception {
        for (String sample : SampleProjects.names()) {
            Project project = SampleProjects.read(sample);
            Random random = new Random(5);
            int numbers = 0;
            NumberNames names = new NumberNames(project);
            JsonNode whole = JSON.readTree(ProjectFile.text(project));
            for (NumberField field : names.all()) {
                if (!field.present()) {
                    continue;
                }
                numbers++;
                assertThat(names.find("f", field.name()).name()).isEqualTo(field.name());
                JsonNode tree = whole.deepCopy();
                double old = at(tree, field.name()).doubleValue();
                double value = field.whole() ? old + 1 : old * (1 + 0.02 * random.nextDouble());
                edit(tree, field.name(), value, field.whole());
                sameAsEdited(project, field, value, tree.toString());
            }
            assertThat(numbers).isEqualTo(count(whole) - 1);
        }
    }

    private static void sameAsEdited(Project project, NumberField field, double value, String edited) {
        Project read;
        try {
            read = ProjectFile.parse("p", edited);
        } catch (UnreadableFile refused) {
            assertThatThrownBy(() -> field.in(project, value))
                    .isInstanceOf(InvalidValue.class)
                    .hasMessage(refused.problems().get(0).message().substring("p: ".length()));
            return;
        }
        assertThat(field.in(project, value)).as(field.name()).isEqualTo(read);
    }

    /** Numbers anywhere in a tree. */
    private static int count(JsonNode node) {
        int count = node.isNumber() ? 1 : 0;
        for (JsonNode child : node) {
            count += count(child);
        }
        return count;
    }

    private static JsonNode at(JsonNode tree, String name) {
        return tree.at("/" + name.replace("[", "/").replace("]", "").replace(".", "/"));
    }

    private static void edit(JsonNode tree, String name, double value, boolean whole) {
        String pointer = "/" + name.replace("[", "/").replace("]", "").replace(".", "/");
        int cut = pointer.lastIndexOf('/');
        JsonNode owner = tree.at(pointer.substring(0, cut));
        String last = pointer.substring(cut + 1);
        JsonNode number = whole
                ? JSON.getNodeFactory().numberNode((int) value)
                : JSON.getNodeFactory().numberNode(value);
        if (owner instanceof ArrayNode list) {
            list.set(Integer.parseInt(last), number);
        } else {
            ((ObjectNode) owner).set(last, number);
        }
    }

    @Test
    void pathsGoByNumberOrByName() {
        assertThat(find("paths[Way out to the hall].brief.flowLps")).isEqualTo("paths[1].brief.flowLps");
        assertThat(find("paths[0].brief.flowLps")).isEqualTo("paths[0].brief.flowLps");
        assertThat(find("stock.boardSheets[1220 x 1220 mm, half sheet].price")).isEqualTo("stock.boardSheets[1].price");
    }

    @Test
    void anEndThatOnlyOneNumberHasIsEnough() {
        assertThat(find("volumeM3")).isEqualTo("room.volumeM3");
        assertThat(find("passes")).isEqualTo("paths[1].box.passes");
        assertThat(find("openingPort.heightMm")).isEqualTo("paths[1].box.openingPort.heightMm");
        assertThat(find("room.ownNoise.valuesDb[2]")).isEqualTo("room.ownNoise.valuesDb[2]");
    }

    @Test
    void whatCouldBeSeveralIsRefusedWithTheirNames() {
        assertThatThrownBy(() -> find("flowLps"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("--field")
                .hasMessageContaining("paths[0].brief.flowLps, paths[1].brief.flowLps");
    }

    @Test
    void anUnknownNameIsRefusedWithTheNearest() {
        assertThatThrownBy(() -> find("room.volume")).hasMessageContaining("room.volumeM3");
        assertThatThrownBy(() -> find("formatVersion")).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> find("")).isInstanceOf(InvalidValue.class);
    }

    @Test
    void aNumberThatIsLeftOutCanBeGiven() {
        NumberField heat = NumberField.find(CELLAR, "--field", "room.heatGainW");
        assertThat(CELLAR.room().heatGain()).isNull();
        assertThat(heat.in(CELLAR, 250).room().heatGain()).isEqualTo(250);
    }

    @Test
    void aPathNamedLikeANumberIsFoundByItsNumber() {
        List<VentPath> paths = CELLAR.paths();
        VentPath odd = new VentPath(
                "0", paths.get(1).purpose(), paths.get(1).brief(), paths.get(1).box());
        Project project = CELLAR.withPaths(List.of(paths.get(0), odd));
        assertThat(NumberField.find(project, "f", "paths[0].brief.flowLps").name())
                .isEqualTo("paths[0].brief.flowLps");
    }

    @Test
    void valuesMayCarryAUnit() {
        NumberField width = NumberField.find(CELLAR, "--field", "paths[1].box.clearWidthMm");
        assertThat(width.parse("--from", "140")).isEqualTo(140);
        // By hand: 5.5 · 25.4.
        assertThat(width.parse("--from", "5 1/2 in")).isEqualTo(139.7);
        assertThatThrownBy(() -> width.parse("--from", "3 kg")).hasMessageContaining("--from");
        NumberField passes = NumberField.find(CELLAR, "--field", "passes");
        assertThat(passes.parse("--to", "4")).isEqualTo(4);
        assertThatThrownBy(() -> passes.parse("--to", "4.5")).hasMessageContaining("whole");
    }

    private static String find(String typed) {
        return NumberField.find(CELLAR, "--field", typed).name();
    }
}
