package hushmaze.app.window;

import java.nio.file.Path;
import java.util.Optional;

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

    /** Where to save a project of this name. */
    Optional<Path> fileToSave(String projectName);

    /** Which folder the documents go to. */
    Optional<Path> folderForDocuments();

    /** Whether files in a folder that is not empty may be replaced. */
    boolean mayReplaceIn(Path folder);

    /** What to do with unsaved changes of a project of this name. */
    Unsaved unsaved(String projectName);

    /** Whether to take up work that was left unsaved; otherwise it is given up. */
    boolean restore(String what);
}
