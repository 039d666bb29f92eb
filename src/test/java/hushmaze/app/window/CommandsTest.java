package hushmaze.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Field;
import hushmaze.app.model.Message;
import hushmaze.app.model.Runners;
import hushmaze.assess.Methods;
import hushmaze.document.FontMeasure;
import hushmaze.drawing.Drawing;
import hushmaze.store.Presets;
import hushmaze.store.ProjectFile;
import hushmaze.store.SampleProjects;
import hushmaze.work.TaskRunner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property tests of the commands and of what follows from each answer. */
class CommandsTest {
    private static final Field FLOW = Field.of("path.brief.flow");

    @TempDir
    Path folder;

    private final Asked asked = new Asked();
    private Designer designer;
    private Commands commands;

    /** Gives set answers and counts the questions. */
    private final class Asked implements Questions {
        private Unsaved unsaved = Unsaved.CANCEL;
        private boolean restore = true;
        private boolean replace;
        private boolean printer;
        private int times;

        @Override
        public Optional<Path> fileToOpen() {
            return Optional.of(folder.resolve("other.json"));
        }

        @Override
        public List<Path> filesOfReadings() {
            return List.of();
        }

        @Override
        public Optional<Path> fileToSave(String projectName) {
            return Optional.of(folder.resolve("mine.json"));
        }

        @Override
        public Optional<Path> folderForDocuments() {
            return Optional.of(folder);
        }

        @Override
        public boolean mayReplaceIn(Path of) {
            times++;
            return replace;
        }

        @Override
        public boolean hasPrinter() {
            return printer;
        }

        @Override
        public Optional<Supplier<Message>> printing(Drawing drawing) {
            times++;
            return Optional.of(() -> new Message(false, drawing.pages().size() + " pages"));
        }

        @Override
        public Unsaved unsaved(String projectName) {
            times++;
            return unsaved;
        }

        @Override
        public boolean restore(String what) {
            times++;
            return restore;
        }
    }

    @BeforeEach
    void begin() {
        start(Optional.empty());
    }

    @Test
    void aRecentFileIsOpenedAndAMissingOneLeavesTheList() throws IOException {
        Path file = folder.resolve("mine.json");
        commands.saveAs();
        designer.files().newFrom("lesson-cabin");
        commands.openRecent(file);
        assertThat(designer.files().fileProperty().get()).isEqualTo(file);
        designer.files().newFrom("lesson-cabin");
        Files.delete(file);
        commands.openRecent(file);
        assertThat(designer.messageProperty().get().text()).contains("mine.json", "not there any more");
        assertThat(designer.settings().settings().recent()).isEmpty();
        assertThat(designer.files().fileProperty().get()).isNull();
    }

    @Test
    void aDroppedProjectIsOpenedAfterAskingAboutUnsavedWork() {
        Path file = folder.resolve("dropped.json");
        ProjectFile.write(SampleProjects.read("lesson-cabin"), file);
        designer.edit().enter(FLOW, "Airflow", "9 L/s");
        asked.unsaved = Questions.Unsaved.CANCEL;
        commands.openDropped(List.of(file));
        assertThat(asked.times).isEqualTo(1);
        assertThat(designer.files().fileProperty().get()).isNull();
        asked.unsaved = Questions.Unsaved.DROP;
        commands.openDropped(List.of(file));
        assertThat(designer.files().fileProperty().get()).isEqualTo(file);
        assertThat(designer.edit().project()).isEqualTo(SampleProjects.read("lesson-cabin"));
    }

    @Test
    void severalOrOtherThingsDroppedAreRefusedWithoutAsking() throws IOException {
        Path picture = Files.writeString(folder.resolve("picture.png"), "");
        Path inside = Files.createDirectory(folder.resolve("folder.json"));
        designer.edit().enter(FLOW, "Airflow", "9 L/s");
        commands.openDropped(List.of(picture, inside));
        assertThat(designer.messageProperty().get().text()).contains("2 files", "single file");
        for (Path other : List.of(picture, inside)) {
            commands.openDropped(List.of(other));
            assertThat(designer.messageProperty().get().text())
                    .contains(String.valueOf(other.getFileName()), "no project file");
        }
        assertThat(asked.times).isZero();
    }

    /** Somebody who has saved nothing yet is asked for a first box; who has is not, and whoever asks for it is. */
    @Test
    void theQuestionsComeFirstForWhoHasNothingYet() {
        assertThat(designer.guide().openProperty().get()).isFalse();
        commands.beginWithGuide(Optional.empty());
        assertThat(designer.guide().openProperty().get()).isTrue();
        designer.guide().leave();
        designer.files().saveAs(folder.resolve("mine.json"));
        commands.beginWithGuide(Optional.empty());
        assertThat(designer.guide().openProperty().get()).isFalse();
        commands.guide();
        assertThat(designer.guide().openProperty().get()).isTrue();
        commands.beginWithGuide(Optional.of(folder.resolve("mine.json")));
        assertThat(designer.guide().openProperty().get()).isFalse();
        commands.keep();
        assertThat(designer.edit().project().paths().get(0).kept()).hasSize(1);
    }

    @Test
    void pagesArePrintedWhereThereIsAPrinter() {
        commands.print();
        assertThat(designer.messageProperty().get().text()).contains("No printer is installed");
        assertThat(asked.times).isZero();
        asked.printer = true;
        commands.print();
        assertThat(designer.messageProperty().get().text()).matches("\\d\\d pages");
    }

    private void start(Optional<Path> file) {
        designer = new Designer(
                Runners.all(TaskRunner.ON_THIS_THREAD),
                Presets.load(),
                new FontMeasure(),
                folder.resolve("unnamed.json"),
                List.of(Methods.ESTIMATE));
        commands = new Commands(designer, asked);
        commands.begin(file);
    }

    private void change() {
        assertThat(designer.edit().enter(FLOW, "Airflow", "22 L/s")).isEmpty();
    }

    @Test
    void withoutChangesNothingIsAsked() {
        assertThat(commands.mayLeave()).isTrue();
        assertThat(asked.times).isZero();
    }

    @Test
    void unsavedChangesAreSavedDroppedOrStay() {
        change();
        assertThat(commands.mayLeave()).isFalse();
        asked.unsaved = Questions.Unsaved.DROP;
        assertThat(commands.mayLeave()).isTrue();
        assertThat(folder.resolve("mine.json")).doesNotExist();
        asked.unsaved = Questions.Unsaved.SAVE;
        assertThat(commands.mayLeave()).isTrue();
        assertThat(ProjectFile.read(folder.resolve("mine.json")))
                .isEqualTo(designer.edit().project());
        assertThat(asked.times).isEqualTo(3);
    }

    @Test
    void anotherProjectIsOpenedOnlyIfThisOneMayBeLeft() {
        ProjectFile.write(SampleProjects.read("lesson-cabin"), folder.resolve("other.json"));
        change();
        String name = designer.edit().project().name();
        commands.open();
        assertThat(designer.edit().project().name()).isEqualTo(name);
        asked.unsaved = Questions.Unsaved.DROP;
        commands.open();
        assertThat(designer.edit().project().name()).isNotEqualTo(name);
    }

    @Test
    void leftoverWorkIsOfferedAtTheStart() {
        change();
        var left = designer.edit().project();
        start(Optional.empty());
        assertThat(designer.edit().project()).isEqualTo(left);
        assertThat(designer.files().isUnsaved()).isTrue();
        asked.restore = false;
        start(Optional.empty());
        assertThat(designer.edit().project()).isNotEqualTo(left);
        assertThat(designer.files().hasLeftover(null)).isFalse();
    }

    @Test
    void aFileOfNoUseAtTheStartIsReportedOverTheFirstSample() throws IOException {
        Path bad = folder.resolve("bad.json");
        Files.writeString(bad, "not a project");
        start(Optional.of(bad));
        assertThat(designer.messageProperty().get().text()).contains("bad.json");
        assertThat(designer.edit().project().name())
                .isEqualTo(SampleProjects.read(SampleProjects.DEFAULT).name());
    }

    @Test
    void documentsGoIntoAFolderWithFilesOnlyIfTheUserSaysSo() throws IOException {
        Files.writeString(folder.resolve("something.txt"), "");
        commands.export();
        assertThat(folder.toFile().list()).containsExactly("something.txt");
        asked.replace = true;
        commands.export();
        assertThat(folder.toFile().list()).hasSizeGreaterThan(5);
    }

    @Test
    void savingGoesToTheProjectsFile() {
        assertThat(commands.save()).isTrue();
        change();
        assertThat(commands.save()).isTrue();
        assertThat(ProjectFile.read(folder.resolve("mine.json")))
                .isEqualTo(designer.edit().project());
        commands.switchUnits();
        assertThat(designer.files().isUnsaved()).isTrue();
    }
}
