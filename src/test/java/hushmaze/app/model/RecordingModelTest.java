package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.app.model.RecordingModel.State;
import hushmaze.measure.WavBytes;
import hushmaze.measure.Weighting;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: a tone of amplitude a at 1 kHz is 20 lg a dB, so the levels of a part are known. Property: parts and channels are read anew,
 * what nobody waits for any more is not shown, and whatever is typed is taken or refused with a reason.
 */
class RecordingModelTest {
    private static final int RATE = 8000;

    @TempDir
    private Path folder;

    private final HeldRunner runner = new HeldRunner();
    private final RecordingModel model = new RecordingModel(runner);

    private Path wav(String name, int channels, int seconds, IntToDoubleFunction sample) throws IOException {
        return Files.write(
                folder.resolve(name), WavBytes.of(WavBytes.Kind.FLOAT32, RATE, channels, seconds * RATE, sample));
    }

    /** A tone that is 0.01 of full scale in the first five seconds and 0.1 afterwards. */
    private static double steps(int i) {
        return (i < 5 * RATE ? 0.01 : 0.1) * Math.sin(2 * Math.PI * 1000 * i / RATE);
    }

    private void open(int channels, int seconds) throws IOException {
        model.open(wav("tone.wav", channels, seconds, RecordingModelTest::steps));
        runner.doAll();
    }

    private double leq() {
        return model.recordingProperty().get().weighted().get(Weighting.A).leq();
    }

    @Test
    void aFileIsReadAndAPartMeasured() throws IOException {
        assertThat(model.stateProperty().get()).isEqualTo(State.NONE);
        assertThat(model.stateWords()).isEqualTo("No recording is open.");
        assertThat(model.figures()).isEmpty();
        model.open(wav("tone.wav", 1, 10, RecordingModelTest::steps));
        assertThat(model.stateProperty().get()).isEqualTo(State.READING);
        assertThat(model.stateWords()).isEqualTo("Reading tone.wav… 0 %");
        runner.doAll();
        assertThat(model.stateProperty().get()).isEqualTo(State.CURRENT);
        assertThat(model.stateWords()).isEmpty();
        assertThat(model.pictureProperty().get().columns()).isEqualTo(500);
        assertThat(model.toProperty().get()).isEqualTo(10);
        // half the time -40, half -20 dB: 10 lg((1e-4 + 1e-2) / 2) = -22.97
        assertThat(leq()).isCloseTo(-22.97, within(0.05));
        assertThat(model.partWords()).isEqualTo("whole recording: 10 s");

        model.choose(4, 1);
        assertThat(model.stateProperty().get()).isEqualTo(State.READING);
        assertThat(model.outdatedProperty().get()).isTrue();
        assertThat(leq()).isCloseTo(-22.97, within(0.05));
        runner.doAll();
        assertThat(model.outdatedProperty().get()).isFalse();
        assertThat(leq()).isCloseTo(-40, within(0.05));
        assertThat(model.recordingProperty().get().seconds()).isEqualTo(3);
        assertThat(model.partWords()).isEqualTo("1 s to 4 s: 3 s");
        model.chooseWhole();
        assertThat(runner.waiting()).isZero();
        assertThat(leq()).isCloseTo(-22.97, within(0.05));
    }

    @Test
    void onlyTheNewestPartIsRead() throws IOException {
        open(1, 10);
        model.choose(0, 4);
        model.choose(6, 9);
        assertThat(runner.waiting()).isEqualTo(2);
        runner.doAll();
        assertThat(leq()).isCloseTo(-20, within(0.05));
        assertThat(model.stateProperty().get()).isEqualTo(State.CURRENT);
    }

    @Test
    void anotherChannelIsReadAndThePartStays() throws IOException {
        open(2, 10);
        assertThat(model.channels()).isEqualTo(2);
        model.choose(6, 9);
        runner.doAll();
        // the first channel has half as much: -26.02 dB
        assertThat(leq()).isCloseTo(-26.02, within(0.05));
        model.choose(2);
        assertThat(model.outdatedProperty().get()).isTrue();
        runner.doAll();
        assertThat(model.pictureProperty().get().channel()).isEqualTo(2);
        assertThat(model.fromProperty().get()).isEqualTo(6);
        assertThat(leq()).isCloseTo(-20, within(0.05));
        model.open(wav("other.wav", 1, 3, i -> 0));
        assertThat(model.channelProperty().get()).isEqualTo(1);
        assertThat(model.pictureProperty().get()).isNull();
        runner.doAll();
        assertThat(model.toProperty().get()).isEqualTo(3);
        assertThat(model.figures().get(0).value()).isEqualTo("silence");
    }

    @Test
    void readingIsStoppedAndBegunAgain() throws IOException {
        model.open(wav("tone.wav", 1, 10, RecordingModelTest::steps));
        model.cancel();
        assertThat(model.stateProperty().get()).isEqualTo(State.STOPPED);
        assertThat(model.stateWords()).startsWith("Stopped before");
        runner.doAll();
        assertThat(model.pictureProperty().get()).isNull();
        model.start();
        runner.doAll();
        model.choose(1, 3);
        model.cancel();
        runner.doAll();
        assertThat(model.stateWords()).isEqualTo("Stopped. The levels are those of the part chosen before.");
        assertThat(model.outdatedProperty().get()).isTrue();
        assertThat(model.recordingProperty().get().seconds()).isEqualTo(10);
        model.start();
        runner.doAll();
        assertThat(model.recordingProperty().get().seconds()).isEqualTo(2);
    }

    /** Stops the model at its first piece of news, as somebody would by the button, and counts how often work goes on afterwards. */
    private static final class StoppingRunner implements TaskRunner {
        private final List<Double> fractions = new ArrayList<>();
        private RecordingModel model;
        private int after;
        private boolean cancelled;

        @Override
        public <T> void run(Function<Progress, T> work, Consumer<T> done, Consumer<Exception> failed) {
            try {
                T result = work.apply(
                        (fraction, doing) -> after += model.stateProperty().get() == State.STOPPED ? 1 : 0);
                done.accept(result);
            } catch (Progress.Cancelled e) {
                cancelled = true;
            }
        }

        @Override
        public void tell(Runnable news) {
            news.run();
            fractions.add(model.fractionProperty().get());
            model.cancel();
        }
    }

    @Test
    void itTellsHowFarItIsAndStopsAtTheNextStep() throws IOException {
        StoppingRunner stopping = new StoppingRunner();
        RecordingModel stopped = new RecordingModel(stopping);
        stopping.model = stopped;
        stopped.open(wav("tone.wav", 1, 10, RecordingModelTest::steps));
        assertThat(stopping.cancelled).isTrue();
        assertThat(stopping.after).isEqualTo(1);
        assertThat(stopping.fractions).hasSize(1);
        assertThat(stopping.fractions.get(0)).isBetween(0.01, 0.05);
    }

    @Test
    void whatCannotBeReadIsSaidInWords() throws IOException {
        Path file = folder.resolve("notes.wav");
        Files.write(file, "63; 48.2\n125; 46".getBytes(StandardCharsets.UTF_16));
        model.open(file);
        runner.doAll();
        assertThat(model.stateProperty().get()).isEqualTo(State.FAILED);
        assertThat(model.stateWords())
                .isEqualTo("notes.wav: no RIFF WAVE file is not accepted; it must be a WAV file.");
        assertThat(model.figures()).isEmpty();
        model.open(folder.resolve("none.wav"));
        runner.doAll();
        assertThat(model.stateWords()).contains("none.wav", "a file that does not exist");
        model.close();
        assertThat(model.stateProperty().get()).isEqualTo(State.NONE);
    }

    @Test
    void aFileThatWasCutShortSinceIsNoticed() throws IOException {
        open(1, 10);
        wav("tone.wav", 1, 4, i -> 0);
        model.choose(5, 9);
        runner.doAll();
        assertThat(model.stateProperty().get()).isEqualTo(State.FAILED);
        assertThat(model.stateWords()).contains("tone.wav: 4 s long");
        assertThat(model.outdatedProperty().get()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"3|3|3 s", "3.257 s|3.257|3.26 s", "0:04|4|4 s", "'  0:0:5,5'|5.5|5.5 s", "0|0|0 s"})
    void timesAreTakenAsTyped(String typed, double seconds, String shown) throws IOException {
        open(1, 10);
        model.enterFrom("1");
        assertThat(model.enterFrom(typed)).isEmpty();
        assertThat(model.fromProperty().get()).isEqualTo(seconds);
        assertThat(model.timeText(seconds)).isEqualTo(shown);
        assertThat(model.enterFrom(shown)).isEmpty();
        assertThat(model.fromProperty().get()).isEqualTo(seconds);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9.5|From: 9.5 s is not accepted; it must be from 0 to 9 s.",
                "2:00|From: 120 s is not accepted; it must be from 0 to 9 s.",
                "-1|From: \"-1\" is not accepted; it must be a time such as 83.5 or 1:23.5.",
                "0:75|From: \"0:75\" is not accepted; it must be a time such as 83.5 or 1:23.5.",
                "soon|From: \"soon\" is not accepted; it must be a time such as 83.5 or 1:23.5.",
                "''|From: \"\" is not accepted; it must be a time such as 83.5 or 1:23.5."
            })
    void otherThingsAreRefusedWithAReason(String typed, String reason) throws IOException {
        open(1, 10);
        assertThat(model.enterFrom(typed)).hasValue(reason);
        assertThat(model.fromProperty().get()).isZero();
    }

    @Test
    void theEndIsTakenAndRefusedToo() throws IOException {
        assertThat(model.enterTo("3")).hasValue("No recording is open.");
        open(1, 90);
        assertThat(model.timeText(83.5)).isEqualTo("1:23.5");
        assertThat(model.timeText(5)).isEqualTo("0:05");
        assertThat(model.enterTo("1:23.5")).isEmpty();
        assertThat(model.toProperty().get()).isEqualTo(83.5);
        assertThat(model.enterFrom("1:20")).isEmpty();
        assertThat(model.enterTo("1:20.5"))
                .hasValue("To: 1:20.5 min:s is not accepted; it must be from 1:21 to 1:30 min:s.");
        assertThat(model.enterTo("91")).isPresent();
        assertThat(model.enterTo("1:30")).isEmpty();
        runner.doAll();
        assertThat(model.recordingProperty().get().seconds()).isEqualTo(10);
    }

    /** Wherever edges are put, the part stays in the recording and is long enough to be measured. */
    @ParameterizedTest
    @CsvSource({"-5, 3, 0, 3", "9.9, 12, 9, 10", "4, 4, 4, 5", "9.6, 9.7, 9, 10", "7.123456, 2, 2, 7.12"})
    void partsAreMended(double one, double other, double from, double to) throws IOException {
        open(1, 10);
        model.choose(one, other);
        assertThat(model.fromProperty().get()).isCloseTo(from, within(1e-9));
        assertThat(model.toProperty().get()).isCloseTo(to, within(1e-9));
        model.moveTo(0);
        assertThat(model.toProperty().get() - model.fromProperty().get()).isCloseTo(1, within(1e-9));
        runner.doAll();
        assertThat(model.stateProperty().get()).isEqualTo(State.CURRENT);
        model.chooseWhole();
        model.moveFrom(20);
        assertThat(model.fromProperty().get()).isEqualTo(9);
        runner.doAll();
        assertThat(model.stateProperty().get()).isEqualTo(State.CURRENT);
    }

    @Test
    void levelsSayWhatTheyCountFrom() throws IOException {
        open(1, 10);
        model.choose(1, 4);
        runner.doAll();
        assertThat(model.figures().get(0).name()).isEqualTo("Average");
        assertThat(model.figures().get(0).value()).isEqualTo("−40.0 dB");
        assertThat(model.claim()).contains("good for differences only");
        model.offsetProperty().set(110.0);
        assertThat(model.figures().get(0).value()).isEqualTo("70.0 dB(A)");
        assertThat(model.claim()).isEmpty();
        assertThat(model.overload()).isEmpty();
        model.open(wav("loud.wav", 1, 2, i -> i == 7 ? 1 : 0));
        runner.doAll();
        assertThat(model.overload()).startsWith("Overloaded: one sample");
    }
}
