package hushmaze.app;

import static hushmaze.app.EntryRobot.click;
import static hushmaze.app.EntryRobot.isShown;
import static hushmaze.app.EntryRobot.open;
import static hushmaze.app.EntryRobot.text;
import static hushmaze.app.EntryRobot.type;
import static hushmaze.app.EntryRobot.wrongs;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.PlainAir;
import hushmaze.app.model.ResultModel;
import hushmaze.material.Fan;
import hushmaze.project.Brief;
import hushmaze.project.Drive;
import hushmaze.project.Fitting;
import hushmaze.project.Room;
import hushmaze.project.Session;
import hushmaze.store.Presets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Property tests of the groups of entries about air, worked by a robot: one value of each is changed and taken. */
@ExtendWith(ApplicationExtension.class)
class AirEntriesWindowTest {
    @TempDir
    static Path folder;

    /** Each window keeps its work in a file of its own, or the next would take it up. */
    private static final AtomicInteger WINDOWS = new AtomicInteger();

    private static final int LONGEST_S = 60;

    private final BackgroundRunner runner = new BackgroundRunner();
    private Designer designer;

    @Start
    void start(Stage stage) {
        designer = TestWindow.show(stage, runner, folder, "unnamed-" + WINDOWS.incrementAndGet() + ".json");
        designer.edit().edit("plain", PlainAir::of);
    }

    @AfterEach
    void stop() {
        runner.close();
    }

    private Room room() {
        return designer.edit().project().room();
    }

    private Brief brief() {
        return designer.edit().project().paths().get(0).brief();
    }

    /** A box laid out meanwhile would refresh the entries, and put a message away. */
    private void waitForResults() throws TimeoutException {
        WaitForAsyncUtils.waitFor(
                LONGEST_S,
                TimeUnit.SECONDS,
                () -> designer.results().stateProperty().get() == ResultModel.State.CURRENT);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @SuppressWarnings("unchecked")
    private static <T> void choose(FxRobot robot, String id, T value) {
        ComboBox<T> box = robot.lookup(id).queryAs(ComboBox.class);
        robot.interact(() -> box.setValue(value));
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void whatGoesOnInTheRoomIsSwitchedOnAndChanged(FxRobot robot) {
        open(robot, "#group-room", "#fold-use");
        assertThat(text(robot, "#fold-use-summary")).isEqualTo("none");
        type(robot, "#room-heatGain", "");
        assertThat(wrongs(robot)).contains("Heat may be left blank only while");
        click(robot, "#room-use");
        assertThat(text(robot, "#fold-use-summary")).startsWith("guessed: Sitting, working");
        type(robot, "#room-use-lights", "75 W");
        assertThat(room().use().lights()).isEqualTo(75);
        click(robot, "#session-add");
        type(robot, "#room-use-timetable-0-minutes", "0");
        assertThat(wrongs(robot)).contains("Minutes: 0 is not accepted");
        type(robot, "#room-use-timetable-0-minutes", "45");
        click(robot, "#room-use-timetable-0-airOn");
        assertThat(room().use().timetable()).containsExactly(new Session(45, room().people(), false));
        click(robot, "#session-0-away");
        assertThat(room().use().timetable()).isEmpty();
        type(robot, "#room-heatGain", "");
        assertThat(wrongs(robot)).doesNotContain("left blank");
        assertThat(room().heatGain()).isNull();
        assertThat(robot.lookup("#room-heatGain").queryAs(TextField.class).getPromptText())
                .isEqualTo("from what goes on");
        click(robot, "#room-use");
        assertThat(room().heatGain()).isNotNull();
    }

    @Test
    void doorAndLeaksAreMeasured(FxRobot robot) {
        open(robot, "#group-room", "#fold-leaks");
        type(robot, "#room-door-width", "5");
        assertThat(room().door().width()).isEqualTo(0.005);
        click(robot, "#room-door-undercutLength");
        type(robot, "#undercut-length", "70 cm");
        assertThat(room().door().undercutLength()).isEqualTo(0.7);
        click(robot, "#room-leakage");
        type(robot, "#room-leakage-pressure", "200");
        assertThat(wrongs(robot)).contains("Pressure of the test: 200 Pa", "from 1 to 100 Pa");
        type(robot, "#room-leakage-pressure", "40");
        assertThat(room().leakage().pressure()).isEqualTo(40);
        assertThat(text(robot, "#fold-leaks-summary")).startsWith("guessed: door 5 m by 5 mm; rest ");
    }

    @Test
    void theKindOfDriveDecidesWhatIsAskedForIt(FxRobot robot) {
        open(robot, "#group-opening", "#fold-drive");
        click(robot, "#path-brief-drive");
        assertThat(isShown(robot, "#path-brief-drive-pressure")).isFalse();
        choose(robot, "#path-brief-drive-kind", Drive.Kind.GIVEN_PRESSURE);
        type(robot, "#path-brief-drive-pressure", "12");
        assertThat(text(robot, "#fold-drive-summary")).isEqualTo("12 Pa at the far end");
        choose(robot, "#path-brief-drive-kind", Drive.Kind.FAN_CURVE);
        assertThat(isShown(robot, "#path-brief-drive-pressure")).isFalse();
        Fan other = Presets.load().fans().get(1);
        choose(robot, "#path-brief-drive-fan", other);
        assertThat(brief().drive().fan()).isEqualTo(other);
        type(robot, "#path-brief-drive-fan-points", "0 60; 20 55; 40 58");
        assertThat(wrongs(robot)).contains("Points of its curve: 58 Pa in point 3", "at most the 55 Pa");
        type(robot, "#path-brief-drive-fan-points", "0 60; 20 55; 40 45");
        assertThat(wrongs(robot)).doesNotContain("in point 3");
        assertThat(brief().drive().fan().points()).hasSize(3);
        type(robot, "#path-brief-drive-speed", "0.8");
        assertThat(brief().drive().speed()).isEqualTo(0.8);
    }

    @Test
    void whatIsAtTheEndsIsAddedChangedAndTakenOut(FxRobot robot) throws TimeoutException {
        open(robot, "#group-opening", "#fold-fittings");
        choose(robot, "#fitting-add", Fitting.Kind.FLEXIBLE_DUCT);
        choose(robot, "#fitting-add", Fitting.Kind.ROUND_COLLAR);
        choose(robot, "#fitting-add", Fitting.Kind.ROUND_COLLAR);
        assertThat(text(robot, "#fitting-wrong")).contains("only one at each");
        type(robot, "#path-brief-fittings-0-length", "2.5 m");
        assertThat(brief().fittings().get(0).length()).isEqualTo(2.5);
        waitForResults();
        choose(robot, "#path-brief-fittings-1-end", Fitting.End.AT_OPENING);
        assertThat(wrongs(robot)).contains("only one at each end");
        assertThat(brief().fittings().get(1).end()).isEqualTo(Fitting.End.IN_ROOM);
        click(robot, "#fitting-0-away");
        assertThat(text(robot, "#fold-fittings-summary")).isEqualTo("guessed: Round collar");
        assertThat(isShown(robot, "#path-brief-fittings-0-diameter")).isTrue();
    }
}
