package hushmaze.app;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Runners;
import hushmaze.app.window.Commands;
import hushmaze.app.window.DesignerWindow;
import hushmaze.app.window.DialogQuestions;
import hushmaze.assess.Methods;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Application;
import javafx.stage.Stage;

/** The designer. Its one argument is the project file to open; without it the first sample project is opened. */
public final class DesignerApp extends Application {
    private final BackgroundRunner runner = new BackgroundRunner();
    private final BackgroundRunner searches = new BackgroundRunner();
    private final BackgroundRunner trials = new BackgroundRunner();
    private final BackgroundRunner mends = new BackgroundRunner();
    private Designer designer;

    /** Opens the window and returns when it is closed. */
    public static void main(String[] args) {
        Prepared.begin();
        launch(args);
    }

    @Override
    public void start(Stage stage) {
        Prepared prepared = Prepared.begun();
        Path unnamed = Path.of(System.getProperty("user.home"), ".hushmaze", "unnamed.json");
        designer = new Designer(
                new Runners(runner, searches, trials, mends),
                prepared.presets(),
                prepared.measure(),
                unnamed,
                List.of(Methods.ESTIMATE, Methods.QUICK, Methods.ALL));
        Commands commands = new Commands(designer, new DialogQuestions(stage, designer.settings()));
        Optional<Path> file =
                getParameters().getRaw().stream().findFirst().map(Path::of).map(Path::toAbsolutePath);
        // Where nothing has to be asked, results are worked out while the window is built.
        boolean asks = commands.mayAsk(file);
        if (!asks) {
            commands.beginWithGuide(file);
        }
        DesignerWindow window = new DesignerWindow(designer, commands, stage);
        FirstFrame.tell(window, designer);
        window.show();
        if (asks) {
            commands.beginWithGuide(file);
        }
    }

    @Override
    public void stop() {
        searches.close();
        trials.close();
        mends.close();
        runner.close();
        designer.files().forget();
        designer.settings().keepAtTheEnd();
    }
}
