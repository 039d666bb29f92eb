package hushmaze.app;

import static hushmaze.app.EntryRobot.click;
import static hushmaze.app.EntryRobot.open;
import static hushmaze.app.EntryRobot.text;
import static hushmaze.app.EntryRobot.type;
import static hushmaze.app.EntryRobot.wrongs;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.material.Board;
import hushmaze.material.Facing;
import hushmaze.material.Liner;
import hushmaze.project.Choices;
import hushmaze.project.PortFace;
import hushmaze.project.VentPath;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.CheckBox;
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

/** Property tests of the entries of what a search may choose among, worked by a robot. */
@ExtendWith(ApplicationExtension.class)
class ChoicesEntriesWindowTest {
    @TempDir
    static Path folder;

    private final BackgroundRunner runner = new BackgroundRunner();
    private Designer designer;

    @Start
    void start(Stage stage) {
        designer = TestWindow.show(stage, runner, folder, "unnamed.json");
        designer.edit()
                .edit(
                        "free",
                        p -> p.withPath(
                                0,
                                p.paths()
                                        .get(0)
                                        .withBrief(p.paths().get(0).brief().choosing(null))));
    }

    @AfterEach
    void stop() {
        runner.close();
    }

    private Choices choices() {
        return designer.edit().project().paths().get(0).brief().choicesOrFree();
    }

    @Test
    @SuppressWarnings("unchecked")
    void materialsOnHandAreAddedMeasuredAndTakenOut(FxRobot robot) {
        open(robot, "#group-materials", "#fold-choices");
        assertThat(text(robot, "#fold-choices-summary")).isEqualTo("free, of the materials above");
        ComboBox<Board> add = robot.lookup("#choice-board-add").queryAs(ComboBox.class);
        Board first = designer.presets().boards().get(0);
        for (Board board : designer.presets().boards().subList(0, 5)) {
            robot.interact(() -> add.setValue(board));
            WaitForAsyncUtils.waitForFxEvents();
            assertThat(add.getValue()).isNull();
        }
        assertThat(choices().boards()).isEqualTo(designer.presets().boards().subList(0, 4));
        assertThat(text(robot, "#choice-board-wrong")).contains("Boards on hand: 5 given", "at most 4");
        robot.interact(add::show);
        assertThat(add.getItems())
                .isNotEmpty()
                .doesNotContainAnyElementsOf(choices().boards());
        robot.interact(add::hide);

        assertThat(text(robot, "#choice-board-0-name")).isEqualTo(first.name());
        type(robot, "#path-brief-choices-boards-0-thickness", "17.6");
        assertThat(choices().boards().get(0).thickness()).isEqualTo(0.0176);
        type(robot, "#path-brief-choices-boards-0-thickness", "1");
        assertThat(wrongs(robot)).contains("Real thickness: 1 mm is not accepted");
        robot.type(KeyCode.ESCAPE);
        for (int i = 0; i < 4; i++) {
            click(robot, "#choice-board-0-away");
        }
        assertThat(choices().boards()).isEmpty();

        ComboBox<Liner> liner = robot.lookup("#choice-liner-add").queryAs(ComboBox.class);
        robot.interact(() -> liner.setValue(designer.presets().liners().get(2)));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(text(robot, "#fold-choices-summary")).isEqualTo("1 liner");
        click(robot, "#bar-undo");
        assertThat(choices()).isEqualTo(Choices.FREE);
    }

    /** The facing goes over the liner of the path, of its box and of the liners on hand; another liner comes under the same facing. */
    @Test
    @SuppressWarnings("unchecked")
    void aFacingIsLaidOverTheLiner(FxRobot robot) {
        open(robot, "#group-materials", "#fold-choices");
        ComboBox<Liner> more = robot.lookup("#choice-liner-add").queryAs(ComboBox.class);
        robot.interact(() -> more.setValue(designer.presets().liners().get(2)));
        ComboBox<Optional<Facing>> facings =
                robot.lookup("#path-brief-construction-liner-facing").queryAs(ComboBox.class);
        assertThat(facings.getValue()).isEmpty();
        Facing film = designer.presets().facing("Polyethylene film 0.2 mm");
        robot.interact(() -> facings.setValue(Optional.of(film)));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(lining().facing()).isEqualTo(film);
        assertThat(path().box().liner().facing()).isEqualTo(film);
        assertThat(choices().liners()).extracting(Liner::facing).containsExactly(film);

        type(robot, "#path-brief-construction-liner-facing-massPerArea", "150");
        assertThat(lining().facing().massPerArea()).isEqualTo(0.15);
        assertThat(lining().facing().source()).endsWith("; mass or flow resistance as entered.");
        type(robot, "#path-brief-construction-liner-facing-flowResistance", "0.5");
        assertThat(wrongs(robot)).contains("Its flow resistance: 0.5 Pa·s/m is not accepted");
        robot.type(KeyCode.ESCAPE);
        robot.interact(() -> facings.setValue(Optional.of(film)));
        WaitForAsyncUtils.waitForFxEvents();

        ComboBox<Liner> liners = robot.lookup("#path-brief-construction-liner").queryAs(ComboBox.class);
        Liner other = designer.presets().liners().stream()
                .filter(l -> l.thickness() <= 0.025 && !l.name().equals(lining().name()))
                .findFirst()
                .orElseThrow();
        robot.interact(() -> liners.setValue(other));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(lining()).isEqualTo(other.faced(film));
        assertThat(path().box().liner()).isEqualTo(other.faced(film));
        assertThat(liners.getItems()).hasSameSizeAs(designer.presets().liners());
        robot.interact(() -> facings.setValue(Optional.empty()));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(path().box().liner()).isEqualTo(other);
        click(robot, "#bar-undo");
        assertThat(facings.getValue()).contains(film);
    }

    private VentPath path() {
        return designer.edit().project().paths().get(0);
    }

    private Liner lining() {
        return path().brief().construction().liner();
    }

    @Test
    void layersAndFacesAreChosen(FxRobot robot) {
        open(robot, "#group-materials", "#fold-choices");
        type(robot, "#path-brief-choices-mostLayers", "4");
        assertThat(wrongs(robot)).contains("Layers in a wall, at most: 4 is not accepted");
        type(robot, "#path-brief-choices-mostLayers", "1");
        assertThat(wrongs(robot)).isEmpty();
        assertThat(choices().mostLayers()).isEqualTo(1);
        type(robot, "#path-brief-choices-mostLinerLayers", "1");
        assertThat(choices().mostLinerLayers()).isEqualTo(1);
        assertThat(choices().mostLayers()).isEqualTo(1);

        click(robot, "#choices-OPENING-SIDE");
        click(robot, "#choices-ROOM-FRONT");
        assertThat(choices().openingFaces()).containsExactly(PortFace.SIDE);
        assertThat(choices().roomFaces()).containsExactly(PortFace.FRONT);
        assertThat(text(robot, "#fold-choices-summary")).isEqualTo("layers up to 1, liner layers up to 1, some faces");
        CheckBox side = robot.lookup("#choices-OPENING-SIDE").queryAs(CheckBox.class);
        assertThat(side.isSelected()).isTrue();
        assertThat(side.getAccessibleText()).isEqualTo("May lie over the opening: A long side");
        click(robot, "#bar-undo");
        assertThat(choices().roomFaces()).isEmpty();
        click(robot, "#bar-undo");
        assertThat(side.isSelected()).isFalse();
    }
}
