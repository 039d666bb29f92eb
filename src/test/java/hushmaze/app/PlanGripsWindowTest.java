package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.app.model.Designer;
import hushmaze.app.model.TestDesigner;
import hushmaze.project.Box;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Property test of sizes changed on the plan by a robot: dragged, by the arrow keys, typed; each is one step to undo. */
@ExtendWith(ApplicationExtension.class)
class PlanGripsWindowTest {
    private static final int PATIENCE_S = 120;

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
    void wallsAndBafflesAreMoved(FxRobot robot) throws Exception {
        await(() -> isShown(robot, "#grip-end") && isShown(robot, "#grip-tip"));
        Box first = box();

        // dragged to the right the box gets longer, on the builder's steps; what it will be is said on the way
        robot.drag("#grip-end", MouseButton.PRIMARY).moveBy(30, 0);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(box()).isEqualTo(first);
        String said = robot.lookup(".plan-word").queryAs(Label.class).getText();
        robot.drop();
        WaitForAsyncUtils.waitForFxEvents();
        double length = box().clearLength();
        assertThat(length).isGreaterThan(first.clearLength() + 0.02);
        assertThat(length / 0.005).isCloseTo(Math.rint(length / 0.005), within(1e-9));
        assertThat(said).isEqualTo("Clear length of a pass " + Math.round(1000 * length) + " mm");
        robot.interact(designer.edit()::undo);
        assertThat(box()).isEqualTo(first);

        // dragged upwards the passes get wider; a hole that filled its pass goes on filling it
        await(() -> isShown(robot, "#grip-side"));
        robot.drag("#grip-side", MouseButton.PRIMARY).moveBy(0, -20).drop();
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(box().clearWidth()).isGreaterThan(first.clearWidth());
        robot.interact(designer.edit()::undo);

        // a tip moved to the right makes its gap smaller
        robot.interact(() -> robot.lookup("#grip-tip").query().requestFocus());
        robot.type(KeyCode.RIGHT);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(box().turnGap()).isCloseTo(first.turnGap() - 0.005, within(1e-9));
        robot.type(KeyCode.LEFT);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(box().turnGap()).isCloseTo(first.turnGap(), within(1e-9));

        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        robot.press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write("5 in").type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(box().turnGap()).isCloseTo(0.127, within(1e-9));

        robot.type(KeyCode.ENTER).press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write("4 m").type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(box().turnGap()).isCloseTo(0.127, within(1e-9));
        assertThat(EntryRobot.text(robot, "#message")).startsWith("Gap at every turn: 4000 mm is not accepted");

        robot.clickOn("#cut-section");
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isShown(robot, "#grip-end")).isFalse();
    }

    private Box box() {
        return designer.edit().project().paths().get(0).box();
    }

    private static boolean isShown(FxRobot robot, String id) {
        return robot.lookup(id).tryQuery().filter(n -> n.isVisible()).isPresent();
    }

    private static void await(Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }
}
