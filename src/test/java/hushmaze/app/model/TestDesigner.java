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
        // Changes that may mend a notice are not tried: they take time that few tests want to spend.
        return of(new Runners(runner, searches, searches, new DroppingRunner()), finder, unnamed);
    }

    /** One that tries changes that may mend a notice. */
    public static Designer mending(TaskRunner runner, Path unnamed) {
        return of(Runners.all(runner), Sizing::ofPath, unnamed);
    }

    private static Designer of(Runners runners, SizingModel.Finder finder, Path unnamed) {
        return new Designer(runners, finder, Presets.load(), new FontMeasure(), unnamed, List.of(Methods.ESTIMATE));
    }
}
