package hushmaze.app.model;

import hushmaze.assess.Methods;
import hushmaze.document.FontMeasure;
import hushmaze.size.Sizing;
import hushmaze.store.Presets;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.List;

/** A designer that judges by the estimate alone. */
public final class TestDesigner {
    private TestDesigner() {}

    /**
     * With the search the window has.
     *
     * @param runner for everything, searches too
     * @param unnamed file its work is kept in until it has one
     */
    public static Designer of(TaskRunner runner, Path unnamed) {
        return of(runner, runner, Sizing::ofPath, unnamed);
    }

    /**
     * With a search of its own.
     *
     * @param searches for searches alone
     * @param finder how boxes are found
     * @param unnamed file its work is kept in until it has one
     */
    public static Designer of(TaskRunner runner, TaskRunner searches, SizingModel.Finder finder, Path unnamed) {
        return new Designer(
                runner,
                searches,
                searches,
                finder,
                Presets.load(),
                new FontMeasure(),
                unnamed,
                List.of(Methods.ESTIMATE));
    }
}
