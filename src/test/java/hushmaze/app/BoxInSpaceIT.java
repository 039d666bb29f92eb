package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.TestDesigner;
import hushmaze.app.window.Commands;
import hushmaze.app.window.DesignerWindow;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Property test on a real window system: the box in space is really drawn, turning it and cutting it open changes the picture, and the part
 * that is clicked is the one told about.
 */
@ExtendWith(ApplicationExtension.class)
class BoxInSpaceIT {
    @TempDir
    static Path folder;

    private Designer designer;

    @Start
    void start(Stage stage) {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
        Commands commands = new Commands(designer, new Answers(folder));
        new DesignerWindow(designer, commands, stage).show();
        commands.begin(Optional.empty());
    }

    @Test
    void theBoxIsDrawnAndTurns(FxRobot robot) {
        assertThat(Platform.isSupported(ConditionalFeature.SCENE3D)).isTrue();
        robot.clickOn("#view-space");
        Node view = robot.lookup(".space-view").query();
        WritableImage first = picture(robot, view);
        assertThat(colours(first)).hasSizeGreaterThan(100);
        robot.interact(view::requestFocus);
        for (int i = 0; i < 5; i++) {
            robot.type(KeyCode.RIGHT);
        }
        WritableImage turned = picture(robot, view);
        assertThat(colours(turned)).hasSizeGreaterThan(100);
        assertThat(differing(first, turned)).isGreaterThan(0.02);
    }

    @Test
    void theBoxIsCutOpenFromEverySide(FxRobot robot) {
        robot.clickOn("#view-space");
        Node view = robot.lookup(".space-view").query();
        Slider open = robot.lookup("#space-open").queryAs(Slider.class);
        ComboBox<?> from = robot.lookup("#space-open-from").queryAs(ComboBox.class);
        WritableImage whole = picture(robot, view);
        WritableImage before = whole;
        for (int i = 0; i < from.getItems().size(); i++) {
            int number = i;
            robot.interact(() -> from.getSelectionModel().select(number));
            robot.interact(() -> open.setValue(0.3));
            WritableImage some = picture(robot, view);
            robot.interact(() -> open.setValue(0.6));
            WritableImage more = picture(robot, view);
            assertThat(differing(whole, some)).isGreaterThan(0.005);
            assertThat(differing(some, more)).isGreaterThan(0.005);
            assertThat(differing(before, more)).isGreaterThan(0.005);
            assertThat(empty(more)).as("share of nothing").isGreaterThan(empty(some));
            before = more;
        }
        robot.interact(() -> open.setValue(0));
        assertThat(differing(whole, picture(robot, view))).isLessThan(1e-3);
    }

    @Test
    void thePartClickedIsTheOneToldAbout(FxRobot robot) {
        robot.clickOn("#view-space");
        Node view = robot.lookup(".space-view").query();
        CheckBox cover = (CheckBox)
                robot.lookup(n -> n instanceof CheckBox box && box.getText().equals("Cover on"))
                        .query();
        robot.interact(cover::fire);
        // in the middle of the picture there is nothing but the cover
        WritableImage plain = picture(robot, view);
        robot.clickOn(view);
        WaitForAsyncUtils.waitForFxEvents();
        Part chosen = designer.parts().chosenProperty().get();
        assertThat(chosen.role()).isEqualTo(Role.FRONT);
        String words = robot.lookup("#space-part").queryAs(Label.class).getText();
        assertThat(words).contains("front cover");
        double marked = differing(plain, picture(robot, view));
        assertThat(marked).isBetween(0.002, 0.2);

        robot.type(KeyCode.PAGE_DOWN);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(designer.parts().chosenProperty().get()).isNotEqualTo(chosen);
        robot.type(KeyCode.PAGE_UP);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(designer.parts().chosenProperty().get()).isEqualTo(chosen);

        robot.interact(() -> cover.fire());
        robot.clickOn(view);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(designer.parts().chosenProperty().get().role()).isNotEqualTo(Role.FRONT);

        robot.clickOn("#space-part-drawing");
        WaitForAsyncUtils.waitForFxEvents();
        String mark = designer.parts().words().split(":")[0];
        int page = designer.pages().pageProperty().get();
        assertThat(designer.pages().drawingProperty().get().pages().get(page).title())
                .startsWith("Part")
                .contains(mark);
    }

    /** Share of the pixels that have the colour of the upper left corner. */
    private static double empty(WritableImage image) {
        int ground = image.getPixelReader().getArgb(3, 3);
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += image.getPixelReader().getArgb(x, y) == ground ? 1 : 0;
            }
        }
        return count / (image.getWidth() * image.getHeight());
    }

    private static WritableImage picture(FxRobot robot, Node view) {
        WaitForAsyncUtils.waitForFxEvents();
        WritableImage[] image = new WritableImage[1];
        robot.interact(() -> image[0] = view.snapshot(null, null));
        return image[0];
    }

    private static Set<Integer> colours(WritableImage image) {
        Set<Integer> colours = new HashSet<>();
        PixelReader pixels = image.getPixelReader();
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                colours.add(pixels.getArgb(x, y));
            }
        }
        return colours;
    }

    /** Share of the pixels that are not the same. */
    private static double differing(WritableImage a, WritableImage b) {
        assertThat(b.getWidth()).isEqualTo(a.getWidth());
        assertThat(b.getHeight()).isEqualTo(a.getHeight());
        int different = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                different +=
                        a.getPixelReader().getArgb(x, y) == b.getPixelReader().getArgb(x, y) ? 0 : 1;
            }
        }
        return different / (a.getWidth() * a.getHeight());
    }
}
