package hushmaze.app;

import static hushmaze.app.EntryRobot.click;
import static hushmaze.app.EntryRobot.isShown;
import static hushmaze.app.EntryRobot.open;
import static hushmaze.app.EntryRobot.text;
import static hushmaze.app.EntryRobot.type;
import static hushmaze.app.EntryRobot.wrongs;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.project.Seam;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Property tests of the entries about joints and doors, worked by a robot. */
@ExtendWith(ApplicationExtension.class)
class JointEntriesWindowTest {
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
    void aDoorIsSwitchedOnAndMended(FxRobot robot) {
        open(robot, "#group-materials", "#fold-doorway");
        assertThat(isShown(robot, "#path-brief-construction-doorway-width")).isFalse();
        click(robot, "#path-brief-construction-doorway");
        assertThat(text(robot, "#fold-doorway-summary")).contains("750 mm", "1950 mm");
        type(robot, "#path-brief-construction-doorway-width", "50 mm");
        assertThat(wrongs(robot)).contains("Clear width: 50 mm is not accepted");
        type(robot, "#path-brief-construction-doorway-width", "30 in");
        assertThat(wrongs(robot)).isEmpty();
        assertThat(text(robot, "#fold-doorway-summary")).contains("762 mm");
    }

    @Test
    void aJointIsAddedMovedAndReplacedByWhatIsProposed(FxRobot robot) throws Exception {
        WaitForAsyncUtils.waitFor(
                30,
                TimeUnit.SECONDS,
                () -> designer.edit().project().paths().get(0).box() != null);
        open(robot, "#group-box");
        int before = designer.seams().seams().size();
        @SuppressWarnings("unchecked")
        ComboBox<Seam.Kind> add = robot.lookup("#seam-add").queryAs(ComboBox.class);
        robot.interact(() -> add.setValue(Seam.Kind.GLUED));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(add.getValue()).isNull();
        assertThat(designer.seams().seams()).hasSize(before + 1);
        type(robot, "#path-box-seams-0-position", "51 mm");
        assertThat(wrongs(robot)).contains("From the near end: 51 mm is not accepted");
        Button propose = robot.lookup("#seam-propose").queryButton();
        assertThat(propose.isDisabled()).isFalse();
        robot.interact(propose::fire);
        assertThat(designer.seams().mayPropose()).isFalse();
        assertThat(propose.isDisabled()).isTrue();
    }
}
