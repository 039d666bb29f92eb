package hushmaze.app;

import hushmaze.app.model.Designer;
import hushmaze.app.model.TestDesigner;
import hushmaze.app.window.Commands;
import hushmaze.app.window.DesignerWindow;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Stage;

/** The window of a designer that judges by the estimate alone, with a new project. */
final class TestWindow {
    private TestWindow() {}

    /**
     * Shows it.
     *
     * @param folder for everything that is written
     * @param unnamed name of the file work is kept in until it has one
     */
    static Designer show(Stage stage, TaskRunner runner, Path folder, String unnamed) {
        return show(stage, TestDesigner.of(runner, folder.resolve(unnamed)), folder);
    }

    /** Shows that of a designer. */
    static Designer show(Stage stage, Designer designer, Path folder) {
        Commands commands = new Commands(designer, new Answers(folder));
        new DesignerWindow(designer, commands, stage).show();
        commands.begin(Optional.empty());
        return designer;
    }
}
