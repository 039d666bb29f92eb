package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.AirState;
import hushmaze.app.model.SoundFieldModel.State;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Sizing;
import hushmaze.solid.Axis;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.section.PathField;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Property tests of the sound in the box, without a window: only worked out while looked at, outdated by edits that count and by no others,
 * stopped and begun again, frequencies taken as typed or refused with a reason, sentences with the figures of the field.
 */
class SoundFieldModelTest {
    @TempDir
    Path folder;

    private final HeldRunner runner = new HeldRunner();
    private Designer designer;
    private SoundFieldModel model;

    @BeforeEach
    void open() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, runner, Sizing::ofPath, folder.resolve("unnamed.json"));
        designer.files().newFrom("story-booth");
        model = designer.soundField();
    }

    private void look() {
        model.watchedProperty().set(true);
        runner.doAll();
    }

    private PathField expected() {
        Project project = designer.edit().project();
        VentPath path = project.paths().get(designer.edit().path());
        return PathField.of(
                SolidBuilder.build(path.box()),
                path.box().liner(),
                AirState.of(project.room()).soundSpeed(),
                model.frequencyProperty().get(),
                Progress.NONE);
    }

    @Test
    void nothingIsWorkedOutUntilSomebodyLooks() {
        assertThat(runner.waiting()).isZero();
        assertThat(model.fieldProperty().get()).isNull();
        assertThat(model.lesson()).isEmpty();
        assertThat(model.at(0.1, 0.1)).isEmpty();
        model.watchedProperty().set(true);
        assertThat(model.stateProperty().get()).isEqualTo(State.COMPUTING);
        assertThat(model.stateWords()).isEqualTo("Working out the sound at 500 Hz…");
        runner.doAll();
        assertThat(model.stateProperty().get()).isEqualTo(State.CURRENT);
        assertThat(model.outdatedProperty().get()).isFalse();
        assertThat(model.fieldProperty().get().levels()).isEqualTo(expected().levels());
        model.watchedProperty().set(false);
        model.watchedProperty().set(true);
        assertThat(runner.waiting()).isZero();
    }

    @Test
    void editsThatCountOutdateItAndItIsWorkedOutAnew() {
        look();
        PathField first = model.fieldProperty().get();
        assertThat(designer.edit().enter(Field.of("room.people"), "People", "1"))
                .isEmpty();
        designer.edit().setUnits(UnitSystem.INCH);
        assertThat(model.outdatedProperty().get()).isFalse();
        assertThat(runner.waiting()).isZero();

        assertThat(designer.edit().enter(Field.of("path.box.clearLength"), "Length", "600 mm"))
                .isEmpty();
        assertThat(model.outdatedProperty().get()).isTrue();
        assertThat(model.fieldProperty().get()).isSameAs(first);
        assertThat(model.stateWords()).startsWith("Outdated. Working out");
        runner.doAll();
        assertThat(model.outdatedProperty().get()).isFalse();
        assertThat(model.fieldProperty().get().fall())
                .isEqualTo(expected().fall())
                .isNotEqualTo(first.fall());

        model.watchedProperty().set(false);
        designer.edit().undo();
        assertThat(model.outdatedProperty().get()).isTrue();
        assertThat(runner.waiting()).isZero();
        look();
        assertThat(model.fieldProperty().get().fall()).isCloseTo(first.fall(), within(1e-9));
    }

    @Test
    void anotherPathOrProjectHasNoFieldUntilItsOwnIsThere() {
        look();
        designer.edit().pathProperty().set(1);
        assertThat(model.fieldProperty().get()).isNull();
        runner.doAll();
        assertThat(model.fieldProperty().get().fall()).isEqualTo(expected().fall());
        designer.files().newFrom("trio-cellar");
        assertThat(model.fieldProperty().get()).isNull();
        runner.doAll();
        assertThat(model.fieldProperty().get().fall()).isEqualTo(expected().fall());
    }

    @Test
    void onlyTheLastFrequencyAskedForIsShown() {
        model.watchedProperty().set(true);
        model.choose(0);
        model.choose(3);
        assertThat(runner.waiting()).isEqualTo(3);
        runner.doNext();
        runner.doNext();
        assertThat(model.fieldProperty().get()).isNull();
        assertThat(model.stateProperty().get()).isEqualTo(State.COMPUTING);
        runner.doNext();
        assertThat(model.fieldProperty().get().frequency()).isEqualTo(100);
    }

    @Test
    void stoppingKeepsWhatThereIsUntilItIsBegunAgain() {
        look();
        PathField first = model.fieldProperty().get();
        model.choose(0);
        model.cancel();
        assertThat(model.stateProperty().get()).isEqualTo(State.STOPPED);
        runner.doAll();
        assertThat(model.fieldProperty().get()).isSameAs(first);
        assertThat(model.outdatedProperty().get()).isTrue();
        assertThat(model.stateWords()).startsWith("Stopped. The picture is outdated");
        model.start();
        runner.doAll();
        assertThat(model.stateProperty().get()).isEqualTo(State.CURRENT);
        assertThat(model.fieldProperty().get().frequency()).isEqualTo(50);
        model.cancel();
        assertThat(model.stateProperty().get()).isEqualTo(State.CURRENT);
    }

    @Test
    void aFailureIsToldAndCanBeTriedAgain() {
        FailingOnce failing = new FailingOnce();
        SoundFieldModel other = new SoundFieldModel(designer.edit(), failing);
        other.watchedProperty().set(true);
        assertThat(other.stateProperty().get()).isEqualTo(State.FAILED);
        assertThat(other.stateWords()).contains("no more paper");
        assertThat(other.fieldProperty().get()).isNull();
        other.start();
        assertThat(other.stateProperty().get()).isEqualTo(State.CURRENT);
        assertThat(other.stateWords()).isEmpty();
    }

    private static final class FailingOnce implements TaskRunner {
        private boolean failed;

        @Override
        public <T> void run(Function<Progress, T> work, Consumer<T> done, Consumer<Exception> fail) {
            if (failed) {
                TaskRunner.ON_THIS_THREAD.run(work, done, fail);
            } else {
                failed = true;
                fail.accept(new IllegalStateException("no more paper"));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "430, 430, 430 Hz",
        "1.2k, 1200, 1.2 kHz",
        "1.2 kHz, 1200, 1.2 kHz",
        "'1,25 KHZ', 1250, 1.25 kHz",
        "63 Hz, 63, 63 Hz",
        "' 20 ', 20, 20 Hz",
        "5k, 5000, 5 kHz",
        "31.5, 31.5, 31.5 Hz"
    })
    void frequenciesAreTakenAsTyped(String typed, double hz, String shown) {
        assertThat(model.enter(typed)).isEmpty();
        assertThat(model.frequencyProperty().get()).isCloseTo(hz, within(1e-9));
        assertThat(model.frequencyText()).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "19|19 Hz|from 20 to 5000 Hz",
                "6k|6000 Hz|from 20 to 5000 Hz",
                "-500|-500 Hz|from 20 to 5000 Hz",
                "loud|\"loud\"|a frequency such as 430",
                "12 mm|\"12 mm\"|a frequency such as 430",
                "k|\"k\"|a frequency such as 430",
                "''|\"\"|a frequency such as 430"
            })
    void otherThingsAreRefusedWithAReason(String typed, String given, String limit) {
        model.enter("430");
        assertThat(model.enter(typed).orElseThrow())
                .startsWith("Frequency: " + given)
                .contains(limit);
        assertThat(model.frequencyProperty().get()).isEqualTo(430);
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 62, 430, 1000, 4400, 5000})
    void theNearestBandIsChosenOnTheSlider(double hz) {
        model.enter(String.valueOf(hz));
        double nearest = SoundFieldModel.BANDS.get(model.nearestBand()).nominalHz();
        assertThat(nearest / hz).isBetween(0.88, 1.13);
    }

    @Test
    void sentencesHaveTheFiguresOfTheField() {
        look();
        PathField field = model.fieldProperty().get();
        assertThat(field.solid().passes()).hasSize(2);
        int most = field.fall(0) > field.fall(1) ? 0 : 1;
        assertThat(model.lesson())
                .startsWith(
                        "At 500 Hz the sound falls by " + Math.round(field.fall()) + " dB from the opening to the room")
                .contains(Math.round(field.fall(most)) + " dB, in pass " + (most + 1));
        assertThat(model.scope()).startsWith("This is the flat section half way up the box");
        double x = 0.2;
        double y = field.solid().passes().get(0).clear().centre(Axis.Y)
                - field.solid().outer().y0();
        long db = Math.round(field.levelAt(
                        field.solid().outer().x0() + x, field.solid().outer().y0() + y)
                .getAsDouble());
        assertThat(model.at(x, y))
                .startsWith("200 mm along, " + Math.round(1000 * y) + " mm across: ")
                .endsWith(Math.abs(db) + " dB");
        assertThat(model.at(0.3, 0.002)).isEqualTo("300 mm along, 2 mm across: board");
        designer.edit().setUnits(UnitSystem.INCH);
        assertThat(model.at(x, y)).startsWith("7 7/8 in along");
    }

    @Test
    void atLowFrequenciesABoxMayDoNothingOrResonate() {
        model.enter("20");
        look();
        double fall = model.fieldProperty().get().fall();
        assertThat(model.lesson())
                .contains(Math.abs(fall) < 1 ? "here the box does nothing" : fall < 0 ? "louder" : "falls");
        model.enter("50");
        runner.doAll();
        assertThat(model.fieldProperty().get().fall()).isLessThan(-1);
        assertThat(model.lesson()).contains("2 dB louder at the room than at the opening");
    }

    @Test
    void portsThroughBroadFacesAreSaidToBeStoodInForOnlyWhereTheyAre() {
        designer.files().newFrom("lesson-cabin");
        look();
        assertThat(model.fieldProperty().get().flat()).isFalse();
        assertThat(model.scope()).contains("a slice half way up").contains("through the broad face");
        model.enter("5k");
        runner.doAll();
        assertThat(model.fieldProperty().get().flat()).isTrue();
        assertThat(model.scope()).containsPattern("shown as (a mouth|mouths) of the same area in the long side");
    }
}
