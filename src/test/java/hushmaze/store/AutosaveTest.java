package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.project.Project;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: autosave never touches the user's file, and gives back what was kept until it is discarded. */
class AutosaveTest {
    @TempDir
    Path folder;

    @Test
    void workIsKeptBesideTheUsersFileFoundRestoredAndDiscarded() throws IOException {
        Path file = Files.writeString(folder.resolve("cellar.json"), "the user's own");
        Project work = SampleProjects.read(SampleProjects.DEFAULT);
        assertThat(Autosave.find(file)).isEmpty();

        Autosave.save(work, file);
        assertThat(file).hasContent("the user's own");
        assertThat(Autosave.find(file)).contains(folder.resolve("cellar.json.autosave"));
        assertThat(Autosave.restore(file)).isEqualTo(work);
        assertThat(Autosave.find(file)).isPresent();

        Autosave.discard(file);
        Autosave.discard(file);
        assertThat(Autosave.find(file)).isEmpty();
        assertThat(file).hasContent("the user's own");
    }

    @Test
    void damagedSideFileIsNamed() throws IOException {
        Path file = folder.resolve("cellar.json");
        Files.writeString(Autosave.sideFile(file), "{\"formatVersion\": 1,");
        assertThatThrownBy(() -> Autosave.restore(file))
                .isInstanceOf(UnreadableFile.class)
                .hasMessageStartingWith(file + ".autosave: the file ends too early");
    }

    @Test
    void sideFileThatIsNotThereIsNamed() {
        Path file = folder.resolve("cellar.json");
        assertThatThrownBy(() -> Autosave.restore(file))
                .isInstanceOf(UnreadableFile.class)
                .hasMessage(file + ".autosave: there is no such file");
    }
}
