package hushmaze.app.window;

import hushmaze.app.model.Designer;
import hushmaze.app.model.FileModel;
import hushmaze.app.model.Message;
import hushmaze.app.model.Texts;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.SampleProjects;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What the menus do, with the questions that have to be asked on the way. */
public final class Commands {
    private final Designer designer;
    private final FileModel files;
    private final Questions questions;
    private final Runnable first;

    public Commands(Designer designer, Questions questions) {
        this(designer, questions, () -> {});
    }

    private Commands(Designer designer, Questions questions, Runnable first) {
        this.first = first;
        this.designer = designer;
        this.files = designer.files();
        this.questions = questions;
    }

    /** The same commands, each of them after something else. */
    Commands after(Runnable before) {
        return new Commands(designer, questions, before);
    }

    /** The first project of the session: a file if one was named, else the first sample, or what was left unsaved. */
    public void begin(Optional<Path> file) {
        if (!beginWithOwn(file)) {
            newSample();
        }
        designer.settings().tellProblem();
    }

    /** The same, with the questions for a first box for somebody who has saved nothing yet. */
    public void beginWithGuide(Optional<Path> file) {
        if (!beginWithOwn(file)) {
            newSample();
            if (designer.settings().settings().recent().isEmpty()) {
                designer.guide().start();
            }
        }
        designer.settings().tellProblem();
    }

    private void newSample() {
        Message problem = designer.messageProperty().get();
        files.newFrom(SampleProjects.DEFAULT);
        if (problem != null) {
            designer.messageProperty().set(problem);
        }
    }

    private boolean beginWithOwn(Optional<Path> file) {
        if (file.isPresent() && openOrRestore(file.get())) {
            return true;
        }
        Message problem = designer.messageProperty().get();
        boolean restored =
                files.hasLeftover(null) && questions.restore(Texts.of("ask.restore.unnamed")) && files.restore(null);
        if (restored && problem != null) {
            designer.messageProperty().set(problem);
        }
        return restored;
    }

    /** Puts the box in the path by, to be compared. */
    void keep() {
        designer.kept().keep().ifPresent(problem -> designer.messageProperty().set(new Message(true, problem)));
    }

    /** Asks for a first box; the project at hand stays until the questions are answered. */
    void guide() {
        if (mayLeave()) {
            designer.guide().start();
        }
    }

    /** Whether there may be something to ask before the first project of the session is there. */
    public boolean mayAsk(Optional<Path> file) {
        return files.hasLeftover(null) || file.isPresent() && files.hasLeftover(file.get());
    }

    /** Which files of levels or recordings to read. */
    List<Path> readings() {
        return questions.filesOfReadings();
    }

    void newFrom(String sample) {
        if (mayLeave()) {
            files.newFrom(sample);
        }
    }

    void open() {
        if (mayLeave()) {
            questions.fileToOpen().ifPresent(this::openOrRestore);
        }
    }

    /** Opens a file of the list of recent ones; one that is not there any more leaves the list. */
    void openRecent(Path file) {
        if (Files.notExists(file)) {
            designer.settings().forget(file);
            tell("recent.missing", file.toString());
        } else if (mayLeave()) {
            openOrRestore(file);
        }
    }

    /** Opens what was dragged into the window. */
    void openDropped(List<Path> dropped) {
        if (dropped.size() != 1) {
            tell("drop.several", String.valueOf(dropped.size()));
        } else if (!dropped.get(0).toString().toLowerCase(Locale.ROOT).endsWith(".json")
                || !Files.isRegularFile(dropped.get(0))) {
            tell("drop.kind", dropped.get(0).toString());
        } else if (mayLeave()) {
            openOrRestore(dropped.get(0));
        }
    }

    private void tell(String key, String about) {
        designer.messageProperty().set(new Message(true, Texts.of(key, about)));
    }

    private boolean openOrRestore(Path file) {
        boolean restored = files.hasLeftover(file) && questions.restore(file.toString()) && files.restore(file);
        return restored || files.open(file);
    }

    boolean save() {
        first.run();
        return files.fileProperty().get() == null ? saveAs() : files.save();
    }

    boolean saveAs() {
        first.run();
        Optional<Path> to = questions.fileToSave(designer.edit().project().name());
        return to.isPresent() && files.saveAs(to.get());
    }

    void export() {
        first.run();
        questions
                .folderForDocuments()
                .filter(folder -> isEmpty(folder) || questions.mayReplaceIn(folder))
                .ifPresent(folder ->
                        files.export(folder, designer.pages().paperProperty().get()));
    }

    /** Prints the pages of the path looked at, if there is a printer. */
    void print() {
        first.run();
        if (!questions.hasPrinter()) {
            designer.messageProperty().set(new Message(true, Texts.of("print.none")));
            return;
        }
        designer.pages()
                .make(drawing -> questions
                        .printing(drawing)
                        .ifPresent(work -> designer.pages().run(progress -> work.get())));
    }

    private static boolean isEmpty(Path folder) {
        if (!Files.isDirectory(folder)) {
            return true;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        } catch (IOException e) {
            // The export itself will meet the same trouble, and tell.
            return true;
        }
    }

    void switchUnits() {
        boolean inch = designer.edit().project().units() == UnitSystem.INCH;
        designer.edit().setUnits(inch ? UnitSystem.METRIC : UnitSystem.INCH);
    }

    /** Whether the project at hand may be left: saved, or its changes given up. */
    public boolean mayLeave() {
        first.run();
        if (!files.isUnsaved()) {
            return true;
        }
        return switch (questions.unsaved(designer.edit().project().name())) {
            case SAVE -> save();
            case DROP -> true;
            case CANCEL -> false;
        };
    }
}
