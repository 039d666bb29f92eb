package hushmaze.app;

import static hushmaze.app.EntryRobot.click;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Field;
import hushmaze.app.model.ResultModel.State;
import hushmaze.assess.BandResult;
import hushmaze.drawing.Drawing;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
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

/** Property tests of reading charts, pages and comparisons by mouse and keyboard, worked by a robot. */
@ExtendWith(ApplicationExtension.class)
class ChartReadingWindowTest {
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

    private void awaitResults() throws Exception {
        WaitForAsyncUtils.waitFor(
                60, TimeUnit.SECONDS, () -> designer.results().stateProperty().get() == State.CURRENT);
    }

    @Test
    void bandsAreReadByKeysAndByPointing(FxRobot robot) throws Exception {
        awaitResults();
        click(robot, "#view-spectra");
        Node canvas = robot.lookup(".page-canvas").queryAll().stream()
                .filter(node -> node.isVisible()
                        && node.getParent().getParent().isVisible()
                        && "Third octaves".equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
        assertThat(canvas.isFocusTraversable()).isTrue();
        VBox card = (VBox) canvas.lookup("#told");
        assertThat(card.isVisible()).isFalse();
        robot.interact(canvas::requestFocus);
        robot.type(KeyCode.RIGHT).type(KeyCode.RIGHT);
        WaitForAsyncUtils.waitForFxEvents();
        BandResult second =
                designer.results().pathResult().orElseThrow().thirds().get(1);
        assertThat(words(card)).startsWith("63 Hz").contains(db(second.noise())).contains(db(second.allowed()));
        assertThat(canvas.getAccessibleHelp()).startsWith("63 Hz\n").contains(db(second.noise()));
        robot.type(KeyCode.DOWN);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(words(card)).startsWith("63 Hz").contains(db(second.likely()));
        robot.type(KeyCode.ESCAPE);
        assertThat(card.isVisible()).isFalse();

        robot.moveTo(canvas);
        robot.moveBy(0, 120);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(card.isVisible()).isTrue();
        assertThat(words(card)).contains("walls and joints alone");
        // what was pointed at is gone with the results it was of
        robot.interact(
                () -> designer.edit().enter(Field.of("path.brief.construction.board.density"), "Density", "500"));
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> !card.isVisible());
    }

    private static String words(VBox card) {
        return card.lookupAll(".label").stream()
                .map(node -> ((Label) node).getText())
                .collect(Collectors.joining("\n"));
    }

    private static String db(double value) {
        return String.format(Locale.ROOT, "%.1f dB", value);
    }

    @Test
    void placesOfTheAirAreReadFromTopToBottom(FxRobot robot) throws Exception {
        awaitResults();
        click(robot, "#view-air");
        click(robot, "#air-way");
        Node canvas = robot.lookup(".page-canvas").queryAll().stream()
                .filter(node -> "Along the way".equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
        VBox card = (VBox) canvas.lookup("#told");
        robot.interact(canvas::requestFocus);
        robot.type(KeyCode.DOWN);
        assertThat(words(card)).startsWith("port at the opening").contains("mean speed");
        robot.type(KeyCode.DOWN).type(KeyCode.DOWN);
        assertThat(words(card)).startsWith("turn 1");
        robot.type(KeyCode.UP);
        assertThat(words(card)).startsWith("pass 1");
    }

    @Test
    void pagesAreTurnedByKeysAndChosenByName(FxRobot robot) throws Exception {
        awaitResults();
        click(robot, "#view-pages");
        WaitForAsyncUtils.waitFor(
                60, TimeUnit.SECONDS, () -> designer.pages().drawingProperty().get() != null);
        WaitForAsyncUtils.waitForFxEvents();
        ComboBox<?> place = robot.lookup("#pages-place").queryAs(ComboBox.class);
        Drawing drawing = designer.pages().drawingProperty().get();
        assertThat(place.getItems()).hasSameSizeAs(drawing.pages());
        robot.interact(place::requestFocus);
        robot.type(KeyCode.PAGE_DOWN).type(KeyCode.PAGE_DOWN).type(KeyCode.PAGE_UP);
        assertThat(designer.pages().pageProperty().get()).isEqualTo(1);
        int last = drawing.pages().size() - 1;
        robot.interact(() -> place.getSelectionModel().select(last));
        robot.type(KeyCode.PAGE_DOWN);
        assertThat(designer.pages().pageProperty().get()).isEqualTo(last);
        assertThat(robot.lookup(".page-canvas").queryAll().stream().map(Node::getAccessibleText))
                .contains(String.format(
                        Locale.ROOT,
                        "%d of %d: %s",
                        last + 1,
                        last + 1,
                        drawing.pages().get(last).title()));
    }

    @Test
    void theBoxInThePathIsComparedFromTheStartAndAKeptOneBesideIt(FxRobot robot) throws Exception {
        awaitResults();
        click(robot, "#view-kept");
        WaitForAsyncUtils.waitFor(
                60,
                TimeUnit.SECONDS,
                () -> designer.kept().columnsProperty().get().stream().allMatch(c -> c.result() != null));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(compared(robot)).contains("In the path", "all good").doesNotContain("Box 1");
        robot.press(KeyCode.CONTROL).type(KeyCode.K).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(designer.kept().columnsProperty().get()).hasSize(2);
        assertThat(robot.lookup("#kept-name-0").queryAs(TextField.class).getText())
                .isEqualTo("Box 1");
    }

    private static String compared(FxRobot robot) {
        return robot.lookup("#kept-table .label").queryAllAs(Label.class).stream()
                .map(Label::getText)
                .collect(Collectors.joining("\n"));
    }
}
