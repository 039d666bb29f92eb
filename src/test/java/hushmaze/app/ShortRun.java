package hushmaze.app;

import hushmaze.app.model.Question;
import hushmaze.cli.Main;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.stage.Window;

/**
 * Opens the window on a screen in memory, looks at every group of entries and every view, closes it, and assesses the first
 * sample on the command line: what a class list is made from when the program is packed. Argument: a folder for its files.
 */
public final class ShortRun {
    private static final long PATIENCE_MS = 60_000;
    private static final long LOOK_MS = 400;

    private ShortRun() {}

    public static void main(String[] args) throws Exception {
        System.setProperty("user.home", Path.of(args[0]).toAbsolutePath().toString());
        Thread window = new Thread(() -> Launcher.main(new String[0]), "window");
        window.setDaemon(true);
        window.start();
        long end = System.currentTimeMillis() + PATIENCE_MS;
        // The questions for a first box come first: their pages are looked at and put away.
        await("#guide-leave", end);
        for (int i = 0; i < Question.Step.values().length - 1; i++) {
            press("#guide-next");
        }
        press("#guide-leave");
        await("#verdicts .sentence", end);
        for (String group :
                new String[] {"room", "opening", "noise", "space", "materials", "box", "extras", "drawings"}) {
            look("#group-" + group);
        }
        for (String view : new String[] {"space", "spectra", "field", "air", "pages", "found", "kept", "sections"}) {
            look("#view-" + view);
        }
        Platform.exit();
        window.join(PATIENCE_MS);
        Main.main(new String[] {"assess", "presets/projects/trio-cellar.json", "--quick"});
    }

    private static void await(String what, long end) throws Exception {
        while (!seen(what)) {
            if (System.currentTimeMillis() > end) {
                throw new IllegalStateException("the window does not show " + what);
            }
            TimeUnit.MILLISECONDS.sleep(LOOK_MS);
        }
    }

    private static void press(String id) throws Exception {
        ask(() -> {
            ((ButtonBase) find(id)).fire();
            return true;
        });
        TimeUnit.MILLISECONDS.sleep(LOOK_MS);
    }

    /** Whether something is there. */
    private static boolean seen(String what) throws Exception {
        try {
            return ask(() -> !Window.getWindows().isEmpty() && find(what) instanceof Labeled);
        } catch (IllegalStateException e) {
            // The toolkit has not started yet.
            return false;
        }
    }

    private static void look(String id) throws Exception {
        ask(() -> {
            Node node = find(id);
            if (node instanceof TitledPane pane) {
                pane.setExpanded(true);
            } else if (node instanceof ToggleButton button) {
                button.fire();
            } else {
                throw new IllegalStateException("the window has no " + id);
            }
            return true;
        });
        TimeUnit.MILLISECONDS.sleep(LOOK_MS);
    }

    private static Node find(String what) {
        return Window.getWindows().get(0).getScene().getRoot().lookup(what);
    }

    private static boolean ask(Callable<Boolean> what) throws Exception {
        FutureTask<Boolean> task = new FutureTask<>(what);
        Platform.runLater(task);
        return task.get(PATIENCE_MS, TimeUnit.MILLISECONDS);
    }
}
