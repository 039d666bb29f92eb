package hushmaze.app;

import hushmaze.app.window.Questions;
import java.nio.file.Path;
import java.util.Optional;

/** Answers in the place of a user: everything goes into one folder, and nothing is lost. */
record Answers(Path folder) implements Questions {
    @Override
    public Optional<Path> fileToOpen() {
        return Optional.of(folder.resolve("project.json"));
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
    public Unsaved unsaved(String projectName) {
        return Unsaved.SAVE;
    }

    @Override
    public boolean restore(String what) {
        return true;
    }
}
