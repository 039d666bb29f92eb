package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.store.Settings;
import hushmaze.work.TaskRunner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property tests of what is remembered from one run to the next. */
class SettingsModelTest {
    @TempDir
    Path folder;

    private Designer designer;

    @BeforeEach
    void nextRun() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
        designer.files().newFrom("lesson-cabin");
    }

    private Settings settings() {
        return designer.settings().settings();
    }

    @Test
    void filesOpenedAndSavedAreRememberedTheNewestFirst() throws IOException {
        Path inside = Files.createDirectory(folder.resolve("inside"));
        Path one = inside.resolve("one.json");
        Path two = folder.resolve("two.json");
        designer.files().saveAs(one);
        designer.files().saveAs(two);
        assertThat(settings().recent()).containsExactly(two, one);
        assertThat(settings().folder()).isEqualTo(folder);

        nextRun();
        assertThat(settings().recent()).containsExactly(two, one);
        designer.files().open(one);
        assertThat(settings().recent()).containsExactly(one, two);
        assertThat(designer.settings().folder()).contains(inside);
        designer.settings().forget(one);
        nextRun();
        assertThat(settings().recent()).containsExactly(two);
    }

    @Test
    void aFileThatCannotBeOpenedIsNotRemembered() throws IOException {
        designer.files().open(Files.writeString(folder.resolve("bad.json"), "{"));
        assertThat(settings().recent()).isEmpty();
    }

    @Test
    void themeTextsAndPlaceAreRemembered() {
        designer.settings().setDark(true);
        designer.settings().resizeText(1);
        designer.settings().resizeText(1);
        Settings.Place place = new Settings.Place(10, 20, 1300, 800, false);
        designer.settings().setPlace(place);
        nextRun();
        assertThat(settings().dark()).isTrue();
        assertThat(settings().textPercent()).isEqualTo(120);
        assertThat(settings().place()).isEqualTo(place);
        designer.settings().resizeText(0);
        assertThat(settings().textPercent()).isEqualTo(100);
    }

    @Test
    void textsGrowAndShrinkWithinTheirLimits() {
        for (int i = 0; i < 20; i++) {
            designer.settings().resizeText(1);
        }
        assertThat(settings().textPercent()).isEqualTo(150);
        for (int i = 0; i < 20; i++) {
            designer.settings().resizeText(-1);
        }
        assertThat(settings().textPercent()).isEqualTo(90);
    }

    @Test
    void anUnreadableFileIsLeftAloneAndToldOnce() throws IOException {
        Path file = Files.writeString(folder.resolve("settings.json"), "{ half");
        nextRun();
        assertThat(settings()).isEqualTo(Settings.FIRST);
        designer.settings().tellProblem();
        assertThat(designer.messageProperty().get().problem()).isTrue();
        assertThat(designer.messageProperty().get().text()).contains("settings.json", "left as it is");
        designer.messageProperty().set(null);
        designer.settings().tellProblem();
        assertThat(designer.messageProperty().get()).isNull();

        designer.settings().resizeText(1);
        designer.files().saveAs(folder.resolve("one.json"));
        designer.settings().keepAtTheEnd();
        assertThat(settings().textPercent()).isEqualTo(110);
        assertThat(settings().recent()).hasSize(1);
        assertThat(file).hasContent("{ half");
    }

    @Test
    void settingsThatCannotBeKeptAreTold() throws IOException {
        Files.createDirectory(folder.resolve("settings.json"));
        designer.settings().resizeText(1);
        assertThat(designer.messageProperty().get().text()).contains("cannot be kept", "settings.json");
    }
}
