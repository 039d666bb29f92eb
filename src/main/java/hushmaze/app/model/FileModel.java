package hushmaze.app.model;

import hushmaze.assess.Assessment;
import hushmaze.document.DocumentSet;
import hushmaze.document.ExportFailure;
import hushmaze.drawing.Paper;
import hushmaze.project.Project;
import hushmaze.size.FirstLayout;
import hushmaze.store.Autosave;
import hushmaze.store.ProjectFile;
import hushmaze.store.SampleProjects;
import hushmaze.store.UnreadableFile;
import hushmaze.store.UnwritableFile;
import hushmaze.work.TaskRunner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The project's file: opening, saving, what is not saved yet, the side file with unsaved work, and the documents. */
public final class FileModel {
    private final EditModel edit;
    private final ResultModel results;
    private final TaskRunner runner;
    private final ObjectProperty<Message> message;
    private final Path unnamed;
    private final ReadOnlyObjectWrapper<Path> file = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper exporting = new ReadOnlyBooleanWrapper();
    private Project saved;
    private boolean autosaveFails;

    /** @param unnamed stands in for the user's file, to keep work that has none yet */
    FileModel(EditModel edit, ResultModel results, TaskRunner runner, ObjectProperty<Message> message, Path unnamed) {
        this.edit = edit;
        this.results = results;
        this.runner = runner;
        this.message = message;
        this.unnamed = unnamed;
        this.saved = edit.project();
        edit.whenAmended((before, after) -> saved = before.equals(saved) ? after : saved);
        edit.projectProperty().addListener((p, before, after) -> keep());
    }

    /** Where the project is saved; null if nowhere yet. */
    public ReadOnlyObjectProperty<Path> fileProperty() {
        return file.getReadOnlyProperty();
    }

    /** Whether there are changes that are not in the file. */
    public ReadOnlyBooleanProperty unsavedProperty() {
        return unsaved.getReadOnlyProperty();
    }

    public boolean isUnsaved() {
        return unsaved.get();
    }

    /** Whether documents are being written. */
    public ReadOnlyBooleanProperty exportingProperty() {
        return exporting.getReadOnlyProperty();
    }

    /** A new project from a sample. */
    public void newFrom(String sample) {
        Project project = SampleProjects.read(sample);
        begin(project, null, project);
    }

    /** A new project that is nowhere saved. */
    void newFrom(Project project) {
        begin(project, null, null);
    }

    /** Opens a file; a file that cannot be used is reported, and the project at hand stays. */
    public boolean open(Path from) {
        try {
            Project project = ProjectFile.read(from);
            begin(project, from, project);
            return true;
        } catch (UnreadableFile e) {
            message.set(new Message(true, e.getMessage()));
            return false;
        }
    }

    /** Whether work on a file (or, for null, on a project without one) was left unsaved. */
    public boolean hasLeftover(Path of) {
        return Autosave.find(side(of)).isPresent();
    }

    /** Takes up the work that was left unsaved; a side file that cannot be used is put aside and reported. */
    public boolean restore(Path of) {
        try {
            begin(Autosave.restore(side(of)), of, onDisk(of));
            return true;
        } catch (UnreadableFile e) {
            putAside(Autosave.sideFile(side(of)));
            message.set(new Message(true, e.getMessage()));
            return false;
        }
    }

    /** What is in the user's file; null if there is no file or nothing of use in it. */
    private static Project onDisk(Path file) {
        try {
            return file == null ? null : ProjectFile.read(file);
        } catch (UnreadableFile e) {
            return null;
        }
    }

    private void putAside(Path side) {
        try {
            Files.move(
                    side, side.resolveSibling(side.getFileName() + ".unusable"), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            message.set(new Message(true, Texts.of("file.autosaveFails", e.toString())));
        }
    }

    private void begin(Project project, Path from, Project inFile) {
        message.set(null);
        saved = inFile;
        file.set(from);
        edit.start(project);
        results.begin();
        keep();
    }

    /** Saves to the project's file, which there must be. */
    public boolean save() {
        return saveAs(file.get());
    }

    /** Saves to a file, which becomes the project's. */
    public boolean saveAs(Path to) {
        Project now = edit.project();
        try {
            ProjectFile.write(now, to);
        } catch (UnwritableFile e) {
            message.set(new Message(true, e.getMessage()));
            return false;
        }
        Path before = side(file.get());
        saved = now;
        file.set(to);
        unsaved.set(false);
        later(() -> Autosave.discard(before));
        later(() -> Autosave.discard(side(to)));
        message.set(new Message(false, Texts.of("file.saved", to.toString())));
        return true;
    }

    /** Writes all documents of the project as it is into a folder. */
    public void export(Path folder, Paper paper) {
        Project asked = edit.project();
        Optional<Assessment> known = results.complete(asked);
        exporting.set(true);
        runner.run(
                progress -> {
                    Project whole = FirstLayout.complete(asked, progress);
                    Assessment assessment = known.orElseGet(() -> results.assess(whole, results.best(), progress));
                    String text = ProjectFile.text(whole);
                    return DocumentSet.write(assessment, text, folder, paper, asked.units(), true);
                },
                written -> {
                    exporting.set(false);
                    message.set(new Message(false, exported(written, folder)));
                },
                e -> {
                    exporting.set(false);
                    String why = e instanceof ExportFailure ? e.getMessage() : ResultModel.explain(e, asked);
                    message.set(new Message(true, why));
                });
    }

    private static String exported(List<Path> written, Path folder) {
        return Texts.of("file.exported", String.valueOf(written.size()), folder.toString());
    }

    /** Removes the side file at the end, after the work was saved or given up. */
    public void forget() {
        if (Files.exists(Autosave.sideFile(side(file.get())))) {
            Autosave.discard(side(file.get()));
        }
    }

    private Path side(Path of) {
        return of == null ? unnamed : of;
    }

    /** After each change: work that is not in the file goes to the side file. */
    private void keep() {
        Project now = edit.project();
        unsaved.set(!now.equals(saved));
        Path beside = side(file.get());
        if (!unsaved.get()) {
            later(() -> Autosave.discard(beside));
            return;
        }
        later(() -> {
            makeFolder(beside);
            Autosave.save(now, beside);
        });
    }

    private static void makeFolder(Path of) {
        try {
            Files.createDirectories(of.toAbsolutePath().getParent());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Off the window's thread, in the order asked for; trouble is told once. */
    private void later(Runnable work) {
        runner.run(
                progress -> {
                    work.run();
                    return true;
                },
                done -> autosaveFails = false,
                e -> {
                    if (!autosaveFails) {
                        message.set(new Message(true, Texts.of("file.autosaveFails", e.getMessage())));
                    }
                    autosaveFails = true;
                });
    }
}
