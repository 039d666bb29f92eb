package hushmaze.app.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import atlantafx.base.theme.PrimerLight;
import hushmaze.app.model.RecordingModel;
import hushmaze.app.model.RecordingModel.State;
import hushmaze.measure.WavBytes;
import hushmaze.measure.Weighting;
import hushmaze.work.TaskRunner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javafx.application.Application;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Property test of a recording that is looked at, worked by a robot: a part is dragged, its edges moved by mouse and keys, times typed and
 * refused, the channel chosen; levels follow. Validation of two levels: tones of amplitude a are 20 lg a dB. Nothing is cut off at any size.
 */
@ExtendWith(ApplicationExtension.class)
class RecordingPaneTest {
    private static final int RATE = 16_000;
    private static final int SECONDS = 20;

    @TempDir
    static Path folder;

    private static Path file;

    private RecordingModel model;
    private RecordingPane pane;
    private Stage stage;

    @BeforeAll
    static void record() throws IOException {
        double[] noise = new double[RATE / 2];
        Random random = new Random(5);
        for (int i = 0; i < noise.length; i++) {
            noise[i] = 0.001 * random.nextGaussian();
        }
        byte[] wav = WavBytes.of(WavBytes.Kind.PCM16, RATE, 2, SECONDS * RATE, i -> {
            double t = (double) i / RATE;
            double loud = t < 8 ? 0.01 : t < 14 ? 0.1 : 0.002;
            return noise[i % noise.length] + loud * Math.sin(2 * Math.PI * 1000 * t);
        });
        file = Files.write(folder.resolve("hall.wav"), wav);
    }

    @Start
    void start(Stage shown) {
        Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
        stage = shown;
        model = new RecordingModel(TaskRunner.ON_THIS_THREAD);
        pane = new RecordingPane(model);
        StackPane root = new StackPane(pane);
        root.getStyleClass().add("designer");
        Scene scene = new Scene(root, 800, 400);
        scene.getStylesheets().setAll(sheet("window.css"), sheet("light.css"));
        stage.setScene(scene);
        stage.show();
        model.open(file);
    }

    private static String sheet(String name) {
        return RecordingPane.class.getResource("/hushmaze/app/" + name).toExternalForm();
    }

    private double leq() {
        return model.recordingProperty().get().weighted().get(Weighting.A).leq();
    }

    private Point2D place(double seconds) {
        WaitForAsyncUtils.waitForFxEvents();
        RecordingCanvas canvas = (RecordingCanvas) pane.getCenter();
        return canvas.localToScreen(canvas.at(seconds));
    }

    private static String text(FxRobot robot, String id) {
        WaitForAsyncUtils.waitForFxEvents();
        return robot.lookup(id).queryAs(Label.class).getText();
    }

    private static void drag(FxRobot robot, Point2D from, Point2D to) {
        robot.moveTo(from)
                .press(MouseButton.PRIMARY)
                .moveTo(from.midpoint(to))
                .moveTo(to)
                .release(MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void aPartIsDraggedMovedAndTyped(FxRobot robot) {
        robot.interact(() -> model.choose(2));
        assertThat(text(robot, "#recording-part")).isEqualTo("whole recording: 20 s");
        drag(robot, place(9), place(13));
        assertThat(model.fromProperty().get()).isCloseTo(9, within(0.1));
        assertThat(model.toProperty().get()).isCloseTo(13, within(0.1));
        assertThat(leq()).isCloseTo(-20, within(0.1));
        assertThat(text(robot, "#recording-leq")).isEqualTo("−20.0 dB");
        assertThat(text(robot, "#recording-claim")).contains("differences only");

        // the end is grasped and drawn over the begin, which becomes the end
        drag(robot, place(model.toProperty().get()), place(2));
        assertThat(model.fromProperty().get()).isCloseTo(2, within(0.1));
        assertThat(model.toProperty().get()).isCloseTo(9, within(0.1));
        drag(robot, place(model.toProperty().get()), place(7));
        assertThat(text(robot, "#recording-leq")).isEqualTo("−39.9 dB");
        // a click alone chooses nothing
        double before = model.fromProperty().get();
        robot.clickOn(place(16));
        assertThat(model.fromProperty().get()).isEqualTo(before);

        Node edge = robot.lookup("#recording-edge-from").query();
        robot.interact(edge::requestFocus);
        robot.type(KeyCode.RIGHT);
        assertThat(model.fromProperty().get()).isCloseTo(before + 0.2, within(1e-9));
        robot.press(KeyCode.SHIFT).type(KeyCode.LEFT).release(KeyCode.SHIFT);
        assertThat(model.fromProperty().get()).isCloseTo(before + 0.18, within(1e-9));
        robot.type(KeyCode.HOME);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(model.fromProperty().get()).isZero();
        assertThat(edge.getAccessibleText()).startsWith("Begin of the part, 0 s;");

        type(robot, "#recording-from", "19.5");
        assertThat(text(robot, "#recording-wrong")).startsWith("From: 19.5 s is not accepted; it must be from 0 to ");
        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#recording-from").queryAs(TextField.class).getText())
                .isEqualTo("0 s");
        assertThat(robot.lookup("#recording-wrong").query().isVisible()).isFalse();
        type(robot, "#recording-to", "0:13");
        assertThat(model.toProperty().get()).isEqualTo(13);

        robot.interact(
                () -> robot.lookup("#recording-whole").queryAs(Button.class).fire());
        assertThat(model.toProperty().get()).isEqualTo(20);
        double second = leq();
        robot.interact(() -> channels(robot).setValue(1));
        assertThat(leq()).isCloseTo(second - 6.02, within(0.05));
        robot.interact(() -> model.offsetProperty().set(100.0));
        assertThat(text(robot, "#recording-leq")).endsWith("dB(A)");
        assertThat(robot.lookup("#recording-claim").tryQuery()).isEmpty();
    }

    @Test
    void whatIsBeingTypedStaysWhenLevelsArrive(FxRobot robot) {
        TextField end = robot.lookup("#recording-to").queryAs(TextField.class);
        robot.interact(end::requestFocus);
        robot.interact(end::clear);
        robot.write("1");
        robot.interact(() -> {
            model.offsetProperty().set(100.0);
            model.start();
        });
        assertThat(end.getText()).isEqualTo("1");
        robot.write("2").type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(model.toProperty().get()).isEqualTo(12);
        assertThat(end.getText()).isEqualTo("12 s");
    }

    @SuppressWarnings("unchecked")
    private static ComboBox<Integer> channels(FxRobot robot) {
        return robot.lookup("#recording-channel").queryAs(ComboBox.class);
    }

    private static void type(FxRobot robot, String id, String words) {
        TextField field = robot.lookup(id).queryAs(TextField.class);
        robot.interact(field::requestFocus);
        robot.interact(field::clear);
        robot.write(words).type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** The row of 1 kHz is lighter while the tone is louder, and lighter than that of 100 Hz. */
    @Test
    void louderIsLighter(FxRobot robot) {
        WritableImage[] image = new WritableImage[1];
        RecordingCanvas canvas = (RecordingCanvas) pane.getCenter();
        robot.interact(() -> image[0] = canvas.snapshot(null, null));
        RecordingFrame frame = RecordingFrame.of(canvas.getWidth(), canvas.getHeight(), SECONDS);
        double tone = frame.bottom() - 13.5 * frame.height() / 24;
        double low = frame.bottom() - 3.5 * frame.height() / 24;
        double quiet = lightness(image[0], frame.x(4), tone);
        double loud = lightness(image[0], frame.x(11), tone);
        double last = lightness(image[0], frame.x(17), tone);
        assertThat(loud).isGreaterThan(quiet + 0.1);
        assertThat(quiet).isGreaterThan(last + 0.05);
        assertThat(loud).isGreaterThan(lightness(image[0], frame.x(11), low) + 0.4);
    }

    private static double lightness(WritableImage image, double x, double y) {
        return image.getPixelReader().getColor((int) x, (int) y).grayscale().getBrightness();
    }

    @ParameterizedTest
    @CsvSource({"560, 300", "560, 500", "1100, 300", "1100, 500"})
    void nothingIsCutOff(double width, double height, FxRobot robot) {
        robot.interact(() -> {
            pane.setMinSize(width, height);
            pane.setMaxSize(width, height);
            stage.setWidth(width + 60);
            stage.setHeight(height + 60);
            model.choose(3, 12);
            pane.applyCss();
            pane.getScene().getRoot().layout();
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(pane.getWidth()).isEqualTo(width);
        for (Node node : robot.from(pane)
                .lookup(".label, .button, .text-field, .combo-box")
                .queryAll()) {
            if (isShown(node)) {
                Bounds inside = pane.sceneToLocal(node.localToScene(node.getBoundsInLocal()));
                assertThat(inside.getMaxX()).as(node.toString()).isLessThanOrEqualTo(width);
                assertThat(inside.getMaxY()).as(node.toString()).isLessThanOrEqualTo(height);
                if (node instanceof Labeled words && words.lookup(".text") instanceof Text drawn) {
                    assertThat(drawn.getText()).isEqualTo(words.getText().replaceFirst("_", ""));
                }
            }
        }
        assertThat(((RecordingCanvas) pane.getCenter()).getHeight()).isGreaterThan(height / 2.1);
    }

    private boolean isShown(Node node) {
        for (Node at = node; at != pane; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }

    @Test
    void aFileThatCannotBeReadIsSaid(FxRobot robot) throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.wav"), "no sound");
        robot.interact(() -> model.open(broken));
        assertThat(text(robot, "#recording-state")).startsWith("broken.wav: ");
        assertThat(model.stateProperty().get()).isEqualTo(State.FAILED);
        assertThat(robot.lookup("#recording-start").query().isVisible()).isTrue();
        assertThat(robot.lookup("#recording-from").query().isDisabled()).isTrue();
        robot.interact(() -> model.open(file));
        assertThat(text(robot, "#recording-state")).startsWith("Drag over the picture");
    }
}
