package hushmaze.app;

import hushmaze.app.model.Designer;
import hushmaze.app.window.DesignerWindow;
import javafx.application.Platform;
import javafx.scene.Scene;

/**
 * Says on standard output when the window is first seen, when it first shows a drawing of the project, and when it also shows
 * what it leaves for after its first frame; only if the
 * system property {@value #ASKED} is set. Whoever measures how long the program takes to start reads these lines.
 */
final class FirstFrame {
    /** Name of the property; any value will do. */
    static final String ASKED = "hushmaze.firstFrame";

    /** Said after the first frame of the window. */
    static final String WINDOW = "hushmaze: window";

    /** Said after the first frame with results. */
    static final String DRAWING = "hushmaze: drawing";

    /** Said after the first frame with results and with all entries and notices. */
    static final String WHOLE = "hushmaze: whole";

    private final DesignerWindow window;
    private final Scene scene;
    private final Designer designer;
    private final Runnable pulse = this::look;
    private boolean seen;
    private boolean drawn;

    private FirstFrame(DesignerWindow window, Designer designer) {
        this.window = window;
        this.scene = window.scene();
        this.designer = designer;
    }

    /** Watches a window that is about to be shown, if that is asked for. */
    static void tell(DesignerWindow window, Designer designer) {
        if (System.getProperty(ASKED) != null) {
            window.scene().addPostLayoutPulseListener(new FirstFrame(window, designer).pulse);
        }
    }

    /** The window is laid out and goes to the screen when this pulse ends. */
    private void look() {
        if (!seen) {
            seen = true;
            say(WINDOW);
            Platform.requestNextPulse();
        }
        if (!drawn && designer.results().pathResult().isPresent()) {
            drawn = true;
            say(DRAWING);
        }
        if (drawn && window.isWhole()) {
            scene.removePostLayoutPulseListener(pulse);
            say(WHOLE);
        }
    }

    /** After the pulse. */
    private static void say(String what) {
        Platform.runLater(() -> System.out.println(what));
    }
}
