package hushmaze.app;

import static hushmaze.app.EntryRobot.click;
import static hushmaze.app.EntryRobot.isShown;
import static hushmaze.app.EntryRobot.open;
import static hushmaze.app.EntryRobot.text;
import static hushmaze.app.EntryRobot.type;
import static hushmaze.app.EntryRobot.wrongs;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.Mounting;
import hushmaze.project.Target;
import hushmaze.store.Presets;
import java.nio.file.Path;
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

/** Property tests of the folded groups of entries, worked by a robot: switches, octave values, parts, kinds, paths. */
@ExtendWith(ApplicationExtension.class)
class ExtraEntriesWindowTest {
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
    void aFanIsSwitchedOnFilledInAndMended(FxRobot robot) {
        open(robot, "#group-extras", "#fold-fan");
        assertThat(text(robot, "#fold-fan-summary")).isEqualTo("none");
        assertThat(isShown(robot, "#path-brief-fan-power-2")).isFalse();

        click(robot, "#path-brief-fan");
        assertThat(isShown(robot, "#path-brief-fan-power-2")).isTrue();
        assertThat(text(robot, "#fold-fan-summary")).contains("Duct fan").contains("guessed");

        type(robot, "#path-brief-fan-power-2", "300");
        assertThat(wrongs(robot)).contains("Its sound power, 250 Hz: 300 dB is not accepted");
        type(robot, "#path-brief-fan-power-2", "55");
        assertThat(wrongs(robot)).isEmpty();
        assertThat(text(robot, "#fold-fan-summary")).doesNotContain("guessed");
        assertThat(designer.edit()
                        .project()
                        .paths()
                        .get(0)
                        .brief()
                        .fan()
                        .power()
                        .value(2))
                .isEqualTo(55);

        type(robot, "#path-brief-fan-source", "Data sheet of the fan");
        assertThat(designer.edit().project().paths().get(0).brief().fan().source())
                .isEqualTo("Data sheet of the fan");
        for (int i = 0; i < 3; i++) {
            robot.interact(() -> designer.edit().undo());
        }
        assertThat(robot.lookup("#path-brief-fan").queryAs(CheckBox.class).isSelected())
                .isFalse();
        assertThat(text(robot, "#fold-fan-summary")).isEqualTo("none");
    }

    @Test
    void partsOfTheRoomAreChosenMeasuredAndTakenOut(FxRobot robot) {
        open(robot, "#group-extras", "#fold-envelope");
        click(robot, "#room-envelope");
        EnvelopeElement gap = Presets.load().element("Door, 10 mm undercut");
        ComboBox<EnvelopeElement> add = add(robot);
        robot.interact(() -> add.setValue(gap));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(add.getValue()).isNull();
        assertThat(text(robot, "#fold-envelope-summary")).startsWith("2 parts");
        type(robot, "#room-envelope-elements-1-gapLength", "3 ft");
        assertThat(designer.edit().project().room().envelope().elements().get(1).gapLength())
                .isEqualTo(0.9144);
        type(robot, "#room-envelope-elements-0-area", "0");
        assertThat(wrongs(robot)).contains("Area: 0 m²");
        robot.type(KeyCode.ESCAPE);
        click(robot, "#element-0-away");
        assertThat(text(robot, "#element-wrong")).contains("at least one surface");
        click(robot, "#element-1-away");
        assertThat(text(robot, "#fold-envelope-summary")).startsWith("1 part,");
    }

    @Test
    void theKindOfTargetDecidesWhatIsAskedForIt(FxRobot robot) {
        open(robot, "#group-noise");
        assertThat(isShown(robot, "#room-target-number")).isTrue();
        assertThat(isShown(robot, "#room-target-spectrum-0")).isFalse();
        @SuppressWarnings("unchecked")
        ComboBox<Target.Kind> kind = robot.lookup("#room-target-kind").queryAs(ComboBox.class);
        robot.interact(() -> kind.setValue(Target.Kind.SPECTRUM));
        assertThat(isShown(robot, "#room-target-number")).isFalse();
        type(robot, "#room-target-spectrum-0", "41");
        assertThat(designer.edit().project().room().target().spectrum().value(0))
                .isEqualTo(41);
    }

    @Test
    void aVentPathIsAddedNamedAndRemoved(FxRobot robot) {
        int count = designer.edit().project().paths().size();
        click(robot, "#path-add");
        assertThat(designer.edit().project().paths()).hasSize(count + 1);
        open(robot, "#group-opening");
        type(robot, "#path-name", "Way to the attic");
        assertThat(designer.edit().project().paths().get(count).name()).isEqualTo("Way to the attic");
        click(robot, "#path-remove");
        assertThat(designer.edit().project().paths()).hasSize(count);
    }

    @Test
    @SuppressWarnings("unchecked")
    void whatCannotBeComputedIsSaidAndItsScrewsAreHidden(FxRobot robot) {
        open(robot, "#group-materials", "#fold-mounting");
        assertThat(isShown(robot, "#path-brief-construction-mounting-studSpacing"))
                .isTrue();
        click(robot, "#path-brief-construction-mounting");
        assertThat(isShown(robot, "#path-brief-construction-mounting-studSpacing"))
                .isFalse();
        click(robot, "#path-brief-construction-mounting");
        assertThat(isShown(robot, "#path-brief-construction-mounting-studSpacing"))
                .isTrue();
        type(robot, "#path-brief-construction-mounting-studSpacing", "16 in");
        assertThat(mounting().studSpacing()).isEqualTo(0.4064);
        type(robot, "#path-brief-construction-mounting-studSpacing", "16 m");
        assertThat(wrongs(robot)).contains("is not accepted");
        type(robot, "#path-brief-construction-mounting-studSpacing", "");
        assertThat(mounting().studSpacing()).isNull();
        click(robot, "#path-brief-construction-mounting-abovePeople");
        assertThat(mounting().isAbovePeople()).isTrue();

        ComboBox<Mounting.Into> into =
                robot.lookup("#path-brief-construction-mounting-into").queryAs(ComboBox.class);
        assertThat(into.getValue()).isEqualTo(Mounting.Into.STUDS);
        robot.interact(() -> into.setValue(Mounting.Into.MASONRY));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(mounting().into()).isEqualTo(Mounting.Into.MASONRY);
        assertThat(isShown(robot, "#path-brief-construction-mounting-studSpacing"))
                .isFalse();
        assertThat(text(robot, "#fold-mounting-summary")).contains("not computed: Masonry");
    }

    private Mounting mounting() {
        return designer.edit()
                .project()
                .paths()
                .get(designer.edit().path())
                .brief()
                .construction()
                .mounting();
    }

    @SuppressWarnings("unchecked")
    private static ComboBox<EnvelopeElement> add(FxRobot robot) {
        return robot.lookup("#element-add").queryAs(ComboBox.class);
    }
}
