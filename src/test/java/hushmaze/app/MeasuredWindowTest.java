package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.measure.WavBytes;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading;
import hushmaze.quantity.BandSet;
import hushmaze.wording.Unbroken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Property test of readings taken from files, a recording's part chosen and air typed, by a robot. */
@ExtendWith(ApplicationExtension.class)
class MeasuredWindowTest {
    private static final int PATIENCE_S = 120;
    private static final int RATE = 8000;

    @TempDir
    static Path folder;

    /** Each begins without what another left unsaved. */
    private static int shown;

    private final BackgroundRunner runner = new BackgroundRunner();
    private Designer designer;

    @Start
    void start(Stage stage) {
        designer = TestWindow.show(stage, runner, folder, "unnamed-" + ++shown + ".json");
    }

    @AfterEach
    void stop() {
        runner.close();
    }

    @Test
    void readingsComeFromFilesAndAreHeldAgainstThePrediction(FxRobot robot) throws Exception {
        await(() -> designer.results().pathResult().isPresent());
        robot.interact(
                () -> robot.lookup("#view-measured").queryAs(ToggleButton.class).fire());
        Label missing = robot.lookup("#measured-missing").queryAs(Label.class);
        assertThat(missing.getText()).startsWith("Nothing to compare yet");
        levels(80);
        fire(robot, "#measured-add-WITHOUT_BOX");
        await(() -> readings().has(Reading.Round.WITHOUT_BOX));
        assertThat(robot.lookup("#measured-reading-0").queryAs(Label.class).getText())
                .isEqualTo("reading.txt");
        assertThat(missing.getText()).startsWith("There are readings without the box");
        assertThat(button(robot, "#measured-useNoise").isDisabled()).isFalse();
        assertThat(button(robot, "#measured-useOwn").isDisabled()).isTrue();
        levels(60);
        fire(robot, "#measured-add-WITH_BOX");
        await(() -> designer.compared().fittingProperty().get() != null);
        assertThat(missing.isVisible()).isFalse();
        assertThat(words(robot, "#measured-words")).contains("Only differences are claimed");
        fire(robot, "#measured-remove-1");
        await(() -> missing.isVisible());

        // air
        TextField flow = robot.lookup("#measured-flow").queryAs(TextField.class);
        robot.interact(() -> {
            flow.requestFocus();
            flow.setText("20");
        });
        robot.press(KeyCode.ENTER).release(KeyCode.ENTER);
        await(() -> readings().flow() != null);
        assertThat(words(robot, "#measured-air-words")).contains("Air through the path: 20 L/s", "less than predicted");
        assertThat(robot.lookup("#measured-minutes").queryAs(TextField.class).isDisabled())
                .isTrue();
    }

    @Test
    void aRecordingTakesTheRoomUntilItsPartIsChosen(FxRobot robot) throws Exception {
        await(() -> designer.results().pathResult().isPresent());
        robot.interact(
                () -> robot.lookup("#view-measured").queryAs(ToggleButton.class).fire());
        Files.write(
                folder.resolve("reading.txt"),
                WavBytes.of(WavBytes.Kind.PCM16, RATE, 1, 3 * RATE, i -> 0.3 * Math.sin(2 * Math.PI * 500 * i / RATE)));
        fire(robot, "#measured-add-SOURCE_OFF");
        await(() -> robot.lookup("#measured-take").tryQuery().isPresent()
                && !button(robot, "#measured-take").isDisabled());
        Node round = robot.lookup("#measured-add-SOURCE_OFF").query();
        assertThat(isSeen(round)).isFalse();
        fire(robot, "#measured-take");
        await(() -> readings().has(Reading.Round.SOURCE_OFF));
        assertThat(isSeen(round)).isTrue();
        assertThat(isSeen(button(robot, "#measured-take"))).isFalse();
        assertThat(button(robot, "#measured-useOwn").isDisabled()).isTrue();
        assertThat(readings().scale()).isEqualTo(Reading.Scale.FULL_SCALE);
    }

    private static boolean isSeen(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private void levels(double level) throws IOException {
        String text = BandSet.THIRD_OCTAVE.bands().stream()
                .map(b -> b.label() + ";" + level)
                .collect(Collectors.joining("\n"));
        Files.writeString(folder.resolve("reading.txt"), text);
    }

    private PathReadings readings() {
        return designer.edit().project().paths().get(0).readingsOrNone();
    }

    private static Button button(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(Button.class);
    }

    private static void fire(FxRobot robot, String id) {
        robot.interact(() -> button(robot, id).fire());
    }

    private static String words(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(VBox.class).getChildren().stream()
                .filter(Label.class::isInstance)
                .map(node -> Unbroken.plain(((Label) node).getText()))
                .collect(Collectors.joining("\n"));
    }

    private static void await(Callable<Boolean> reached) throws Exception {
        WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, reached);
        WaitForAsyncUtils.waitForFxEvents();
    }
}
