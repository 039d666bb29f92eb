package hushmaze.app;

import static hushmaze.app.EntryRobot.open;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Tooltip;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Property test of hints: made when the mouse comes, with where a number is from, and there for those who listen. */
@ExtendWith(ApplicationExtension.class)
class TipWindowTest {
    private static final int PATIENCE_S = 20;

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
    void aFigureSaysWhereItIsFrom(FxRobot robot) throws Exception {
        open(robot, "#group-materials", "#fold-board");
        assertThat(shown()).isEmpty();
        robot.moveTo("#path-brief-construction-board-thickness");
        robot.moveBy(2, 2);
        WaitForAsyncUtils.waitFor(
                PATIENCE_S,
                TimeUnit.SECONDS,
                () -> shown().filter(t -> t.contains("Where the number is from:"))
                        .isPresent());
        String source = designer.edit()
                .project()
                .paths()
                .get(0)
                .brief()
                .construction()
                .board()
                .source();
        assertThat(shown().orElseThrow())
                .startsWith("Measure the sheet you will cut")
                .endsWith(source);
        assertThat(robot.lookup("#path-brief-construction-board-thickness")
                        .query()
                        .getAccessibleHelp())
                .startsWith("Measure the sheet");
    }

    /** Words of the hint on the screen. */
    private static Optional<String> shown() {
        return Window.getWindows().stream()
                .filter(w -> w instanceof Tooltip && w.isShowing())
                .map(w -> ((Tooltip) w).getText())
                .findFirst();
    }
}
