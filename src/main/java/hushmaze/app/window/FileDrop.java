package hushmaze.app.window;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** A project file that is dragged into the window is opened. */
final class FileDrop {
    private FileDrop() {}

    static void into(Scene scene, Commands commands) {
        scene.addEventHandler(DragEvent.DRAG_OVER, e -> {
            if (e.getDragboard().hasFiles()) {
                e.acceptTransferModes(TransferMode.COPY, TransferMode.MOVE, TransferMode.LINK);
                e.consume();
            }
        });
        scene.addEventHandler(DragEvent.DRAG_DROPPED, e -> {
            List<Path> files =
                    e.getDragboard().getFiles().stream().map(File::toPath).toList();
            e.setDropCompleted(!files.isEmpty());
            e.consume();
            if (!files.isEmpty()) {
                // Whoever dragged it is not kept waiting for answers.
                Platform.runLater(() -> commands.openDropped(files));
            }
        });
    }
}
