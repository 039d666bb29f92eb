package hushmaze.app;

import static hushmaze.app.EntryRobot.click;
import static hushmaze.app.EntryRobot.text;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.PreparedFinds;
import hushmaze.app.model.SizingModel.State;
import hushmaze.app.model.TestDesigner;
import hushmaze.wording.Unbroken;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
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

/** Property test of the view of the best boxes, worked by a robot: the keys begin a search, its box is taken, undo gives the old one back. */
@ExtendWith(ApplicationExtension.class)
class FoundWindowTest {
    private static final int PATIENCE_S = 120;

    @TempDir
    static Path folder;

    private final BackgroundRunner runner = new BackgroundRunner();
    /** Laid out before the window opens: it takes a while. */
    private final PreparedFinds finds = new PreparedFinds(20);

    private Designer designer;

    @Start
    void start(Stage stage) {
        designer =
                TestWindow.show(stage, TestDesigner.of(runner, runner, finds, folder.resolve("unnamed.json")), folder);
        designer.edit().edit("small", p -> PreparedFinds.project(20, 0.6));
    }

    @AfterEach
    void stop() {
        runner.close();
    }

    @Test
    void aBoxIsFoundTakenAndGivenBack(FxRobot robot) throws Exception {
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT7).release(KeyCode.CONTROL);
        assertThat(robot.lookup(".found-empty").query().isVisible()).isTrue();
        assertThat(text(robot, "#found-within"))
                .isEqualTo("Within 600 × 340 × 250 mm; 15 L/s of air at no more than 30 Pa; target NC 20.");
        assertThat(robot.lookup("#found-limits .sentence").queryAllAs(Label.class).stream()
                        .map(l -> Unbroken.plain(l.getText())))
                .contains("600 × 340 × 250 mm", "15 L/s, at no more than 30 Pa", "NC 20");
        robot.press(KeyCode.CONTROL).type(KeyCode.B).release(KeyCode.CONTROL);
        await(() -> designer.sizing().stateProperty().get() == State.FINISHED);
        assertThat(text(robot, "#found-state")).isEqualTo("in: the target is met.");
        assertThat(robot.lookup(".found-empty").query().isVisible()).isFalse();
        assertThat(robot.lookup("#found-start").queryAs(Button.class).getText()).isEqualTo("_Look again");
        var before = designer.edit().project().paths().get(0).box();
        var designs = designer.sizing().designsProperty().get();
        int other = designs.get(0).box().equals(before) ? 1 : 0;
        var found = designs.get(other).box();
        assertThat(found).isNotEqualTo(before);
        String use = "#use-" + other;

        click(robot, use);
        assertThat(designer.edit().project().paths().get(0).box()).isEqualTo(found);
        assertThat(robot.lookup(use).queryAs(Button.class).getText()).isEqualTo("In the path");
        assertThat(robot.lookup(use).queryAs(Button.class).isDisabled()).isTrue();
        assertThat(text(robot, "#message")).contains("is now the one found as");
        click(robot, "#bar-undo");
        assertThat(designer.edit().project().paths().get(0).box()).isEqualTo(before);
        assertThat(robot.lookup(use).queryAs(Button.class).isDisabled()).isFalse();
        assertThat(robot.lookup("#found-outdated").query().isVisible()).isFalse();
    }

    private static void await(Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }
}
