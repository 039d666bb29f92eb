package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.drawing.Paper;
import hushmaze.project.Activity;
import hushmaze.project.AirRule;
import hushmaze.project.Drive;
import hushmaze.project.DuctRun;
import hushmaze.project.FanSound;
import hushmaze.project.Fitting;
import hushmaze.project.MouthPosition;
import hushmaze.project.Noise;
import hushmaze.project.Opening;
import hushmaze.project.Outgoing;
import hushmaze.project.PortFace;
import hushmaze.project.Purpose;
import hushmaze.project.Seam;
import hushmaze.project.SlitMouth;
import hushmaze.project.Target;
import hushmaze.quantity.Severity;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Property tests: there is a word for every value, and an explanation for every entry. */
class TextsTest {
    static Stream<Class<? extends Enum<?>>> enums() {
        return Stream.of(
                Activity.class,
                AirRule.class,
                Drive.Kind.class,
                Fitting.Kind.class,
                Fitting.End.class,
                Paper.class,
                Noise.Place.class,
                DuctRun.Kind.class,
                FanSound.Side.class,
                MouthPosition.class,
                Opening.Kind.class,
                Opening.Surface.class,
                Opening.Beyond.class,
                Outgoing.Receiver.class,
                PortFace.class,
                Seam.Kind.class,
                Purpose.class,
                SlitMouth.class,
                Target.Kind.class,
                Severity.class,
                ResultModel.State.class);
    }

    @ParameterizedTest
    @MethodSource("enums")
    void everyValueHasAWord(Class<? extends Enum<?>> type) {
        assertThat(type.getEnumConstants())
                .allSatisfy(v -> assertThat(Texts.word(v)).isNotBlank());
    }

    @Test
    void everyEntryHasAnExplanationAndNamesARealField() {
        ResourceBundle all = ResourceBundle.getBundle("hushmaze.app.texts", Locale.ROOT);
        assertThat(all.keySet())
                .filteredOn(k -> (k.startsWith("entry.room.") || k.startsWith("entry.path."))
                        && !k.endsWith(".tip")
                        && !k.endsWith(".prompt"))
                .hasSizeGreaterThan(80)
                .allSatisfy(k -> {
                    assertThat(all.containsKey(k + ".tip")).isTrue();
                    assertThat(Field.of(k.substring("entry.".length()))).isNotNull();
                });
    }

    @Test
    void everyEntryThatSharesItsWordsHasAnExplanationToo() {
        ResourceBundle all = ResourceBundle.getBundle("hushmaze.app.texts", Locale.ROOT);
        assertThat(all.keySet())
                .filteredOn(k -> k.matches(
                                "(entry\\.(element|grid|titleBlock|stock|fitting|session|door|seam|choices)|fold)\\..*")
                        && !k.endsWith(".tip")
                        && !k.endsWith(".prompt"))
                .hasSizeGreaterThan(40)
                .allSatisfy(k -> assertThat(all.containsKey(k + ".tip")).isTrue());
    }
}
