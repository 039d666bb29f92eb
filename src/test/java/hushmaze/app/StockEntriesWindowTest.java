package hushmaze.app;

import static hushmaze.app.EntryRobot.click;
import static hushmaze.app.EntryRobot.open;
import static hushmaze.app.EntryRobot.text;
import static hushmaze.app.EntryRobot.type;
import static hushmaze.app.EntryRobot.wrongs;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.material.Board;
import hushmaze.material.Sheet;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.VentPath;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.ComboBox;
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

/** Property tests of the entries of sheets, material figures, tools and port faces, worked by a robot. */
@ExtendWith(ApplicationExtension.class)
class StockEntriesWindowTest {
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

    private List<Sheet> boards() {
        return designer.edit().project().stock().boardSheets();
    }

    private VentPath path() {
        return designer.edit().project().paths().get(0);
    }

    @Test
    @SuppressWarnings("unchecked")
    void anOffcutIsAddedMeasuredAndTheOnlyOneStays(FxRobot robot) {
        open(robot, "#group-materials", "#fold-sheets");
        int first = boards().size();
        click(robot, "#sheet-board-own");
        String offcut = "#stock-boardSheets-" + first + "-";
        type(robot, offcut + "name", "Door leaf");
        type(robot, offcut + "length", "78 in");
        type(robot, offcut + "width", "0.76 m");
        type(robot, offcut + "stock", "2");
        assertThat(boards().get(first))
                .isEqualTo(new Sheet("Door leaf", 1.9812, 0.76, null, 2, "MDF 18 mm", "Entered by hand."));
        ComboBox<Optional<String>> board = robot.lookup(offcut + "material").queryAs(ComboBox.class);
        robot.interact(board::show);
        assertThat(board.getItems()).startsWith(Optional.empty(), Optional.of("MDF 18 mm"));
        robot.interact(board::hide);
        robot.interact(() -> board.setValue(Optional.empty()));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(boards().get(first).material()).isNull();
        type(robot, offcut + "stock", "half");
        assertThat(wrongs(robot)).contains("How many");
        robot.type(KeyCode.ESCAPE);
        type(robot, offcut + "price", "12.50");
        assertThat(boards().get(first).price()).isEqualTo(12.5);
        ComboBox<Sheet> more = robot.lookup("#sheet-board-add").queryAs(ComboBox.class);
        robot.interact(() -> more.setValue(designer.presets().boardSheet("2800 x 2070 mm")));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(boards()).hasSize(first + 2);
        for (int i = boards().size(); i > 1; i--) {
            click(robot, "#sheet-board-0-away");
        }
        click(robot, "#sheet-board-0-away");
        assertThat(text(robot, "#sheet-board-wrong")).startsWith("One size at least has to stay");
        assertThat(boards()).extracting(Sheet::name).containsExactly("2800 x 2070 mm");
        click(robot, "#bar-undo");
        assertThat(text(robot, "#sheet-board-wrong")).isEmpty();
    }

    /** The box follows its board, and the list says that the figures are the user's own. */
    @Test
    @SuppressWarnings("unchecked")
    void figuresOfABoardGoIntoTheBox(FxRobot robot) throws Exception {
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> path().box() != null);
        open(robot, "#group-materials", "#fold-board", "#fold-tools");
        Board old = path().brief().construction().board();
        type(robot, "#path-brief-construction-board-density", "640");
        Board now = path().brief().construction().board();
        assertThat(now.density()).isEqualTo(640);
        assertThat(now.source()).isEqualTo(old.source() + "; figures as entered.");
        assertThat(path().box().shell()).containsOnly(now);
        ComboBox<Board> boards = robot.lookup("#path-brief-construction-board").queryAs(ComboBox.class);
        assertThat(boards.getConverter().toString(now)).isEqualTo(old.name() + ", own figures");
        assertThat(boards.getConverter().toString(old)).isEqualTo(old.name());
        type(robot, "#stock-saw-kerf", "20 mm");
        assertThat(wrongs(robot))
                .contains("Width of its cut: 20 mm is not accepted")
                .contains("0 to 12 mm");
        type(robot, "#stock-saw-kerf", "1/8 in");
        assertThat(designer.edit().project().stock().saw().kerf()).isEqualTo(0.0254 / 8);
    }

    @Test
    @SuppressWarnings("unchecked")
    void anOpeningGoesIntoAnotherFace(FxRobot robot) throws Exception {
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> path().box() != null);
        open(robot, "#group-box");
        Port old = path().box().roomPort();
        PortFace other = old.face() == PortFace.SIDE ? PortFace.FRONT : PortFace.SIDE;
        ComboBox<PortFace> faces = robot.lookup("#path-box-roomPort-face").queryAs(ComboBox.class);
        robot.interact(() -> faces.setValue(other));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(path().box().roomPort().face()).isEqualTo(other);
        click(robot, "#bar-undo");
        assertThat(path().box().roomPort()).isEqualTo(old);
        assertThat(faces.getValue()).isEqualTo(old.face());
    }
}
