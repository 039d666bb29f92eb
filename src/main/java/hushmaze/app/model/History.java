package hushmaze.app.model;

import hushmaze.project.Project;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whole projects one after the other, each with what was done to get there; the oldest are forgotten. */
final class History {
    private static final int MOST = 300;

    private record Step(String description, Project project) {}

    private final List<Step> steps = new ArrayList<>();
    private int at;

    History(Project start) {
        steps.add(new Step("", start));
    }

    Project project() {
        return steps.get(at).project();
    }

    /** A new project after the present one; what was undone before is forgotten. */
    void push(String description, Project project) {
        steps.subList(at + 1, steps.size()).clear();
        steps.add(new Step(description, project));
        if (steps.size() > MOST) {
            steps.remove(0);
        }
        at = steps.size() - 1;
    }

    /** Puts a project in the present one's place, as part of the same step. */
    void amend(Project project) {
        steps.set(at, new Step(steps.get(at).description(), project));
    }

    /** What would be undone, if anything can be. */
    Optional<String> undoable() {
        return at > 0 ? Optional.of(steps.get(at).description()) : Optional.empty();
    }

    Optional<String> redoable() {
        return at + 1 < steps.size() ? Optional.of(steps.get(at + 1).description()) : Optional.empty();
    }

    void undo() {
        at = Math.max(0, at - 1);
    }

    void redo() {
        at = Math.min(steps.size() - 1, at + 1);
    }
}
