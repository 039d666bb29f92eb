package hushmaze.app;

import hushmaze.app.model.Message;
import hushmaze.app.window.Questions;
import hushmaze.drawing.Drawing;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Answers in the place of a user: everything goes into one folder, and nothing is lost. */
record Answers(Path folder) implements Questions {
    @Override
    public Optional<Path> fileToOpen() {
        return Optional.of(folder.resolve("project.json"));
    }

    @Override
    public List<Path> filesOfReadings() {
        return List.of(folder.resolve("reading.txt"));
    }

    @Override
    public Optional<Path> fileToSave(String projectName) {
        return Optional.of(folder.resolve("project.json"));
    }

    @Override
    public Optional<Path> folderForDocuments() {
        return Optional.of(folder.resolve("documents"));
    }

    @Override
    public boolean mayReplaceIn(Path of) {
        return false;
    }

    @Override
    public boolean hasPrinter() {
        return false;
    }

    @Override
    public Optional<Supplier<Message>> printing(Drawing drawing) {
        return Optional.empty();
    }

    @Override
    public Unsaved unsaved(String projectName) {
        return Unsaved.SAVE;
    }

    @Override
    public boolean restore(String what) {
        return true;
    }
}
