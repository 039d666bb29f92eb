package hushmaze.store;

import hushmaze.project.Project;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Keeps unsaved work in a side file beside the user's file, never in it: {@code cellar.json.autosave} for {@code
 * cellar.json}.
 */
public final class Autosave {
    private static final String ENDING = ".autosave";

    private Autosave() {}

    /** Where the side file of a user's file is. */
    public static Path sideFile(Path userFile) {
        return userFile.resolveSibling(userFile.getFileName() + ENDING);
    }

    /**
     * Keeps the work.
     *
     * @throws UnwritableFile if that is not possible; an older side file is then still there
     */
    public static void save(Project project, Path userFile) {
        ProjectFile.write(project, sideFile(userFile));
    }

    /** The side file, if there is one: work that was not saved when the program ended. */
    public static Optional<Path> find(Path userFile) {
        Path side = sideFile(userFile);
        return Files.isRegularFile(side) ? Optional.of(side) : Optional.empty();
    }

    /**
     * The work in the side file. The side file stays until it is discarded.
     *
     * @throws UnreadableFile if there is none or it cannot be used
     */
    public static Project restore(Path userFile) {
        return ProjectFile.read(sideFile(userFile));
    }

    /**
     * Removes the side file, after the work was saved or given up. Without a side file nothing happens.
     *
     * @throws UnwritableFile if it cannot be removed
     */
    public static void discard(Path userFile) {
        Path side = sideFile(userFile);
        try {
            Files.deleteIfExists(side);
        } catch (IOException e) {
            throw new UnwritableFile(
                    new FileProblem(side.toString(), "", "the file cannot be removed: " + FileBytes.reason(e)));
        }
    }
}
