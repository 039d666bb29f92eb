package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.app.model.ResultModel.State;
import hushmaze.assess.Assessment;
import hushmaze.build.CutItem;
import hushmaze.build.CutList;
import hushmaze.drawing.Paper;
import hushmaze.material.Board;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.Autosave;
import hushmaze.store.Presets;
import hushmaze.store.ProjectFile;
import hushmaze.work.TaskRunner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property tests of the view models, without a window: edits, refusals, undo, laying out, files, documents. */
class DesignerTest {
    private static final Field FLOW = Field.of("path.brief.flow");
    private static final Field GAP = Field.of("path.box.turnGap");
    private static final Field DEPTH = Field.of("path.brief.space.depth");

    @TempDir
    Path folder;

    private Designer designer;

    @BeforeEach
    void open() {
        designer = designer(TaskRunner.ON_THIS_THREAD);
        designer.files().newFrom("lesson-cabin");
    }

    private Designer designer(TaskRunner runner) {
        return TestDesigner.of(runner, folder.resolve("unnamed.json"));
    }

    private Project project() {
        return designer.edit().project();
    }

    private Assessment results() {
        return designer.results().assessmentProperty().get();
    }

    @Test
    void aNewProjectIsCompleteJudgedAndHasNothingToSave() {
        assertThat(project().paths()).allSatisfy(p -> assertThat(p.box()).isNotNull());
        assertThat(results().project()).isEqualTo(project());
        assertThat(designer.results().stateProperty().get()).isEqualTo(State.CURRENT);
        assertThat(designer.files().isUnsaved()).isFalse();
        assertThat(designer.edit().undoableProperty().get()).isEmpty();
        assertThat(designer.titleProperty().get()).contains(project().name()).doesNotContain("not saved");
    }

    @Test
    void anEntryMayBeTypedInAnyUnit() {
        assertThat(designer.edit().enter(FLOW, "Airflow", "20 cfm")).isEmpty();
        // 20 cfm = 20 x 0.028316846592 m3 / 60 s
        assertThat(project().paths().get(0).brief().flow()).isCloseTo(0.009438948864, within(1e-12));
        assertThat(results().paths().get(0).pathAir().flow()).isCloseTo(0.009438948864, within(1e-12));
        assertThat(designer.files().isUnsaved()).isTrue();
        assertThat(designer.titleProperty().get()).contains("not saved");
    }

    @Test
    void aFlowLeftBlankStaysBlankWhileTheResultsCarryWhatIsNeeded() {
        designer.edit().edit("plain", PlainAir::of);
        designer.extras().turn(Extra.USE, true);
        assertThat(designer.edit().enter(FLOW, "Airflow", "")).isEmpty();
        assertThat(project().paths().get(0).brief().flow()).isNull();
        assertThat(designer.results().stateProperty().get()).isEqualTo(State.CURRENT);
        // 320 W / (1.158 kg/m³ · 1006 J/(kg·K) · 6 K), the density that of 300 m and 21 °C, dry
        assertThat(results().paths().get(0).pathAir().flow()).isCloseTo(0.0458, within(0.0005));
        assertThat(designer.edit().undoableProperty().get()).isEqualTo("Airflow");
        designer.edit().undo();
        assertThat(results().paths().get(0).pathAir().flow()).isEqualTo(0.028);
    }

    @Test
    void aFlowThatDoesNotFollowIsExplainedInTheWordsOfTheWindow() {
        designer.edit().edit("plain", PlainAir::of);
        designer.extras().turn(Extra.USE, true);
        designer.edit().enter(FLOW, "Airflow", "60 L/s");
        designer.paths().add();
        assertThat(designer.edit().enter(FLOW, "Airflow", "")).isEmpty();
        assertThat(designer.results().stateProperty().get()).isEqualTo(State.FAILED);
        assertThat(designer.results().problemProperty().get())
                .startsWith("New path, Airflow: nothing is not accepted; it must be given: ")
                .contains("60.0 L/s");
    }

    @Test
    void aWrongEntryIsRefusedWithFieldValueLimitAndUnit() {
        Project before = project();
        assertThat(designer.edit().enter(FLOW, "Airflow", "6000 L/s"))
                .hasValue("Airflow: 6000 L/s is not accepted; it must be from 0.1 to 5000 L/s.");
        assertThat(designer.edit().enter(FLOW, "Airflow", "12 mm").orElseThrow())
                .contains("Airflow", "12 mm", "an airflow");
        assertThat(designer.edit()
                        .enter(Field.of("room.people"), "People", "2.5")
                        .orElseThrow())
                .contains("People", "2.5", "a whole number");
        assertThat(project()).isSameAs(before);
        assertThat(designer.edit().undoableProperty().get()).isEmpty();
    }

    @Test
    void bandsAreTypedInOneLineInAnyUnit() {
        BandsText area = new BandsText(designer.edit(), Field.of("room.absorptionArea"));
        Project before = project();
        assertThat(area.enter("Area", area.shown())).isEmpty();
        assertThat(project()).isEqualTo(before);
        assertThat(area.enter("Area", "10 20 30 40 50 60 70 80 ft2")).isEmpty();
        // a square foot is 0.09290304 square metres
        assertThat(project().room().absorptionArea().get(7)).isCloseTo(7.4322432, within(1e-9));
        assertThat(area.enter("Area", "1 2 3").orElseThrow()).contains("Area: 3 values", "8 values");
        BandsText own = new BandsText(designer.edit(), Field.of("room.ownNoise"));
        assertThat(own.enter("Noise", " ")).isEmpty();
        assertThat(project().room().ownNoise()).isNull();
        assertThat(own.enter("Noise", "30 25 20 15 10 8 8 8")).isEmpty();
        assertThat(own.shown()).isEqualTo("30  25  20  15  10  8  8  8  dB");
    }

    @Test
    void aRefusalByAnotherFieldNamesThatFieldInTheWordsOfTheWindow() {
        Project before = project();
        String said = designer.edit()
                .enter(Field.of("path.box.clearLength"), "Clear length of a pass", "150 mm")
                .orElseThrow();
        assertThat(said).contains("is not accepted").contains("mm").doesNotContain("clearLength", "turnGap");
        assertThat(project()).isSameAs(before);
    }

    @Test
    void undoAndRedoGoThroughWholeProjects() {
        Project first = project();
        designer.edit().enter(FLOW, "Airflow", "11 L/s");
        Project second = project();
        designer.edit().enter(GAP, "Gap", "155 mm");
        Project third = project();
        assertThat(designer.edit().undoableProperty().get()).isEqualTo("Gap");
        designer.edit().undo();
        assertThat(project()).isEqualTo(second);
        assertThat(designer.edit().redoableProperty().get()).isEqualTo("Gap");
        designer.edit().undo();
        assertThat(project()).isEqualTo(first);
        assertThat(designer.files().isUnsaved()).isFalse();
        assertThat(results().project()).isEqualTo(first);
        designer.edit().redo();
        designer.edit().redo();
        assertThat(project()).isEqualTo(third);
        assertThat(results().project()).isEqualTo(third);
    }

    @Test
    void enteringWhatIsThereIsNoEdit() {
        designer.edit().enter(FLOW, "Airflow", designer.edit().shown(FLOW));
        assertThat(designer.edit().undoableProperty().get()).isEmpty();
    }

    @Test
    void aChosenBoardGoesIntoTheBoxToo() {
        var board = Presets.load().board("Birch plywood 18 mm");
        assertThat(designer.edit().set(Field.of("path.brief.construction.board"), "Board", board))
                .isEmpty();
        assertThat(project().paths().get(0).box().shell()).containsOnly(board);
        assertThat(project().paths().get(0).box().baffleBoard()).isEqualTo(board);
    }

    @Test
    void aMeasuredBoardMovesTheSizesAndSaysSo() {
        Field thickness = Field.of("path.brief.construction.board.thickness");
        Field source = Field.of("path.brief.construction.board.source");
        Board before = project().paths().get(0).brief().construction().board();
        CutList cut = results().paths().get(0).cutList();
        assertThat(designer.edit()
                        .enterSaying(thickness, source, "Real thickness", "18.4", Texts.of("source.thickness")))
                .isEmpty();
        Board after = project().paths().get(0).brief().construction().board();
        assertThat(after.thickness()).isCloseTo(0.0184, within(1e-12));
        assertThat(after.source()).startsWith(before.source()).endsWith("thickness as measured.");
        assertThat(project().paths().get(0).box().shell()).containsOnly(after);
        assertThat(project().paths().get(0).box().baffleBoard()).isEqualTo(after);
        // The broad faces are cut over two walls, and wider by one board for every baffle.
        double more = after.thickness() - before.thickness();
        CutItem now = results().paths().get(0).cutList().boards().get(0);
        assertThat(now.length() - cut.boards().get(0).length()).isCloseTo(2 * more, within(1e-9));
        assertThat(designer.edit()
                        .enterSaying(thickness, source, "Real thickness", "18.5 mm", Texts.of("source.thickness")))
                .isEmpty();
        assertThat(project().paths().get(0).brief().construction().board().source())
                .isEqualTo(after.source());
        designer.edit().undo();
        designer.edit().undo();
        assertThat(project().paths().get(0).brief().construction().board()).isEqualTo(before);
        assertThat(designer.edit()
                        .enterSaying(thickness, source, "Real thickness", "2 mm", Texts.of("source.thickness")))
                .hasValueSatisfying(said -> assertThat(said).contains("Real thickness", "from 3 to 100 mm"));
    }

    @Test
    void aThicknessIsShownFinerThanLengthsAreCut() {
        Field thickness = Field.of("path.brief.construction.board.thickness");
        Field source = Field.of("path.brief.construction.board.source");
        designer.edit().setUnits(UnitSystem.INCH);
        assertThat(designer.edit()
                        .enterSaying(thickness, source, "Real thickness", "18.4 mm", Texts.of("source.thickness")))
                .isEmpty();
        assertThat(designer.edit().shown(thickness)).isEqualTo("0.724 in");
        designer.edit().setUnits(UnitSystem.METRIC);
        assertThat(designer.edit().shown(thickness)).isEqualTo("18.4 mm");
    }

    @Test
    void aBoxOfMixedBoardsKeepsTheOthersWhenOneIsMeasured() {
        Field thickness = Field.of("path.brief.construction.board.thickness");
        Field source = Field.of("path.brief.construction.board.source");
        Board board = project().paths().get(0).brief().construction().board();
        Board plaster = new Board("plasterboard", 0.0125, 700, 2e9, 0.02, false, "invented");
        UnaryOperator<VentPath> mixed = path -> path.withBox(path.box().ofBoards(List.of(board, plaster), board));
        designer.edit()
                .edit("mixed", p -> p.withPaths(p.paths().stream().map(mixed).toList()));
        assertThat(designer.edit()
                        .enterSaying(thickness, source, "Real thickness", "18.4", Texts.of("source.thickness")))
                .isEmpty();
        Board after = project().paths().get(0).brief().construction().board();
        assertThat(project().paths().get(0).box().shell()).containsExactly(after, plaster);
        assertThat(project().paths().get(0).box().baffleBoard()).isEqualTo(after);
    }

    @Test
    void unitsAreSwitchedForEverythingShown() {
        designer.edit().setUnits(UnitSystem.INCH);
        designer.edit().enter(DEPTH, "Depth", "15 3/4");
        assertThat(designer.edit().shown(DEPTH)).isEqualTo("15 3/4 in");
        assertThat(project().paths().get(0).brief().space().depth()).isCloseTo(0.40005, within(1e-9));
        assertThat(designer.edit().shown(FLOW)).endsWith(" cfm");
    }

    @Test
    void aBoxIsLaidOutFromTheWishes() {
        var proposed = project().paths().get(0).box();
        designer.edit().enter(GAP, "Gap", "200 mm");
        assertThat(project().paths().get(0).box()).isNotEqualTo(proposed);
        designer.results().layOut();
        assertThat(designer.messageProperty().get().problem()).isFalse();
        assertThat(designer.results().stateProperty().get()).isEqualTo(State.CURRENT);
        designer.edit().undo();
        assertThat(designer.edit().shown(GAP)).isEqualTo("200 mm");
    }

    @Test
    void whereNoBoxIsPossibleTheLimitsThatWouldHaveToGiveAreNamed() {
        designer.edit().enter(DEPTH, "Depth", "60 mm");
        Project before = project();
        designer.results().layOut();
        assertThat(designer.messageProperty().get().problem()).isTrue();
        assertThat(designer.messageProperty().get().text())
                .contains("No box keeps every limit")
                .contains("deep instead of 60 mm");
        assertThat(project()).isSameAs(before);
    }

    @Test
    void whatIsSavedIsOpenedAgain() {
        Path file = folder.resolve("cabin.json");
        designer.edit().enter(FLOW, "Airflow", "9 L/s");
        assertThat(Autosave.find(folder.resolve("unnamed.json"))).isPresent();
        Project saved = project();
        assertThat(designer.files().saveAs(file)).isTrue();
        assertThat(designer.files().isUnsaved()).isFalse();
        assertThat(Autosave.find(folder.resolve("unnamed.json"))).isEmpty();
        designer.files().newFrom("trio-cellar");
        assertThat(designer.files().open(file)).isTrue();
        assertThat(project()).isEqualTo(saved);
        assertThat(designer.files().fileProperty().get()).isEqualTo(file);
        assertThat(designer.titleProperty().get()).contains("cabin.json");
    }

    @Test
    void unsavedWorkIsKeptBesideTheFileAndTakenUpAgain() {
        Path file = folder.resolve("cabin.json");
        designer.files().saveAs(file);
        Project saved = project();
        designer.edit().enter(FLOW, "Airflow", "9 L/s");
        Project unsaved = project();

        designer = designer(TaskRunner.ON_THIS_THREAD);
        assertThat(designer.files().hasLeftover(file)).isTrue();
        assertThat(designer.files().restore(file)).isTrue();
        assertThat(project()).isEqualTo(unsaved);
        assertThat(designer.files().isUnsaved()).isTrue();
        assertThat(ProjectFile.read(file)).isEqualTo(saved);
        assertThat(designer.files().hasLeftover(file)).isTrue();
        designer.files().save();
        assertThat(designer.files().hasLeftover(file)).isFalse();
        assertThat(ProjectFile.read(file)).isEqualTo(unsaved);
    }

    @Test
    void aSideFileThatIsOfNoUseIsPutAside() throws IOException {
        Path file = folder.resolve("cabin.json");
        designer.files().saveAs(file);
        Files.writeString(Autosave.sideFile(file), "{ half a");
        Project before = project();
        assertThat(designer.files().restore(file)).isFalse();
        assertThat(designer.messageProperty().get().problem()).isTrue();
        assertThat(project()).isSameAs(before);
        assertThat(folder.resolve("cabin.json.autosave.unusable")).exists();
    }

    @Test
    void aFileOfNoUseIsReportedAndTheProjectStays() throws IOException {
        Path bad = folder.resolve("bad.json");
        Files.writeString(bad, "{\"formatVersion\": 1, \"name\": 7}");
        Project before = project();
        assertThat(designer.files().open(bad)).isFalse();
        assertThat(designer.messageProperty().get().text()).contains("bad.json", "name");
        assertThat(project()).isSameAs(before);
        assertThat(designer.files().open(folder.resolve("missing.json"))).isFalse();
        assertThat(designer.messageProperty().get().text()).contains("missing.json");
    }

    @Test
    void damagedTruncatedAndNewerFilesAreReportedAndTheWindowLivesOn() throws IOException {
        Path good = folder.resolve("good.json");
        designer.files().saveAs(good);
        Project before = project();
        String text = Files.readString(good);
        List<String> contents = List.of(
                text.substring(0, text.length() / 2),
                text.replace("\"formatVersion\": 1", "\"formatVersion\": 9"),
                text.replaceFirst("\"passes\": \\d+", "\"passes\": 99"));
        List<List<String>> said = List.of(
                List.of("bad.json"),
                List.of("bad.json", "formatVersion", "format 9", "up to " + Project.FORMAT_VERSION),
                List.of("bad.json", "passes", "99", "from 1 to 6"));
        for (int i = 0; i < contents.size(); i++) {
            Path bad = folder.resolve("bad.json");
            Files.writeString(bad, contents.get(i));
            assertThat(contents.get(i)).isNotEqualTo(text);
            assertThat(designer.files().open(bad)).isFalse();
            assertThat(designer.messageProperty().get().problem()).isTrue();
            assertThat(designer.messageProperty().get().text()).contains(said.get(i));
            assertThat(project()).isSameAs(before);
            assertThat(designer.files().fileProperty().get()).isEqualTo(good);
            assertThat(bad).hasContent(contents.get(i));
        }
        designer.edit().enter(FLOW, "Airflow", "9 L/s");
        assertThat(results().project()).isEqualTo(project());
        assertThat(designer.files().save()).isTrue();
    }

    @Test
    void aFolderThatCannotBeWrittenToIsReported() throws IOException {
        Path file = folder.resolve("a-file");
        Files.writeString(file, "");
        assertThat(designer.files().saveAs(file.resolve("x.json"))).isFalse();
        assertThat(designer.messageProperty().get().problem()).isTrue();
        designer.files().export(file, Paper.A4);
        assertThat(designer.messageProperty().get().text()).contains("a-file");
        assertThat(designer.files().exportingProperty().get()).isFalse();
    }

    @Test
    void documentsAreWrittenForEveryPath() throws IOException {
        Path to = folder.resolve("documents");
        designer.files().export(to, Paper.LETTER);
        try (var files = Files.list(to)) {
            assertThat(files.filter(f -> f.toString().endsWith("_drawings.pdf")))
                    .hasSameSizeAs(project().paths());
        }
        try (var files = Files.list(to)) {
            assertThat(files.filter(f -> f.toString().endsWith("_project.json")))
                    .singleElement()
                    .satisfies(file -> assertThat(ProjectFile.read(file)).isEqualTo(project()));
        }
        assertThat(designer.messageProperty().get().problem()).isFalse();
    }

    @Test
    void pagesAreDrawnOnlyWhileWatched() {
        assertThat(designer.pages().drawingProperty().get()).isNull();
        designer.pages().watchedProperty().set(true);
        assertThat(designer.pages().drawingProperty().get().pages()).hasSizeGreaterThan(3);
        double a4 = designer.pages().drawingProperty().get().pages().get(0).height();
        designer.pages().paperProperty().set(Paper.LETTER);
        assertThat(designer.pages().drawingProperty().get().pages().get(0).height())
                .isLessThan(a4);
    }

    @Test
    void thePaperIsTheUsualOneOfTheUnitsUntilAnotherIsChosen() {
        assertThat(designer.pages().paperProperty().get()).isEqualTo(Paper.A4);
        designer.edit().setUnits(UnitSystem.INCH);
        assertThat(designer.pages().paperProperty().get()).isEqualTo(Paper.LETTER);
        designer.edit().setUnits(UnitSystem.METRIC);
        assertThat(designer.pages().paperProperty().get()).isEqualTo(Paper.A4);
        designer.pages().paperProperty().set(Paper.A3);
        designer.edit().setUnits(UnitSystem.INCH);
        assertThat(designer.pages().paperProperty().get()).isEqualTo(Paper.A3);
        designer.files().newFrom("lesson-cabin");
        assertThat(designer.pages().paperProperty().get()).isEqualTo(Paper.A3);
    }

    @Test
    void resultsOfAnOlderStateAreDroppedAndMarkedUntilThen() {
        HeldRunner runner = new HeldRunner();
        designer = designer(runner);
        designer.files().newFrom("lesson-cabin");
        runner.doAll();
        Assessment first = results();
        designer.edit().enter(FLOW, "Airflow", "9 L/s");
        designer.edit().enter(FLOW, "Airflow", "8 L/s");
        assertThat(designer.results().stateProperty().get()).isEqualTo(State.COMPUTING);
        assertThat(results()).isSameAs(first);
        while (runner.waiting() > 1) {
            runner.doNext();
            assertThat(results().project().paths().get(0).brief().flow()).isNotEqualTo(0.009);
        }
        runner.doAll();
        assertThat(results().project()).isEqualTo(project());
        assertThat(designer.results().stateProperty().get()).isEqualTo(State.CURRENT);
    }

    @Test
    void aBoxLaidOutForOlderWishesIsNotTaken() {
        HeldRunner runner = new HeldRunner();
        designer = designer(runner);
        designer.files().newFrom("lesson-cabin");
        runner.doAll();
        designer.results().layOut();
        designer.edit().enter(GAP, "Gap", "170 mm");
        Project edited = project();
        runner.doAll();
        assertThat(project()).isEqualTo(edited);
        assertThat(designer.messageProperty().get().text()).contains("changed");
        assertThat(designer.results().layingOutProperty().get()).isFalse();
    }
}
