package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hushmaze.assess.Assessor;
import hushmaze.assess.FixedBoxes;
import hushmaze.assess.Methods;
import hushmaze.project.Mounting;
import hushmaze.project.Mounting.Into;
import hushmaze.project.Opening.Surface;
import hushmaze.project.Project;
import hushmaze.quantity.UnitSystem;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: fixing comes out in the JSON of an assessment, and files from before its newer fields are read. */
class FixingJsonTest {
    @TempDir
    Path folder;

    private static JsonNode buildable(Surface surface, Mounting mounting) throws IOException {
        Project project = FixedBoxes.project(surface, mounting);
        String json = AssessmentJson.of(
                Assessor.assess(project, Methods.ESTIMATE, Progress.NONE), new Wording(UnitSystem.METRIC));
        return new ObjectMapper().readTree(json).at("/paths/1/buildable");
    }

    @Test
    void hangingStudsAndLifting() throws IOException {
        JsonNode node = buildable(Surface.WALL, FixedBoxes.mounting(null, 0.04, 4, 0.3, 0.4064, 0.9, null));
        assertThat(node.at("/hanging/furtherFactor").asDouble()).isEqualTo(1);
        assertThat(node.at("/hanging/screwsPerRowNeeded").asInt()).isBetween(1, 12);
        assertThat(node.at("/hanging/studs/spacingMm").asDouble()).isEqualTo(406.4);
        // By hand: 900 mm less 8 · 4.826 mm crosses two studs for certain.
        assertThat(node.at("/hanging/studs/crossedForCertain").asInt()).isEqualTo(2);
        assertThat(node.at("/hanging/studs/screwsForCertain").asInt()).isEqualTo(4);
        assertThat(node.at("/lifting/whole").asText()).isEqualTo("AID");
        assertThat(node.at("/lifting/heaviestPieceKg").asDouble())
                .isEqualTo(node.at("/lifting/carcassKg").asDouble());
        assertThat(node.at("/lifting/carcassKg").asDouble()
                        + node.at("/lifting/coverKg").asDouble())
                .isCloseTo(node.at("/massKg").asDouble(), within(1e-6));
    }

    @Test
    void refusalAndStanding() throws IOException {
        JsonNode masonry = buildable(Surface.WALL, FixedBoxes.mounting(Into.MASONRY, 0.04, 4, 0.3, null, null, null));
        assertThat(masonry.at("/fixingNotComputed").asText()).isEqualTo("MASONRY");
        assertThat(masonry.has("hanging")).isFalse();
        JsonNode floor = buildable(Surface.FLOOR, null);
        assertThat(floor.at("/standing/holds").asBoolean()).isTrue();
        assertThat(floor.at("/standing/tippingPushN").asDouble()).isPositive();
        assertThat(floor.has("fixingNotComputed")).isFalse();
    }

    @Test
    void filesFromBeforeAreRead() throws IOException {
        Path file = folder.resolve("old.json");
        Mounting said = FixedBoxes.mounting(Into.STUDS, 0.04, 4, 0.3, 0.4, 0.9, true);
        ProjectFile.write(FixedBoxes.project(Surface.WALL, said), file);
        String text = Files.readString(file);
        String old = text.replaceAll("\\s*\"(into|studSpacingMm|cleatLengthMm|abovePeople)\": [^,]*,", "");
        assertThat(old).hasSizeLessThan(text.length()).doesNotContain("studSpacing");
        Files.writeString(file, old);
        Project read = ProjectFile.read(file);
        Mounting mounting = read.paths().get(1).brief().construction().mounting();
        assertThat(mounting).isEqualTo(FixedBoxes.mounting(null, 0.04, 4, 0.3, null, null, null));
        assertThat(mounting.intoOrStuds()).isEqualTo(Into.STUDS);
        assertThat(mounting.isAbovePeople()).isFalse();
        Files.write(
                file,
                text.replace("\"abovePeople\": true", "\"abovePeople\": 1").getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> ProjectFile.read(file)).hasMessageContaining("abovePeople: 1 is not accepted");
    }
}
