package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.project.Project;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: after writing there is the whole new file; after a failure the whole old one, and nothing else. */
class AtomicFileTest {
    @TempDir
    Path folder;

    @Test
    void failureHalfwayLeavesTheOldFileAndNothingBeside() throws IOException {
        Path file = folder.resolve("project.json");
        Files.writeString(file, "old");
        assertThatThrownBy(() -> AtomicFile.write(file, stream -> {
                    stream.write(new byte[100_000]);
                    throw new IOException("the disk is full");
                }))
                .isInstanceOf(UnwritableFile.class)
                .hasMessage(file + ": the file cannot be written: the disk is full");
        assertThat(file).hasContent("old");
        assertThat(names()).containsExactly("project.json");
    }

    @Test
    void oldFileIsReplacedAndNothingIsLeftBeside() throws IOException {
        Path file = folder.resolve("project.json");
        Files.writeString(file, "a much longer old content");
        AtomicFile.write(file, stream -> stream.write('n'));
        assertThat(file).hasContent("n");
        assertThat(names()).containsExactly("project.json");
    }

    @Test
    void permissionsOfTheOldFileStay() throws IOException {
        Path file = folder.resolve("project.json");
        Files.writeString(file, "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        AtomicFile.write(file, stream -> stream.write('n'));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw----");
    }

    @Test
    void linkStaysALink() throws IOException {
        Path file = Files.writeString(folder.resolve("real.json"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
        AtomicFile.write(link, stream -> stream.write('n'));
        assertThat(link).isSymbolicLink();
        assertThat(file).hasContent("n");
    }

    @Test
    void folderThatIsNotThereIsNamed() {
        Path missing = folder.resolve("none");
        assertThatThrownBy(() -> ProjectFile.write(sample(), missing.resolve("project.json")))
                .isInstanceOf(UnwritableFile.class)
                .hasMessage(missing.resolve("project.json") + ": there is no folder " + missing);
    }

    @Test
    void fileInPlaceOfTheFolderIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        assertThatThrownBy(() -> ProjectFile.write(sample(), file.resolve("project.json")))
                .isInstanceOf(UnwritableFile.class)
                .hasMessageContaining("there is no folder " + file);
    }

    @Test
    void folderWhereNothingCanBeMadeIsReported() {
        // The process file system takes no new files, whoever asks.
        Path file = Path.of("/proc/self/fdinfo/project.json");
        assertThatThrownBy(() -> ProjectFile.write(sample(), file))
                .isInstanceOf(UnwritableFile.class)
                .hasMessageStartingWith(file + ": ");
    }

    @Test
    void folderInPlaceOfTheFileIsRefused() {
        assertThatThrownBy(() -> ProjectFile.write(sample(), folder))
                .isInstanceOf(UnwritableFile.class)
                .hasMessage(folder + ": this is a folder; it must be a file");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).toList();
        }
    }

    private static Project sample() {
        return SampleProjects.read(SampleProjects.DEFAULT);
    }
}
