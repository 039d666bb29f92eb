package hushmaze.app.window;

import hushmaze.app.model.Message;
import hushmaze.app.model.SettingsModel;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PagePrinter;
import hushmaze.drawing.Drawing;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** Asks in dialogs over the window. */
public final class DialogQuestions implements Questions {
    private static final String ENDING = ".json";
    private static final List<String> READINGS = List.of("*.wav", "*.WAV", "*.txt", "*.csv", "*.tsv");

    private final Stage stage;
    private final SettingsModel settings;

    /** @param settings know the folder to begin in */
    public DialogQuestions(Stage stage, SettingsModel settings) {
        this.settings = settings;
        this.stage = stage;
    }

    @Override
    public Optional<Path> fileToOpen() {
        return Optional.ofNullable(files("ask.open").showOpenDialog(stage)).map(File::toPath);
    }

    @Override
    public List<Path> filesOfReadings() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Texts.of("ask.readings"));
        folder().ifPresent(chooser::setInitialDirectory);
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(Texts.of("ask.readings.files"), READINGS),
                        new FileChooser.ExtensionFilter(Texts.of("ask.allFiles"), "*"));
        List<File> chosen = chooser.showOpenMultipleDialog(stage);
        if (chosen == null) {
            return List.of();
        }
        settings.lookedIn(chosen.get(0).toPath().getParent());
        return chosen.stream().map(File::toPath).toList();
    }

    @Override
    public Optional<Path> fileToSave(String projectName) {
        FileChooser chooser = files("ask.save");
        chooser.setInitialFileName(projectName.strip().replaceAll("[^\\p{L}\\p{N}._-]+", "-") + ENDING);
        return Optional.ofNullable(chooser.showSaveDialog(stage))
                .map(File::toPath)
                .map(p -> p.toString().contains(".") ? p : Path.of(p + ENDING));
    }

    private FileChooser files(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Texts.of(title));
        folder().ifPresent(chooser::setInitialDirectory);
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(Texts.of("ask.projects"), "*" + ENDING),
                        new FileChooser.ExtensionFilter(Texts.of("ask.allFiles"), "*"));
        return chooser;
    }

    /** Where something was chosen last, if that is still there: the dialogs refuse to begin elsewhere. */
    private Optional<File> folder() {
        return settings.folder().filter(Files::isDirectory).map(Path::toFile);
    }

    @Override
    public Optional<Path> folderForDocuments() {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(Texts.of("ask.folder"));
        folder().ifPresent(chooser::setInitialDirectory);
        Optional<Path> chosen = Optional.ofNullable(chooser.showDialog(stage)).map(File::toPath);
        chosen.ifPresent(settings::lookedIn);
        return chosen;
    }

    @Override
    public boolean mayReplaceIn(Path folder) {
        ButtonType go = new ButtonType(Texts.of("ask.replace.yes"), ButtonData.OK_DONE);
        return ask("ask.replace", folder.toString(), go, ButtonType.CANCEL) == go;
    }

    @Override
    public boolean hasPrinter() {
        return PagePrinter.isThere();
    }

    @Override
    public Optional<Supplier<Message>> printing(Drawing drawing) {
        return PagePrinter.ask(drawing, stage);
    }

    @Override
    public Unsaved unsaved(String projectName) {
        ButtonType save = new ButtonType(Texts.of("ask.unsaved.save"), ButtonData.YES);
        ButtonType drop = new ButtonType(Texts.of("ask.unsaved.drop"), ButtonData.NO);
        ButtonType answer = ask("ask.unsaved", projectName, save, drop, ButtonType.CANCEL);
        return answer == save ? Unsaved.SAVE : answer == drop ? Unsaved.DROP : Unsaved.CANCEL;
    }

    @Override
    public boolean restore(String what) {
        ButtonType yes = new ButtonType(Texts.of("ask.restore.yes"), ButtonData.YES);
        ButtonType no = new ButtonType(Texts.of("ask.restore.no"), ButtonData.NO);
        return ask("ask.restore", what, yes, no) == yes;
    }

    private ButtonType ask(String key, String about, ButtonType... answers) {
        Alert alert = new Alert(Alert.AlertType.CONFIRMATION, Texts.of(key + ".words", about), answers);
        alert.setTitle(Texts.of(key));
        alert.setHeaderText(Texts.of(key));
        alert.setGraphic(null);
        if (stage.getScene() != null) {
            alert.getDialogPane().getStylesheets().setAll(stage.getScene().getStylesheets());
            alert.getDialogPane().getStyleClass().add("designer");
        }
        if (stage.isShowing()) {
            alert.initOwner(stage);
        }
        return alert.showAndWait().orElse(ButtonType.CANCEL);
    }
}
