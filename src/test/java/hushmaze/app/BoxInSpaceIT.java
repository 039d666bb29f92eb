package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.TestDesigner;
import hushmaze.app.window.Commands;
import hushmaze.app.window.DesignerWindow;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Node;
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

/** Property test on a real window system: the box in space is really drawn, and turning it changes the picture. */
@ExtendWith(ApplicationExtension.class)
class BoxInSpaceIT {
    @TempDir
    static Path folder;

    @Start
    void start(Stage stage) {
        Designer designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
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
