package hushmaze.assess;

import hushmaze.project.Project;
import hushmaze.quantity.Notice;
import java.util.List;

/**
 * Everything the program says about a project.
 *
 * @param project as assessed; every path has a box
 * @param room the room as a whole
 * @param paths in the project's order
 * @param notices about the room and its paths together; those of one path are with it
 */
public record Assessment(Project project, RoomResult room, List<PathResult> paths, List<Notice> notices) {
    public Assessment {
        paths = List.copyOf(paths);
        notices = List.copyOf(notices);
    }

    /** Whether every verdict of every path is good. */
    public boolean ok() {
        return paths.stream().allMatch(PathResult::ok);
    }
}
