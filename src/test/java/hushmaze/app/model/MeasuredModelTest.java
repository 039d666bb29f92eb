package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.app.model.ComparedModel.Held;
import hushmaze.assess.Assessment;
import hushmaze.assess.BandResult;
import hushmaze.assess.BoxFitting;
import hushmaze.assess.Finding;
import hushmaze.material.Liner;
import hushmaze.measure.WavBytes;
import hushmaze.project.Box;
import hushmaze.project.JointGap;
import hushmaze.project.Noise;
import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import hushmaze.project.Reading;
import hushmaze.project.Reading.Round;
import hushmaze.project.Reading.Scale;
import hushmaze.project.Room;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.work.TaskRunner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Property tests of readings in the window's model, without a window: they come from files, are compared, calibrated, given to the
 * brief, and what they say of the box is kept. Validation: a difference of levels is worked by hand.
 */
class MeasuredModelTest {
    private static final int RATE = 8000;

    @TempDir
    private Path folder;

    private Designer designer;
    private MeasuredModel measured;
    private ComparedModel compared;

    @BeforeEach
    void open() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
        designer.files().newFrom("trio-cellar");
        measured = designer.measured();
        compared = designer.compared();
        compared.watchedProperty().set(true);
    }

    private Path text(String name, BandSet bands, IntToDoubleFunction level) throws IOException {
        StringBuilder text = new StringBuilder("Frequency;Level\n");
        for (int i = 0; i < bands.size(); i++) {
            double db = level.applyAsDouble(i);
            if (!Double.isNaN(db)) {
                text.append(String.format(
                        Locale.ROOT, "%s;%.2f%n", bands.bands().get(i).label(), db));
            }
        }
        return Files.writeString(folder.resolve(name), text);
    }

    private void add(Round round, String name, IntToDoubleFunction level) throws IOException {
        measured.add(round, List.of(text(name, BandSet.THIRD_OCTAVE, level)));
    }

    /** A tone at 1 kHz of an amplitude. */
    private Path tone(String name, double amplitude) throws IOException {
        return Files.write(
                folder.resolve(name),
                WavBytes.of(
                        WavBytes.Kind.PCM16,
                        RATE,
                        1,
                        3 * RATE,
                        i -> amplitude * Math.sin(2 * Math.PI * 1000 * i / RATE)));
    }

    private Project project() {
        return designer.edit().project();
    }

    private PathReadings readings() {
        return project().paths().get(0).readingsOrNone();
    }

    private Room room() {
        return project().room();
    }

    private String told() {
        return designer.messageProperty().get() == null
                ? ""
                : designer.messageProperty().get().text();
    }

    @Test
    void readingsAreComparedWithoutJudgingTheBoxAnew() throws IOException {
        Assessment before = designer.results().assessmentProperty().get();
        assertThat(compared.heldProperty().get().comparison()).isNull();
        List<BandResult> bands = before.paths().get(0).thirds();
        add(Round.WITHOUT_BOX, "open.txt", i -> 80);
        add(Round.WITH_BOX, "box.txt", i -> 80 - bands.get(i).likely());
        Held held = compared.heldProperty().get();
        assertThat(held.comparison().findings()).extracting(Finding::kind).contains(Finding.Kind.AS_PREDICTED);
        assertThat(compared.fittingProperty().get().bands()).isEqualTo(24);
        Assessment after = designer.results().assessmentProperty().get();
        assertThat(after.room()).isSameAs(before.room());
        assertThat(after.paths().get(0).sound()).isSameAs(before.paths().get(0).sound());
        assertThat(after.project()).isEqualTo(project());
        assertThat(readings().levels()).extracting(Reading::scale).containsOnly(Scale.AS_GIVEN);
        assertThat(designer.results().stateProperty().get()).isEqualTo(ResultModel.State.CURRENT);
        designer.edit().undo();
        assertThat(compared.heldProperty().get().comparison()).isNull();
        designer.edit().redo();
        assertThat(measured.remove(0)).isEmpty();
        assertThat(readings().levels()).extracting(Reading::name).containsExactly("box.txt");
    }

    @Test
    void nothingIsComparedWhileNobodyLooks() throws IOException {
        compared.watchedProperty().set(false);
        add(Round.WITHOUT_BOX, "open.txt", i -> 80);
        assertThat(compared.heldProperty().get()).isNull();
        compared.watchedProperty().set(true);
        assertThat(compared.heldProperty().get()).isNotNull();
    }

    @Test
    void positionsOfOneNameAreTold() throws IOException {
        add(Round.WITHOUT_BOX, "open.txt", i -> 80);
        add(Round.WITHOUT_BOX, "open.txt", i -> 82);
        assertThat(readings().levels()).extracting(Reading::name).containsExactly("open.txt", "open.txt (2)");
    }

    @Test
    void aFileThatIsNoReadingIsToldAndChangesNothing() throws IOException {
        Project before = project();
        measured.add(Round.WITH_BOX, List.of(Files.writeString(folder.resolve("shopping.txt"), "two onions")));
        assertThat(told()).contains("shopping.txt");
        measured.add(Round.WITH_BOX, List.of(folder.resolve("gone.wav")));
        assertThat(told()).contains("gone.wav", "does not exist");
        measured.add(Round.WITH_BOX, List.of(text("silent.txt", BandSet.THIRD_OCTAVE, i -> -250)));
        assertThat(told()).contains("no level at all");
        assertThat(project()).isEqualTo(before);
    }

    @Test
    void recordingsWaitForTheirPartOneAfterAnother() throws IOException {
        measured.add(Round.WITHOUT_BOX, List.of(tone("loud.wav", 0.5), tone("louder.wav", 0.8)));
        assertThat(measured.pendingProperty().get().file()).isEqualTo(folder.resolve("loud.wav"));
        assertThat(readings().levels()).isEmpty();
        measured.recording().choose(0.5, 2);
        measured.takePart();
        assertThat(measured.pendingProperty().get().file()).isEqualTo(folder.resolve("louder.wav"));
        measured.dropPart();
        assertThat(measured.pendingProperty().get()).isNull();
        assertThat(readings().levels()).hasSize(1);
        Reading reading = readings().levels().get(0);
        assertThat(reading.scale()).isEqualTo(Scale.FULL_SCALE);
        // 20 lg 0.5 = -6.02 dB against a sine at full scale
        assertThat(reading.levels().level(13)).isCloseTo(-6.02, within(0.05));
        assertThat(reading.source()).contains("from 0.5 to 2 s", "not calibrated");
    }

    @Test
    void recordingsAreGivenALevelAfterwards() throws IOException {
        measured.add(Round.WITH_BOX, List.of(tone("box.wav", 0.1)));
        measured.takePart();
        add(Round.WITHOUT_BOX, "open.txt", i -> 80);
        assertThat(told()).contains("without calibration");
        assertThat(readings().levels()).hasSize(1);
        // a calibrator's tone of 94 dB at half of full scale: full scale is 100.02 dB
        measured.calibrateBy(tone("calibrator.wav", 0.5));
        assertThat(measured.offsetProperty().get()).isCloseTo(100.02, within(0.05));
        Reading reading = readings().levels().get(0);
        assertThat(reading.scale()).isEqualTo(Scale.CALIBRATED);
        // 20 lg (0.1/0.5) = -13.98 dB under the calibrator's
        assertThat(reading.levels().level(13)).isCloseTo(80.02, within(0.1));
        assertThat(reading.source()).contains("Given a level since");
        add(Round.WITHOUT_BOX, "open.txt", i -> 80);
        assertThat(readings().levels()).hasSize(2);
        assertThat(measured.enterOffset("")).isEmpty();
        assertThat(measured.offsetProperty().get()).isNull();
    }

    @ParameterizedTest
    @CsvSource({"400, 300", "loud, loud"})
    void aLevelThatCannotBeIsRefused(String typed, String said) {
        assertThat(measured.enterOffset(typed))
                .hasValueSatisfying(p -> assertThat(p).contains("full scale", said));
        assertThat(measured.offsetProperty().get()).isNull();
        assertThat(measured.enterCalibrator("30"))
                .hasValueSatisfying(p -> assertThat(p).contains("calibrator", "50"));
        assertThat(measured.enterCalibrator("114")).isEmpty();
        assertThat(measured.calibratorProperty().get()).isEqualTo(114);
    }

    @Test
    void theNoiseOfThePathIsTheOpenOneLessTheBackground() throws IOException {
        assertThat(designer.measuredBrief().mayUseAsNoise()).isFalse();
        Spectrum old = project().paths().get(0).brief().noise().levels().levelsInThirds();
        add(Round.WITHOUT_BOX, "chair.txt", i -> i == 23 ? Double.NaN : 60);
        add(Round.SOURCE_OFF, "quiet.txt", i -> i == 0 ? 59 : 50);
        assertThat(designer.measuredBrief().mayUseAsNoise()).isTrue();
        assertThat(designer.measuredBrief().useAsNoise()).isEmpty();
        Noise noise = project().paths().get(0).brief().noise();
        assertThat(noise.place()).isEqualTo(Noise.Place.AT_MICROPHONE);
        // 10 lg (10^6.0 - 10^5.0) = 59.54 dB; 1 dB over the background: 60 - 3 at most; at 10 kHz as it was
        assertThat(noise.levels().value(10)).isEqualTo(59.5);
        assertThat(noise.levels().value(0)).isEqualTo(57);
        assertThat(noise.levels().value(23)).isEqualTo(old.value(23));
        assertThat(noise.source()).contains("Measured: chair.txt", "At 50 Hz the background", "Not measured at 10k Hz");
    }

    @Test
    void theRoomsOwnNoiseIsThatWithTheSourceOff() throws IOException {
        add(Round.SOURCE_OFF, "quiet.txt", i -> 20);
        assertThat(designer.measuredBrief().useAsOwnNoise()).isEmpty();
        assertThat(room().ownNoise()).isEqualTo(Spectrum.flat(BandSet.THIRD_OCTAVE, 20));
        designer.edit().edit("unknown", p -> Field.of("room.ownNoise").with(p, 0, null));
        add(Round.SOURCE_OFF, "quiet-2.txt", i -> i == 20 ? Double.NaN : 20);
        assertThat(designer.measuredBrief().useAsOwnNoise())
                .hasValueSatisfying(p -> assertThat(p).contains("5k Hz"));
        assertThat(room().ownNoise()).isNull();
    }

    @Test
    void measuredAirIsTypedAndHeldAgainstThePrediction() {
        MeasuredAir air = designer.measuredAir();
        assertThat(air.enterFlow("50 cfm")).isEmpty();
        assertThat(readings().flow()).isCloseTo(0.0236, within(0.0001));
        assertThat(air.enterDoorPressure("3.5")).isEmpty();
        assertThat(air.enterCo2("1200")).isEmpty();
        assertThat(air.room().co2Minutes()).isEqualTo(60);
        assertThat(air.room().co2People()).isEqualTo(room().people());
        assertThat(air.enterMinutes("90")).isEmpty();
        assertThat(air.enterPeople("2")).isEmpty();
        assertThat(air.enterStart("700")).isEmpty();
        assertThat(air.room().co2Seconds()).isEqualTo(5400);
        assertThat(compared.heldProperty().get().air().lines()).hasSize(4);
        assertThat(air.enterPeople("two and a half")).isPresent();
        assertThat(air.enterMinutes("0")).hasValueSatisfying(p -> assertThat(p).contains("1"));
        assertThat(air.enterCo2("9 %")).isPresent();
        assertThat(air.enterFlow("")).isEmpty();
        assertThat(air.enterDoorPressure("")).isEmpty();
        assertThat(air.enterCo2("")).isEmpty();
        assertThat(project().readings()).isNull();
        assertThat(project().paths().get(0).readings()).isNull();
        assertThat(compared.heldProperty().get().air().lines()).isEmpty();
    }

    @Test
    void whatTheReadingsSayOfGapAndLinerIsKept() throws IOException {
        List<BandResult> bands = designer.results().pathResult().orElseThrow().thirds();
        JointGap open = new JointGap(0.001, 0.001, 0.001, "made up for a test");
        designer.edit().edit("leak", p -> {
            VentPath path = p.paths().get(0);
            Box box = path.box();
            return p.withPath(0, path.withBox(box.joined(box.joinery().gapping(open), box.seams())));
        });
        List<BandResult> leaking = designer.results().pathResult().orElseThrow().thirds();
        designer.edit().undo();
        add(Round.WITHOUT_BOX, "open.txt", i -> 90);
        add(Round.WITH_BOX, "box.txt", i -> 90 - leaking.get(i).likely());
        BoxFitting fitting = compared.fittingProperty().get();
        assertThat(fitting.tellsGap()).isTrue();
        assertThat(compared.hasGap()).isFalse();
        assertThat(compared.keepGap()).isEmpty();
        // what follows needs no fit
        compared.watchedProperty().set(false);
        assertThat(compared.hasGap()).isTrue();
        assertThat(project().paths()).allSatisfy(path -> {
            assertThat(path.box().joinery().coverGap().likely())
                    .isEqualTo(fitting.gap().likely());
            assertThat(path.box().joinery().gasket())
                    .isEqualTo(path.brief().construction().joineryOrPlain().gasket());
        });
        List<BandResult> next = designer.results().pathResult().orElseThrow().thirds();
        assertThat(next.get(20).likely()).isCloseTo(leaking.get(20).likely(), within(0.3));
        assertThat(bands.get(20).likely()).isGreaterThan(leaking.get(20).likely() + 1);
        assertThat(compared.forgetGap()).isEmpty();
        assertThat(compared.hasGap()).isFalse();
        designer.edit().undo();
        designer.edit().undo();
        assertThat(compared.hasGap()).isFalse();
        assertThat(designer.results()
                        .pathResult()
                        .orElseThrow()
                        .thirds()
                        .get(20)
                        .likely())
                .isEqualTo(bands.get(20).likely());
    }

    @Test
    void theFlowResistivityOfTheLinerIsKept() throws IOException {
        Liner liner = project().paths().get(0).box().liner();
        Liner denser = new Liner(
                liner.name(),
                liner.thickness(),
                liner.density(),
                3 * liner.flowResistivity(),
                3 * liner.flowResistivity(),
                3 * liner.flowResistivity(),
                liner.roughness(),
                "made up for a test");
        designer.edit().edit("denser", p -> {
            VentPath path = p.paths().get(0);
            return p.withPath(0, path.withBox(path.box().withLiner(denser)));
        });
        List<BandResult> bands = designer.results().pathResult().orElseThrow().thirds();
        add(Round.WITHOUT_BOX, "open.txt", i -> 90);
        add(Round.WITH_BOX, "box.txt", i -> 90 - bands.get(i).likely());
        BoxFitting fitting = compared.fittingProperty().get();
        assertThat(fitting.tellsResistivity()).isTrue();
        assertThat(compared.keepLiner()).isEmpty();
        Liner kept = project().paths().get(0).box().liner();
        assertThat(kept.source()).startsWith("Fitted to readings");
        assertThat(kept.flowResistivity()).isEqualTo(fitting.resistivity().likely());
        assertThat(kept.flowResistivityLow()).isEqualTo(fitting.resistivity().least());
        assertThat(kept.name()).isEqualTo(liner.name());
        designer.edit().undo();
        assertThat(project().paths().get(0).box().liner()).isEqualTo(denser);
    }

    @Test
    void anotherProjectBeginsWithoutWhatWaited() throws IOException {
        measured.add(Round.WITHOUT_BOX, List.of(tone("loud.wav", 0.5)));
        measured.enterOffset("100");
        designer.files().newFrom("story-booth");
        assertThat(measured.pendingProperty().get()).isNull();
        assertThat(measured.offsetProperty().get()).isNull();
    }
}
