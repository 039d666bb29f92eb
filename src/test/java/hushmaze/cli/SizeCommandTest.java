package hushmaze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hushmaze.assess.TestRooms;
import hushmaze.project.Choices;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.store.ProjectFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: what the command prints is what it saves; names, streams, exit codes; nothing is overwritten. */
class SizeCommandTest {
    @TempDir
    private Path folder;

    /** Straight boxes only, which the flat section shows: the wave solution takes a second. */
    private Path project(double level, Space space) {
        Choices straight = new Choices(null, null, 1, null, List.of(PortFace.END), List.of(PortFace.END));
        VentPath path = new VentPath(
                "in",
                Purpose.SUPPLY,
                TestRooms.brief(level, null, space, Opening.Beyond.INDOORS).choosing(straight),
                null);
        Path file = folder.resolve("small.json");
        ProjectFile.write(TestRooms.project(TestRooms.nc(20), null, path), file);
        return file;
    }

    @Test
    void whatIsPrintedIsWhatIsSaved() throws IOException {
        Path file = project(26, new Space(0.4, 0.3, 0.6));
        Path saved = folder.resolve("sized.json");
        Outcome outcome = Outcome.run("size", file.toString(), "--json", "--keep", "1", "--save", saved.toString());
        assertThat(outcome.code()).isZero();
        assertThat(outcome.err()).contains("%", "wrote " + saved);
        JsonNode json = new ObjectMapper().readTree(outcome.out());
        JsonNode path = json.path("paths").path(0);
        assertThat(path.path("name").asText()).isEqualTo("in");
        assertThat(path.path("quiet").asBoolean()).isTrue();
        assertThat(path.path("costUnit").asText()).isEqualTo("m2");
        assertThat(path.path("boxes").path("all").asInt()).isGreaterThan(100);
        assertThat(path.path("designs")).hasSize(1);
        JsonNode design = path.path("designs").path(0);
        assertThat(design.path("kinds").path(0).asText()).isEqualTo("RECOMMENDED");
        assertThat(design.path("good").asBoolean()).isTrue();
        Project project = ProjectFile.read(saved);
        JsonNode box = new ObjectMapper()
                .readTree(Files.readString(saved))
                .path("paths")
                .path(0)
                .path("box");
        assertThat(design.path("box")).isEqualTo(box);
        assertThat(project.withPaths(List.of(project.paths().get(0).withBox(null))))
                .isEqualTo(ProjectFile.read(file));
        Outcome judged = Outcome.run("assess", saved.toString(), "--json");
        JsonNode quiet =
                new ObjectMapper().readTree(judged.out()).path("paths").path(0).path("quiet");
        assertThat(quiet.path("marginDb").asDouble())
                .isEqualTo(design.path("marginDb").asDouble());
        assertThat(Outcome.run("size", file.toString(), "--save", saved.toString()))
                .matches(o -> o.code() == ExitCode.BAD_INPUT)
                .matches(o -> o.err().contains("--save: " + saved + " is there already"));
    }

    @Test
    void whatWouldHelpIsSaidWhereNothingFits() {
        Path file = project(26, new Space(0.4, 0.3, 0.1));
        Outcome outcome = Outcome.run("size", file.toString());
        assertThat(outcome.code()).isEqualTo(ExitCode.DESIGN_FAILS);
        assertThat(outcome.out()).contains("no box keeps every limit", "What would help", "A space");
    }

    @Test
    void badArgumentsAreRefusedWithTheirLimit() {
        Path file = project(26, new Space(0.4, 0.3, 0.6));
        assertThat(Outcome.run("size", file.toString(), "--keep", "0"))
                .matches(o -> o.code() == ExitCode.BAD_INPUT)
                .matches(o -> o.err().contains("--keep: 0 is not accepted; it must be 1 to 6"));
        assertThat(Outcome.run("size", folder.resolve("none.json").toString()).code())
                .isEqualTo(ExitCode.BAD_INPUT);
    }
}
