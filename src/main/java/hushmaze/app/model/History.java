package hushmaze.app.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whole values one after the other, each with what was done to get there; the oldest are forgotten.
 *
 * @param <T> what is changed, a project for one
 */
final class History<T> {
    private static final int MOST = 300;

    private record Step<T>(String description, T value) {}

    private final List<Step<T>> steps = new ArrayList<>();
    private int at;

    History(T start) {
        steps.add(new Step<>("", start));
    }

    T value() {
        return steps.get(at).value();
    }

    /** A new value after the present one; what was undone before is forgotten. */
    void push(String description, T value) {
        steps.subList(at + 1, steps.size()).clear();
        steps.add(new Step<>(description, value));
        if (steps.size() > MOST) {
            steps.remove(0);
        }
        at = steps.size() - 1;
    }

    /** Puts a value in the present one's place, as part of the same step. */
    void amend(T value) {
        steps.set(at, new Step<>(steps.get(at).description(), value));
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
