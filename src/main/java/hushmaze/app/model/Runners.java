package hushmaze.app.model;

import hushmaze.work.TaskRunner;

/**
 * What runs beside the window, each on its own, so that none waits for another.
 *
 * @param results for results, files and pages
 * @param searches for searches of boxes
 * @param trials for other values of a number, kept boxes and the sound in a box
 * @param mends for changes that may mend a notice
 */
public record Runners(TaskRunner results, TaskRunner searches, TaskRunner trials, TaskRunner mends) {
    /** One for everything. */
    public static Runners all(TaskRunner runner) {
        return new Runners(runner, runner, runner, runner);
    }
}
