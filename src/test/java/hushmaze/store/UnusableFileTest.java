package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.project.Project;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Property: a file that is no project gives a message that names it, and stays as it is. */
class UnusableFileTest {
    @TempDir
    Path folder;

    private Path file;
    private String good;

    @BeforeEach
    void makeFile() {
        file = folder.resolve("project.json");
        good = ProjectFile.text(SampleProjects.read(SampleProjects.DEFAULT));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ``                    | the file is empty
            `  `                  | the file is empty
            {"formatVersion": 1,  | the file ends too early, line 1
            {"name": "x           | the file ends too early, line 1
            hello                 | not valid JSON, line 1, column
            {"a": 1} {"b": 2}     | not valid JSON, line 1, column
            {"a": 1, "a": 2}      | Duplicate field 'a'
            {"a": 1,}             | not valid JSON, line 1, column
            {"a": 1e2147483649}   | a number has too large an exponent
            {"a": "}              | the file ends too early, line 1
            []                    | [] is not accepted; it must be an object with the fields formatVersion, name,
            3                     | 3 is not accepted; it must be an object with the fields formatVersion, name,
            """)
    void textThatIsNoProject(String text, String message) throws IOException {
        refusedAndUntouched(text.getBytes(StandardCharsets.UTF_8), message);
    }

    @Test
    void deeplyNestedTextIsRefused() throws IOException {
        refusedAndUntouched("[".repeat(10_000).getBytes(StandardCharsets.UTF_8), "more than 40 deep");
    }

    @Test
    void everyTruncationOfAProjectIsRefusedWithAMessage() {
        for (int end = 0; end < good.length() - 2; end += 37) {
            String part = good.substring(0, end);
            assertThatThrownBy(() -> ProjectFile.parse("part.json", part))
                    .isInstanceOf(UnreadableFile.class)
                    .hasMessageStartingWith("part.json: ");
        }
    }

    @Test
    void sixteenBitTextIsRefused() throws IOException {
        refusedAndUntouched(good.getBytes(StandardCharsets.UTF_16), "not a text in UTF-8");
        refusedAndUntouched(good.getBytes(StandardCharsets.UTF_16LE), "not a text in UTF-8");
    }

    @Test
    void binaryContentIsRefused() throws IOException {
        refusedAndUntouched(new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, (byte) 0xff}, "not a text in UTF-8");
    }

    @Test
    void tooLargeAFileIsRefusedWithTheLimit() throws IOException {
        byte[] large = new byte[FileBytes.MAX_BYTES + 1];
        Arrays.fill(large, (byte) ' ');
        refusedAndUntouched(large, "at most 4000000 bytes");
    }

    @Test
    void folderIsRefused() {
        assertThatThrownBy(() -> ProjectFile.read(folder))
                .isInstanceOf(UnreadableFile.class)
                .hasMessage(folder + ": this is a folder; it must be a file");
    }

    @Test
    void absentFileIsRefused() {
        assertThatThrownBy(() -> ProjectFile.read(file))
                .isInstanceOf(UnreadableFile.class)
                .hasMessage(file + ": there is no such file");
    }

    @Test
    void byteOrderMarkAtTheStartIsNoHarm() throws IOException {
        Files.writeString(file, "\ufeff" + good);
        Project project = ProjectFile.read(file);
        assertThat(ProjectFile.text(project)).isEqualTo(good);
    }

    private void refusedAndUntouched(byte[] content, String message) throws IOException {
        Files.write(file, content);
        assertThatThrownBy(() -> ProjectFile.read(file))
                .isInstanceOf(UnreadableFile.class)
                .hasMessageStartingWith(file + ": ")
                .hasMessageContaining(message)
                .message()
                .doesNotContain("\n");
        assertThat(Files.readAllBytes(file)).isEqualTo(content);
    }
}
