package hushmaze.size;

import hushmaze.project.Project;
import java.util.List;

/**
 * What a search found for a project.
 *
 * @param project with the recommended box in every path that has one, and the shares of the target these were found for
 * @param paths one per path
 * @param enoughAir whether these boxes together bring every path its air with the doors shut
 */
public record Sized(Project project, List<PathDesigns> paths, boolean enoughAir) {
    public Sized {
        paths = List.copyOf(paths);
    }
}
