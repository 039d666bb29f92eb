package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Question;
import hushmaze.app.model.TestDesigner;
import hushmaze.quantity.UnitSystem;
import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
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

/** Property test of the questions for a first box, answered by a robot with the keyboard alone. */
@ExtendWith(ApplicationExtension.class)
class GuideWindowTest {
    @TempDir
    static Path folder;

    private final BackgroundRunner runner = new BackgroundRunner();
    private Designer designer;

    @Start
    void start(Stage stage) {
        designer = TestWindow.show(stage, TestDesigner.of(runner, folder.resolve("unnamed.json")), folder);
    }

    @AfterEach
    void stop() {
        runner.close();
    }

    @Test
    void questionsAreAnsweredByKeys(FxRobot robot) {
        robot.press(KeyCode.CONTROL).type(KeyCode.G).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#guide").query().isVisible()).isTrue();
        assertThat(looked()).isEqualTo(Question.ROOM_LENGTH);

        type(robot, "4.1 m");
        assertThat(designer.guide().box().number(Question.ROOM_LENGTH)).isEqualTo(4.1);
        robot.type(KeyCode.TAB);
        type(robot, "41 km");
        assertThat(text(robot, ".entry-wrong"))
                .isEqualTo(
                        "Width: \"41 km\" is not accepted; it must be in a known unit, such as \"140 mm\" or \"5 1/2 in\".");
        type(robot, "410 m");
        assertThat(text(robot, ".entry-wrong")).isEqualTo("Width: 410 m is not accepted; it must be from 0.8 to 40 m.");
        assertThat(designer.guide().box().isAnswered(Question.ROOM_WIDTH)).isFalse();
        type(robot, "3 m");
        assertThat(looked()).isEqualTo(Question.ROOM_WIDTH);

        press(robot, KeyCode.N);
        assertThat(text(robot, "#guide-question")).startsWith("Where does fresh air come in");
        press(robot, KeyCode.B);
        assertThat(text(robot, "#guide-question")).startsWith("How large is the room");
        press(robot, KeyCode.DIGIT4);
        assertThat(looked()).isEqualTo(Question.SPACE_WIDTH);
        robot.interact(() ->
                robot.lookup("#guide-units-inch").queryAs(RadioButton.class).fire());
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(designer.guide().box().units()).isEqualTo(UnitSystem.INCH);
        assertThat(robot.lookup("#first-SPACE_WIDTH").queryAs(TextField.class).getText())
                .isEqualTo("36 in");

        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#guide").query().isVisible()).isFalse();
        assertThat(designer.edit().project().name()).isEqualTo("Trio cellar");
    }

    private Question looked() {
        return designer.guide().lookedProperty().get();
    }

    private static void type(FxRobot robot, String text) {
        robot.press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write(text).type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void press(FxRobot robot, KeyCode key) {
        robot.press(KeyCode.ALT).type(key).release(KeyCode.ALT);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static String text(FxRobot robot, String id) {
        return robot.lookup(id).queryAllAs(Label.class).stream()
                .filter(Label::isVisible)
                .map(Label::getText)
                .findFirst()
                .orElse("");
    }
}
