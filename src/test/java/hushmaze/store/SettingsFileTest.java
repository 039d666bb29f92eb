package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Property: settings come back as they were written, and a file that is of no use is refused with the reason. */
class SettingsFileTest {
    @TempDir
    Path folder;

    @Test
    void whatIsWrittenIsReadAgain() {
        Path file = folder.resolve("new").resolve("settings.json");
        Settings settings = new Settings(
                List.of(folder.resolve("a b.json"), folder.resolve("Größe \"2\".json")),
                folder,
                true,
                130,
                new Settings.Place(-12.5, 30, 1400, 900.25, true));
        SettingsFile.write(settings, file);
        assertThat(SettingsFile.read(file)).isEqualTo(settings);
        SettingsFile.write(Settings.FIRST, file);
        assertThat(SettingsFile.read(file)).isEqualTo(Settings.FIRST);
    }

    @Test
    void withoutAFileThereAreThoseOfTheFirstRun() {
        assertThat(SettingsFile.read(folder.resolve("none.json"))).isEqualTo(Settings.FIRST);
    }

    @Test
    void eightFilesAreKeptEachOnceAndTextsStayWithinTheirLimits() {
        List<Path> many =
                IntStream.range(0, 20).mapToObj(i -> Path.of("file" + i / 2)).toList();
        Settings settings = new Settings(many, null, false, 1000, null);
        assertThat(settings.recent())
                .isEqualTo(
                        IntStream.range(0, 8).mapToObj(i -> Path.of("file" + i)).toList());
        assertThat(settings.textPercent()).isEqualTo(150);
        assertThat(new Settings(many, null, false, 1, null).textPercent()).isEqualTo(90);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[] | no settings file",
                "{\"recent\": [ | too early",
                "{\"recent\": [7]} | recent: 7 is not accepted; it must be the name of a file",
                "{\"textPercent\": \"big\"} | textPercent",
                "{\"window\": {\"xPx\": 1, \"yPx\": 2, \"widthPx\": 3}} | window.heightPx",
            })
    void aFileOfNoUseIsRefusedAndLeftAsItIs(String content, String says) throws IOException {
        Path file = Files.writeString(folder.resolve("settings.json"), content);
        assertThatThrownBy(() -> SettingsFile.read(file))
                .isInstanceOf(UnreadableFile.class)
                .hasMessageContaining("settings.json")
                .hasMessageContaining(says);
        assertThat(file).hasContent(content);
    }
}
