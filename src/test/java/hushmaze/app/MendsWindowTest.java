package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.TestDesigner;
import hushmaze.project.Box;
import hushmaze.size.ResizedBox;
import hushmaze.wording.Unbroken;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Property test of changes offered beside the notices, made by a robot, and of the ways from a verdict to its cause. */
@ExtendWith(ApplicationExtension.class)
class MendsWindowTest {
    private static final int PATIENCE_S = 120;

    @TempDir
    static Path folder;

    private final BackgroundRunner runner = new BackgroundRunner();
    private Designer designer;

    @Start
    void start(Stage stage) {
        designer = TestWindow.show(stage, TestDesigner.mending(runner, folder.resolve("unnamed.json")), folder);
    }

    @AfterEach
    void stop() {
        runner.close();
    }

    @Test
    void aNarrowTurnIsMendedByOneClickAndOneStepBack(FxRobot robot) throws Exception {
        await(() -> box() != null && box().passes() > 1);
        Box narrow = new ResizedBox(box()).turning(box().clearWidth() / 2);
        robot.interact(() -> designer.edit()
                .edit("narrow", p -> p.withPath(0, p.paths().get(0).withBox(narrow))));
        await(() -> !gaps(robot).isEmpty());
        String words = Unbroken.plain(gaps(robot).get(0).getText());
        robot.interact(() -> gaps(robot).get(0).fire());
        await(() -> box().turnGap() > narrow.turnGap());
        assertThat(designer.edit().undoableProperty().get()).isEqualTo(words);
        robot.interact(designer.edit()::undo);
        assertThat(box()).isEqualTo(narrow);

        List<String> views = List.of("spectra", "air", "sections", "pages");
        List<String> links = List.of("quiet", "air", "fits", "buildable");
        for (int i = 0; i < links.size(); i++) {
            String link = "#why-" + links.get(i);
            robot.interact(() -> robot.lookup(link).queryAs(Hyperlink.class).fire());
            assertThat(robot.lookup("#view-" + views.get(i))
                            .queryAs(ToggleButton.class)
                            .isSelected())
                    .isTrue();
        }
        Hyperlink gap = robot.lookup(".notices .why").queryAllAs(Hyperlink.class).stream()
                .filter(link -> link.getText().equals("Gap at every turn…"))
                .findFirst()
                .orElseThrow();
        robot.interact(gap::fire);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup(".designer").query().getScene().getFocusOwner().getId())
                .isEqualTo("path-box-turnGap");
    }

    private Box box() {
        return designer.edit().project().paths().get(0).box();
    }

    private static List<Button> gaps(FxRobot robot) {
        return robot.lookup(".mend").queryAllAs(Button.class).stream()
                .filter(b -> b.getText().startsWith("Gaps"))
                .toList();
    }

    private static void await(Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }
}
