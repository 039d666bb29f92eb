package hushmaze.app.window;

import hushmaze.app.model.Message;
import hushmaze.drawing.Drawing;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What only the user can say. */
public interface Questions {
    /** What to do with unsaved changes. */
    enum Unsaved {
        SAVE,
        DROP,
        CANCEL
    }

    /** Which file to open. */
    Optional<Path> fileToOpen();

    /** Which files of levels or recordings to read; none if nothing is chosen. */
    List<Path> filesOfReadings();

    /** Where to save a project of this name. */
    Optional<Path> fileToSave(String projectName);

    /** Which folder the documents go to. */
    Optional<Path> folderForDocuments();

    /** Whether files in a folder that is not empty may be replaced. */
    boolean mayReplaceIn(Path folder);

    /** Whether there is a printer. */
    boolean hasPrinter();

    /** Which printer to print a drawing on: the work of it, which tells how it ended; nothing if it was called off. */
    Optional<Supplier<Message>> printing(Drawing drawing);

    /** What to do with unsaved changes of a project of this name. */
    Unsaved unsaved(String projectName);

    /** Whether to take up work that was left unsaved; otherwise it is given up. */
    boolean restore(String what);
}
