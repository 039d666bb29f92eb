package hushmaze.app;

import static hushmaze.app.EntryRobot.click;
import static hushmaze.app.EntryRobot.text;
import static hushmaze.app.EntryRobot.type;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.SoundFieldModel.State;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.RadioButton;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Property test of the sound in the box in the window, worked by a robot: shown, read, typed, refused, played, still when hidden. */
@ExtendWith(ApplicationExtension.class)
class FieldWindowTest {
    private static final int PATIENCE_S = 60;

    @TempDir
    static Path folder;

    private final BackgroundRunner runner = new BackgroundRunner();
    private Designer designer;

    @Start
    void start(Stage stage) {
        designer = TestWindow.show(stage, runner, folder, "unnamed.json");
    }

    @AfterEach
    void stop() {
        runner.close();
    }

    /** In the smallest window there is still a map to look at. */
    @Test
    void theSmallestWindowShowsTheMap(FxRobot robot) throws Exception {
        Stage stage = (Stage) robot.lookup(".designer").query().getScene().getWindow();
        robot.interact(() -> {
            stage.setWidth(stage.getMinWidth());
            stage.setHeight(stage.getMinHeight());
        });
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT4).release(KeyCode.CONTROL);
        await(500);
        Node map = robot.lookup("#inside-map").query();
        WritableImage there = picture(robot, map);
        long colours = IntStream.range(0, (int) there.getWidth())
                .map(x -> there.getPixelReader().getArgb(x, (int) there.getHeight() / 3))
                .distinct()
                .count();
        assertThat(colours).isGreaterThan(5);
    }

    @Test
    void theMapIsShownReadAndPlayed(FxRobot robot) throws Exception {
        assertThat(designer.soundField().watchedProperty().get()).isFalse();
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT4).release(KeyCode.CONTROL);
        await(500);
        assertThat(text(robot, "#inside-lesson")).startsWith("At 500 Hz the sound falls by ");
        Node map = robot.lookup("#inside-map").query();
        assertThat(map.getAccessibleText()).contains("At 500 Hz the sound falls by ");
        robot.interact(map::requestFocus);
        robot.type(KeyCode.RIGHT).type(KeyCode.UP);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(text(robot, "#inside-reading")).matches("\\d+ mm along, \\d+ mm across.*: .*");

        type(robot, "#inside-frequency", "1.2 kHz");
        await(1200);
        assertThat(text(robot, "#inside-lesson")).startsWith("At 1.2 kHz ");
        assertThat(Math.round(
                        robot.lookup("#inside-bands").queryAs(Slider.class).getValue()))
                .isEqualTo(14);
        type(robot, "#inside-frequency", "12 kHz");
        assertThat(text(robot, "#inside-wrong"))
                .startsWith("Frequency: 12000 Hz is not accepted")
                .contains("20 to 5000");
        assertThat(designer.soundField().frequencyProperty().get()).isEqualTo(1200);
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#inside-frequency").queryAs(TextField.class).getText())
                .isEqualTo("1.2 kHz");
        assertThat(robot.lookup("#inside-wrong").query().isVisible()).isFalse();
        robot.interact(() -> robot.lookup("#inside-bands").queryAs(Slider.class).setValue(3));
        await(100);
        assertThat(text(robot, "#inside-lesson")).startsWith("At 100 Hz ");

        Button play = robot.lookup("#inside-play").queryAs(Button.class);
        assertThat(play.isDisabled()).isTrue();
        robot.interact(() ->
                robot.lookup("#inside-show-pressure").queryAs(RadioButton.class).setSelected(true));
        assertThat(play.getText()).isEqualTo("_Pause");
        WritableImage early = picture(robot, map);
        WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, () -> differ(early, picture(robot, map)));
        click(robot, "#inside-play");
        assertThat(play.getText()).isEqualTo("_Play");
        WritableImage still = picture(robot, map);
        WaitForAsyncUtils.sleep(300, TimeUnit.MILLISECONDS);
        assertThat(differ(still, picture(robot, map))).isFalse();
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT1).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(designer.soundField().watchedProperty().get()).isFalse();
    }

    private void await(double frequency) throws Exception {
        WaitForAsyncUtils.waitFor(
                PATIENCE_S,
                TimeUnit.SECONDS,
                () -> designer.soundField().stateProperty().get() == State.CURRENT
                        && designer.soundField().fieldProperty().get().frequency() == frequency);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static WritableImage picture(FxRobot robot, Node map) {
        WritableImage[] image = new WritableImage[1];
        robot.interact(() -> image[0] = map.snapshot(null, null));
        return image[0];
    }

    private static boolean differ(WritableImage a, WritableImage b) {
        for (int y = 0; y < a.getHeight(); y += 3) {
            for (int x = 0; x < a.getWidth(); x += 3) {
                if (a.getPixelReader().getArgb(x, y) != b.getPixelReader().getArgb(x, y)) {
                    return true;
                }
            }
        }
        return false;
    }
}
