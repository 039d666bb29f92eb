package hushmaze.app;

import hushmaze.app.model.Designer;
import javafx.application.Platform;
import javafx.scene.Scene;

/**
 * Says on standard output when the window is first seen, and when it first shows a drawing of the project; only if the
 * system property {@value #ASKED} is set. Whoever measures how long the program takes to start reads these lines.
 */
final class FirstFrame {
    /** Name of the property; any value will do. */
    static final String ASKED = "hushmaze.firstFrame";

    /** Said after the first frame of the window. */
    static final String WINDOW = "hushmaze: window";

    /** Said after the first frame with results. */
    static final String DRAWING = "hushmaze: drawing";

    private final Scene scene;
    private final Designer designer;
    private final Runnable pulse = this::look;
    private boolean seen;

    private FirstFrame(Scene scene, Designer designer) {
        this.scene = scene;
        this.designer = designer;
    }

    /** Watches a window that is about to be shown, if that is asked for. */
    static void tell(Scene scene, Designer designer) {
        if (System.getProperty(ASKED) != null) {
            scene.addPostLayoutPulseListener(new FirstFrame(scene, designer).pulse);
        }
    }

    /** The window is laid out and goes to the screen when this pulse ends. */
    private void look() {
        if (!seen) {
            seen = true;
            say(WINDOW);
            Platform.requestNextPulse();
        }
        if (designer.results().pathResult().isPresent()) {
            scene.removePostLayoutPulseListener(pulse);
            say(DRAWING);
        }
    }

    /** After the pulse. */
    private static void say(String what) {
        Platform.runLater(() -> System.out.println(what));
    }
}
