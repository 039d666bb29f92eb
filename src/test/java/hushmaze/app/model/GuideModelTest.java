package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.app.model.FirstBox.Furnished;
import hushmaze.app.model.FirstBox.WayOut;
import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.project.Activity;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.FirstLayout;
import hushmaze.size.Sized;
import hushmaze.sound.criterion.AWeighting;
import hushmaze.store.Presets;
import hushmaze.store.ProjectFile;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Property tests of the questions for a first box: what is answered goes into the project, what is not is a usual value, and
 * the project can be built. Rooms are invented.
 */
class GuideModelTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final Presets PRESETS = Presets.load();

    @TempDir
    Path folder;

    private final List<Project> begun = new ArrayList<>();
    private final List<String> told = new ArrayList<>();

    private GuideModel guide(TaskRunner runner, GuideModel.Finder finder) {
        return new GuideModel(PRESETS, () -> TODAY, runner, finder, (project, words) -> {
            begun.add(project);
            told.add(words);
        });
    }

    private GuideModel quick() {
        return guide(TaskRunner.ON_THIS_THREAD, (project, progress, watch) -> laidOut(project));
    }

    private static Sized laidOut(Project project) {
        return new Sized(FirstLayout.complete(project, Progress.NONE), List.of(), true);
    }

    private static void toTheEnd(GuideModel guide) {
        while (guide.openProperty().get()) {
            guide.next();
        }
    }

    /** Nine answers and the boxes that are laid out at once: enough air, fitting, buildable. */
    @Test
    void fewAnswersLeadToBoxesThatCanBeBuilt() {
        GuideModel guide = quick();
        guide.start();
        assertThat(guide.enter(Question.ROOM_LENGTH, "3,6 m")).isEmpty();
        assertThat(guide.enter(Question.ROOM_WIDTH, "9 ft")).isEmpty();
        assertThat(guide.enter(Question.ROOM_HEIGHT, "230 cm")).isEmpty();
        assertThat(guide.enter(Question.PEOPLE, "1")).isEmpty();
        assertThat(guide.enter(Question.OPENING_WIDTH, "10 in")).isEmpty();
        assertThat(guide.enter(Question.OPENING_HEIGHT, "130")).isEmpty();
        assertThat(guide.enter(Question.SPACE_WIDTH, "1,1 m")).isEmpty();
        assertThat(guide.enter(Question.SPACE_HEIGHT, "700")).isEmpty();
        assertThat(guide.enter(Question.SPACE_DEPTH, "45 cm")).isEmpty();
        assertThat(guide.box().answered()).isEqualTo(9).isLessThanOrEqualTo(12);
        toTheEnd(guide);

        Project project = begun.get(0);
        assertThat(project.room().volume()).isCloseTo(3.6 * 9 * 0.3048 * 2.3, within(1e-9));
        assertThat(told.get(0)).isEqualTo(Texts.of("first.done"));
        Assessment result = Assessor.assess(project, Methods.QUICK, Progress.NONE);
        assertThat(result.paths()).hasSize(2).allSatisfy(path -> {
            assertThat(path.air().ok()).isTrue();
            assertThat(path.fits().ok()).isTrue();
            assertThat(path.buildable().ok()).isTrue();
        });
    }

    @Test
    void nothingAnsweredIsAProjectToo() {
        for (UnitSystem units : UnitSystem.values()) {
            GuideModel guide = quick();
            guide.setUnits(units);
            guide.start();
            assertThat(guide.box().answered()).isZero();
            toTheEnd(guide);
            Project project = begun.get(begun.size() - 1);
            assertThat(project.units()).isEqualTo(units);
            assertThat(project.titleBlock().date()).isEqualTo(TODAY);
            assertThat(project.paths())
                    .hasSize(2)
                    .allSatisfy(p -> assertThat(p.box()).isNotNull());
            assertThat(project.room().use().source()).startsWith("Assumed");
        }
    }

    /** Every kind of answer to every question that is answered by choosing makes a project, that survives being saved. */
    @Test
    void everyChoiceMakesAProject() throws Exception {
        GuideModel guide = quick();
        for (Question question : Question.values()) {
            if (question.isNumber()) {
                continue;
            }
            for (Object option : guide.box().options(question)) {
                guide.start();
                guide.choose(question, option);
                assertThat(guide.box().get(question)).isEqualTo(option);
                assertThat(guide.word(option)).isNotBlank();
                Project project = guide.box().project(TODAY);
                Path file = folder.resolve("first.json");
                ProjectFile.write(project, file);
                assertThat(ProjectFile.read(file)).isEqualTo(project);
                for (Question.Step step : Question.Step.values()) {
                    guide.go(step);
                    assertThat(guide.follows()).isNotBlank();
                }
            }
        }
    }

    @Test
    void whatIsAnsweredIsInTheProject() {
        GuideModel guide = quick();
        guide.start();
        guide.choose(Question.DOING, Activity.STANDING_PLAYING);
        guide.choose(Question.FURNISHED, Furnished.BARE);
        guide.choose(Question.OPENING_KIND, Opening.Kind.WALL_OPENING);
        guide.choose(Question.OPENING_BEYOND, Opening.Beyond.OUTDOORS);
        guide.choose(Question.WAY_OUT, WayOut.NONE_YET);
        guide.enter(Question.LOUDNESS, "51");
        guide.enter(Question.HEAVIEST, "100 lb");
        Project project = guide.box().project(TODAY);
        assertThat(project.paths()).hasSize(1);
        var brief = project.paths().get(0).brief();
        assertThat(brief.opening().kind()).isEqualTo(Opening.Kind.WALL_OPENING);
        assertThat(brief.opening().beyond()).isEqualTo(Opening.Beyond.OUTDOORS);
        assertThat(AWeighting.total(brief.noise().levels())).isCloseTo(51, within(1e-9));
        assertThat(brief.noise().source()).contains("51 dB(A)");
        assertThat(brief.construction().maxMass()).isCloseTo(45.359237, within(1e-9));
        assertThat(project.room().use().activity()).isEqualTo(Activity.STANDING_PLAYING);
        // 3.4 x 2.6 x 2.4 m: 46.48 m² of surface, a tenth of it at 63 Hz
        assertThat(project.room().absorptionArea().get(0)).isCloseTo(4.6, within(1e-9));
    }

    /** The noise that is usual follows what is behind the opening, until one is chosen. */
    @Test
    void usualValuesFollowOtherAnswers() {
        GuideModel guide = quick();
        guide.start();
        assertThat(guide.word(guide.box().get(Question.NOISE))).startsWith("Furnace");
        guide.choose(Question.OPENING_KIND, Opening.Kind.WALL_OPENING);
        assertThat(guide.box().get(Question.OPENING_BEYOND)).isEqualTo(Opening.Beyond.INDOORS);
        assertThat(guide.word(guide.box().get(Question.NOISE))).startsWith("Hall");
        guide.choose(Question.NOISE, PRESETS.noises().get(1));
        guide.choose(Question.OPENING_BEYOND, Opening.Beyond.OUTDOORS);
        assertThat(guide.box().get(Question.NOISE)).isEqualTo(PRESETS.noises().get(1));
    }

    @Test
    void wrongNumbersAreRefusedAndTheLastOneStays() {
        GuideModel guide = quick();
        guide.start();
        guide.enter(Question.ROOM_LENGTH, "4 m");
        assertThat(guide.enter(Question.ROOM_LENGTH, "400 m"))
                .contains("Length: 400 m is not accepted; it must be from 0.8 to 40 m.");
        assertThat(guide.enter(Question.PEOPLE, "1.5").orElseThrow()).contains("a whole number");
        assertThat(guide.enter(Question.ROOM_LENGTH, "long").orElseThrow()).contains("\"long\"");
        assertThat(guide.box().number(Question.ROOM_LENGTH)).isEqualTo(4);
        guide.enter(Question.ROOM_LENGTH, " ");
        assertThat(guide.box().isAnswered(Question.ROOM_LENGTH)).isFalse();
        assertThat(guide.box().number(Question.ROOM_LENGTH)).isEqualTo(3.4);
    }

    @Test
    void answersCanBeTakenBackAndGivenAgain() {
        GuideModel guide = quick();
        guide.start();
        guide.enter(Question.ROOM_LENGTH, "4 m");
        guide.enter(Question.ROOM_LENGTH, "5 m");
        guide.undo();
        assertThat(guide.shown(Question.ROOM_LENGTH)).isEqualTo("4 m");
        guide.undo();
        guide.undo();
        assertThat(guide.shown(Question.ROOM_LENGTH)).isEqualTo("3.4 m");
        guide.redo();
        guide.redo();
        assertThat(guide.shown(Question.ROOM_LENGTH)).isEqualTo("5 m");
        guide.undo();
        guide.enter(Question.ROOM_LENGTH, "6 m");
        guide.redo();
        assertThat(guide.shown(Question.ROOM_LENGTH)).isEqualTo("6 m");
        guide.setUnits(UnitSystem.INCH);
        assertThat(Unit.FOOT.fromSi(guide.box().number(Question.ROOM_LENGTH))).isCloseTo(19.685, within(1e-3));
    }

    /** Stopped, there is the project without the search's boxes; what the search brings later is dropped. */
    @Test
    void aSearchCanBeStopped() {
        HeldRunner runner = new HeldRunner();
        GuideModel guide = guide(runner, (project, progress, watch) -> {
            progress.check(0.5, "half");
            return laidOut(project);
        });
        guide.start();
        guide.go(Question.Step.MATERIALS);
        guide.next();
        assertThat(guide.searchingProperty().get()).isTrue();
        assertThat(guide.openProperty().get()).isTrue();
        guide.stop();
        assertThat(guide.openProperty().get()).isFalse();
        assertThat(begun)
                .singleElement()
                .satisfies(p -> assertThat(p.paths().get(0).box()).isNull());
        runner.doAll();
        assertThat(begun).hasSize(1);
    }

    /** What was found before it was stopped is in its path. */
    @Test
    void whatWasFoundBeforeTheStopIsTaken() {
        PreparedFinds finds = new PreparedFinds(20);
        List<GuideModel> one = new ArrayList<>();
        GuideModel guide = guide(TaskRunner.ON_THIS_THREAD, (project, progress, watch) -> {
            watch.found(1, finds.designs());
            one.get(0).stop();
            return laidOut(project);
        });
        one.add(guide);
        guide.start();
        guide.go(Question.Step.MATERIALS);
        guide.next();
        assertThat(begun).singleElement().satisfies(p -> {
            assertThat(p.paths().get(0).box()).isNull();
            assertThat(p.paths().get(1).box()).isEqualTo(finds.designs().get(0).box());
        });
        assertThat(told).containsExactly(Texts.of("first.stopped"));
    }

    @Test
    void aSearchThatFailsSaysWhyAndKeepsTheAnswers() {
        GuideModel guide = guide(TaskRunner.ON_THIS_THREAD, (project, progress, watch) -> {
            throw new IllegalStateException("broken");
        });
        guide.start();
        guide.go(Question.Step.MATERIALS);
        guide.next();
        assertThat(told.get(0)).contains("broken");
        assertThat(begun).hasSize(1);
    }

    /** In a designer: the project is new, unsaved, has a box in every path, and nothing to undo. */
    @Test
    void theProjectIsPutOnTheTable() {
        Designer designer = TestDesigner.of(
                TaskRunner.ON_THIS_THREAD,
                new HeldRunner(),
                (p, path, keep, progress, watch) -> null,
                folder.resolve("unnamed.json"));
        designer.guide().start();
        designer.guide().go(Question.Step.MATERIALS);
        designer.guide().next();
        designer.guide().stop();
        assertThat(designer.edit().project().name()).isEqualTo("My quiet room");
        assertThat(designer.edit().project().paths())
                .allSatisfy(p -> assertThat(p.box()).isNotNull());
        assertThat(designer.files().isUnsaved()).isTrue();
        assertThat(Optional.ofNullable(designer.files().fileProperty().get())).isEmpty();
        assertThat(designer.edit().undoableProperty().get()).isEmpty();
        assertThat(designer.messageProperty().get().text()).isEqualTo(Texts.of("first.stopped"));
        designer.guide().start();
        designer.files().newFrom("lesson-cabin");
        assertThat(designer.guide().openProperty().get()).isFalse();
    }
}
