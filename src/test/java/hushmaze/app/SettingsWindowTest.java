package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.app.model.Designer;
import hushmaze.store.Settings;
import hushmaze.store.SettingsFile;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Property tests of what the window remembers, and of the size of its texts, worked by a robot. */
@ExtendWith(ApplicationExtension.class)
class SettingsWindowTest {
    @TempDir
    Path folder;

    private Designer designer;
    private Stage stage;

    @Start
    void start(Stage first) {
        stage = first;
        SettingsFile.write(
                new Settings(
                        List.of(Path.of("/gone.json")), null, true, 110, new Settings.Place(40, 60, 1300, 810, false)),
                folder.resolve("settings.json"));
        designer = TestWindow.show(first, TaskRunner.ON_THIS_THREAD, folder, "unnamed.json");
    }

    @Test
    void theWindowComesBackAsItWas(FxRobot robot) {
        assertThat(stage.getX()).isEqualTo(40);
        assertThat(stage.getWidth()).isEqualTo(1300);
        assertThat(stage.getHeight()).isEqualTo(810);
        assertThat(textSize(robot)).isEqualTo(15.4, within(0.01));
        CheckMenuItem dark = (CheckMenuItem) menus(robot).getMenus().get(2).getItems().stream()
                .filter(CheckMenuItem.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertThat(dark.isSelected()).isTrue();

        robot.interact(() -> {
            stage.setX(90);
            stage.setWidth(1500);
            stage.close();
        });
        Settings kept = SettingsFile.read(folder.resolve("settings.json"));
        assertThat(kept.place()).isEqualTo(new Settings.Place(90, 60, 1500, 810, false));
    }

    @Test
    void textsFollowTheKeysAndTheMenusKeepTheirs(FxRobot robot) {
        robot.interact(() -> stage.getScene().getRoot().requestFocus());
        robot.press(KeyCode.CONTROL).type(KeyCode.EQUALS).release(KeyCode.CONTROL);
        assertThat(textSize(robot)).isEqualTo(14 * 1.2, within(0.01));
        robot.press(KeyCode.CONTROL).type(KeyCode.ADD).release(KeyCode.CONTROL);
        assertThat(textSize(robot)).isEqualTo(14 * 1.3, within(0.01));
        robot.press(KeyCode.CONTROL).type(KeyCode.MINUS).release(KeyCode.CONTROL);
        assertThat(textSize(robot)).isEqualTo(14 * 1.2, within(0.01));
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT0).release(KeyCode.CONTROL);
        assertThat(textSize(robot)).isEqualTo(14);
        Label sentence = robot.lookup("#verdicts .sentence").queryAs(Label.class);
        assertThat(sentence.getFont().getSize()).isBetween(12.9, 13.1);
        assertThat(SettingsFile.read(folder.resolve("settings.json")).textPercent())
                .isEqualTo(100);
    }

    @Test
    void recentFilesStandInTheMenuAndAMissingOneGoes(FxRobot robot) {
        Menu recent = recent(robot);
        assertThat(recent.getItems()).extracting(MenuItem::getText).containsExactly("_1  /gone.json");
        robot.interact(() -> recent.getItems().get(0).fire());
        assertThat(robot.lookup("#message").queryAs(Label.class).getText())
                .contains("/gone.json", "not there any more");
        assertThat(recent.getItems()).isEmpty();
        assertThat(recent.isDisable()).isTrue();
        robot.interact(() -> designer.files().saveAs(folder.resolve("a_b.json")));
        assertThat(recent.getItems()).hasSize(1);
        assertThat(recent.isDisable()).isFalse();
    }

    private static double textSize(FxRobot robot) {
        WaitForAsyncUtils.waitForFxEvents();
        Label path = robot.lookup(".path-chooser > .label").queryAs(Label.class);
        return path.getFont().getSize();
    }

    private static MenuBar menus(FxRobot robot) {
        return robot.lookup("#menus").queryAs(MenuBar.class);
    }

    private static Menu recent(FxRobot robot) {
        return (Menu) menus(robot).getMenus().get(0).getItems().stream()
                .filter(item -> "menu-recent".equals(item.getId()))
                .findFirst()
                .orElseThrow();
    }
}
