package hushmaze.app;

import hushmaze.app.model.Designer;
import hushmaze.app.window.Commands;
import hushmaze.app.window.DesignerWindow;
import hushmaze.app.window.DialogQuestions;
import hushmaze.assess.Methods;
import hushmaze.document.FontMeasure;
import hushmaze.store.Presets;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.stage.Stage;

/** The designer. Its one argument is the project file to open; without it the first sample project is opened. */
public final class DesignerApp extends Application {
    private final BackgroundRunner runner = new BackgroundRunner();
    private final BackgroundRunner searches = new BackgroundRunner();
    private final BackgroundRunner trials = new BackgroundRunner();
    private Designer designer;

    /** Opens the window and returns when it is closed. */
    public static void main(String[] args) {
        launch(args);
    }

    @Override
    public void start(Stage stage) {
        Path unnamed = Path.of(System.getProperty("user.home"), ".hushmaze", "unnamed.json");
        designer = new Designer(
                runner,
                searches,
                trials,
                Presets.load(),
                new FontMeasure(),
                unnamed,
                List.of(Methods.ESTIMATE, Methods.QUICK, Methods.ALL));
        Commands commands = new Commands(designer, new DialogQuestions(stage));
        new DesignerWindow(designer, commands, stage).show();
        commands.beginWithGuide(
                getParameters().getRaw().stream().findFirst().map(Path::of).map(Path::toAbsolutePath));
    }

    @Override
    public void stop() {
        searches.close();
        trials.close();
        runner.close();
        designer.files().forget();
    }
}
