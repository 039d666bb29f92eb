package hushmaze.app;

import static hushmaze.app.EntryRobot.click;
import static hushmaze.app.EntryRobot.text;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Field;
import hushmaze.app.model.Swept;
import hushmaze.app.model.WhatIfModel.State;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.RadioButton;
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

/** Property test of trying other values of a number in the window, worked by a robot: chosen, worked out, drawn, outdated by an edit. */
@ExtendWith(ApplicationExtension.class)
class WhatIfWindowTest {
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

    @Test
    @SuppressWarnings("unchecked")
    void aNumberIsChosenWorkedOutAndOutdated(FxRobot robot) throws Exception {
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT7).release(KeyCode.CONTROL);
        robot.interact(() ->
                robot.lookup("#found-show-whatif").queryAs(RadioButton.class).setSelected(true));
        WaitForAsyncUtils.waitFor(
                PATIENCE_S, TimeUnit.SECONDS, () -> designer.whatIf().mayStart());
        Node chart = robot.lookup("#whatif-chart").query();
        assertThat(chart.isVisible()).isFalse();
        ComboBox<Swept> number = robot.lookup("#whatif-number").queryAs(ComboBox.class);
        assertThat(number.getItems()).isEqualTo(designer.whatIf().numbers());
        robot.interact(() -> number.setValue(Swept.FLOW));
        click(robot, "#whatif-start");
        WaitForAsyncUtils.waitFor(
                PATIENCE_S,
                TimeUnit.SECONDS,
                () -> designer.whatIf().stateProperty().get() == State.FINISHED);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(text(robot, "#whatif-state")).startsWith("As it is, ").contains("Every verdict good:");
        assertThat(chart.isVisible()).isTrue();
        assertThat(chart.getAccessibleText()).contains("Margin to the target and pressure drop", "As it is, ");
        assertThat(robot.lookup("#whatif-outdated").query().isVisible()).isFalse();
        robot.interact(() -> designer.edit().enter(Field.of("room.people"), "People", "7"));
        assertThat(robot.lookup("#whatif-outdated").query().isVisible()).isTrue();
        assertThat(chart.isVisible()).isTrue();

        robot.interact(() -> {
            designer.sizing().start();
            designer.sizing().cancel();
        });
        assertThat(robot.lookup("#found-show-boxes").queryAs(RadioButton.class).isSelected())
                .isTrue();
        assertThat(robot.lookup("#found-start").query().getParent().isVisible()).isTrue();
    }
}
