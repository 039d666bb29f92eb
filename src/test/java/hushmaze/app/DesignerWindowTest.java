package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.ResultModel.State;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
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

/** Property tests of the window, worked by a robot: an edit changes the verdict, undo brings it back, documents appear. */
@ExtendWith(ApplicationExtension.class)
class DesignerWindowTest {
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
    void editVerdictUndoDocuments(FxRobot robot) throws Exception {
        await(() -> designer.results().stateProperty().get() == State.CURRENT);
        String before = verdicts(robot);
        assertThat(before).contains("Enough air").doesNotContain("NOT enough air");

        enter(robot, "90 L/s");
        await(() -> verdicts(robot).contains("NOT enough air"));
        assertThat(designer.edit().undoableProperty().get()).isEqualTo("Airflow");

        enter(robot, "much");
        assertThat(texts(robot, ".entry-wrong")).contains("Airflow: \"much\" is not accepted");
        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(flow(robot).getText()).isEqualTo("90 L/s");

        robot.clickOn("#bar-undo");
        await(() -> verdicts(robot).equals(before));
        assertThat(flow(robot).getText()).isEqualTo("30 L/s");

        for (String view : new String[] {"#view-space", "#view-spectra", "#view-pages", "#view-sections"}) {
            robot.clickOn(view);
        }
        robot.clickOn("#bar-theme").clickOn("#bar-units");
        await(() -> flow(robot).getText().endsWith("cfm"));

        robot.clickOn("#bar-export");
        await(() -> texts(robot, "#message").contains("files were written"));
        assertThat(pdfs()).isEqualTo(designer.edit().project().paths().size());
    }

    private static void enter(FxRobot robot, String text) {
        TitledPane group = robot.lookup("#group-opening").queryAs(TitledPane.class);
        robot.interact(() -> group.setExpanded(true));
        robot.interact(() -> flow(robot).requestFocus());
        robot.interact(() -> flow(robot).selectAll());
        robot.write(text).type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static TextField flow(FxRobot robot) {
        return robot.lookup("#path-brief-flow").queryAs(TextField.class);
    }

    private static String verdicts(FxRobot robot) {
        return texts(robot, "#verdicts .verdict-lead") + "\n" + texts(robot, "#verdicts .sentence");
    }

    private static String texts(FxRobot robot, String query) {
        return robot.lookup(query).queryAllAs(Label.class).stream()
                .map(Label::getText)
                .collect(Collectors.joining("\n"));
    }

    private static long pdfs() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("documents"))) {
            return files.filter(f -> f.toString().endsWith(".pdf")).count();
        }
    }

    private static void await(Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }
}
