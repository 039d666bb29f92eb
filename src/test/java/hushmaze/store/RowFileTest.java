package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: wherever the writing stopped, going on gives the same bytes; nothing that is not ours is touched. */
class RowFileTest {
    private static final String ABOUT = "field: a\nfrom: 1\n";
    private static final String HEAD = "step,a,note\n";
    private static final List<String> ROWS = List.of("0,1.0,\"é, yes\"\n", "1,1.5,\n", "2,2.0,no\n");
    private static final List<String> STARTS = List.of("0,1.0,", "1,1.5,", "2,2.0,");

    @TempDir
    private Path folder;

    private RowFile open(Path file, boolean overwrite) {
        return RowFile.open(file, ABOUT, HEAD, STARTS, overwrite);
    }

    private void goOn(Path file, boolean overwrite) {
        try (RowFile rows = open(file, overwrite)) {
            ROWS.subList(rows.kept(), ROWS.size()).forEach(rows::append);
        }
    }

    private Path whole() {
        Path file = folder.resolve("whole.csv");
        goOn(file, true);
        return file;
    }

    @Test
    void aStopAtAnyByteIsGoneOnFrom() throws IOException {
        byte[] whole = Files.readAllBytes(whole());
        assertThat(new String(whole, java.nio.charset.StandardCharsets.UTF_8)).isEqualTo(HEAD + String.join("", ROWS));
        Path file = folder.resolve("cut.csv");
        goOn(file, false);
        for (int length = 0; length <= whole.length; length++) {
            Files.write(file, Arrays.copyOf(whole, length));
            goOn(file, false);
            assertThat(Files.readAllBytes(file)).as("cut at %d", length).isEqualTo(whole);
        }
    }

    @Test
    void aFinishedFileIsLeftAlone() {
        Path file = whole();
        try (RowFile rows = open(file, false)) {
            assertThat(rows.kept()).isEqualTo(3);
        }
    }

    @Test
    void rowsOfSomethingElseAreRefused() throws IOException {
        Path file = whole();
        Files.writeString(file, "3,", java.nio.file.StandardOpenOption.APPEND);
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> RowFile.open(file, "field: a\nfrom: 2\n", HEAD, STARTS, false))
                .isInstanceOf(UnwritableFile.class)
                .hasMessageContaining("whole.csv")
                .hasMessageContaining("from: 1; now from: 2");
        assertThatThrownBy(() -> RowFile.open(file, ABOUT, "step,b\n", STARTS, false))
                .hasMessageContaining("columns");
        assertThatThrownBy(() -> RowFile.open(file, ABOUT, HEAD, List.of("0,1.0,", "7,1.5,", "2,2.0,"), false))
                .hasMessageContaining("line 3");
        assertThatThrownBy(() -> RowFile.open(file, ABOUT, HEAD, STARTS.subList(0, 2), false))
                .hasMessageContaining("line 4");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        goOn(file, true);
        assertThat(file).hasContent(HEAD + String.join("", ROWS));
    }

    @Test
    void aFileOfThePersonIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.csv"), "mine");
        assertThatThrownBy(() -> open(file, false)).hasMessageContaining("mine.csv.sweep");
        assertThat(Files.readString(file)).isEqualTo("mine");
        assertThatThrownBy(() -> open(folder, false)).hasMessageContaining("folder");
        assertThatThrownBy(() -> open(folder.resolve("none/a.csv"), false)).hasMessageContaining("no folder");
    }

    @Test
    void twoRunsDoNotWriteTheSameFile() {
        Path file = folder.resolve("both.csv");
        try (RowFile first = open(file, false)) {
            first.append(ROWS.get(0));
            assertThatThrownBy(() -> open(file, false)).hasMessageContaining("another run");
            assertThatThrownBy(() -> open(file, true)).hasMessageContaining("another run");
        }
        goOn(file, false);
        assertThat(file).hasContent(HEAD + String.join("", ROWS));
    }

    @Test
    void onlyWholeLinesAreAdded() {
        try (RowFile rows = open(folder.resolve("lines.csv"), false)) {
            assertThatThrownBy(() -> rows.append("0,1.0,")).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> rows.append("0,1.0,\n\n")).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
