package hushmaze.app.window;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.scene.Scene;

/** Lets work wait until the window was first laid out, so that it is seen sooner; from then on work is done at once. */
final class FirstFrameFirst implements Executor {
    private final Scene scene;
    private final Runnable pulse = this::seen;
    private List<Runnable> waiting = new ArrayList<>();
    private boolean done;

    FirstFrameFirst(Scene scene) {
        this.scene = scene;
        scene.addPostLayoutPulseListener(pulse);
    }

    /** On the window's thread only. */
    @Override
    public void execute(Runnable work) {
        if (waiting == null) {
            work.run();
        } else {
            waiting.add(work);
        }
    }

    /** Whether all that waited was done. */
    boolean isDone() {
        return done;
    }

    private void seen() {
        scene.removePostLayoutPulseListener(pulse);
        Platform.runLater(() -> {
            List<Runnable> all = waiting;
            waiting = null;
            all.forEach(Runnable::run);
            done = true;
        });
    }
}
