package hushmaze.assess;

import hushmaze.project.Project;
import hushmaze.quantity.Notice;
import hushmaze.quantity.UnitSystem;
import java.util.ArrayList;
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

    /** The same of a project that differs only by what was measured, which nothing here depends on. */
    public Assessment measuredLike(Project other) {
        Project measured = project.measuredLike(other);
        List<PathResult> results = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            results.add(paths.get(i).of(measured.paths().get(i)));
        }
        return new Assessment(measured, room, results, notices);
    }

    /**
     * The same as it is shown and printed in some units: what is said of printed sizes, of joints that would help and of
     * screws as they are sold follows them.
     */
    public Assessment in(UnitSystem units) {
        if (units == project.units()) {
            return this;
        }
        Project shown = project.in(units);
        return new Assessment(
                shown, room, paths.stream().map(result -> result.in(shown)).toList(), notices);
    }

    /** Whether the room as a whole is as asked: all that is heard in it within the target, and a way in and out for the air. */
    public boolean roomOk() {
        return roomQuiet() && roomAired();
    }

    /** Whether all that is heard in the room is within the target. */
    public boolean roomQuiet() {
        return RoomVerdict.quiet(this);
    }

    /** Whether the air has a way in and out of the room, and as much comes as it needs. */
    public boolean roomAired() {
        return RoomVerdict.aired(this);
    }

    /** Whether the room and every verdict of every path are good. */
    public boolean ok() {
        return roomOk() && paths.stream().allMatch(PathResult::ok);
    }
}
