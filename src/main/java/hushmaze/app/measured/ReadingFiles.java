package hushmaze.app.measured;

import java.nio.file.Path;
import java.util.List;

/** Where files of readings come from: a person who chooses them. */
public interface ReadingFiles {
    /** Levels or recordings; none if nothing was chosen. */
    List<Path> choose();
}
