package hushmaze.wording;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.AirComparison;
import hushmaze.assess.AirComparison.Kind;
import hushmaze.assess.AirComparison.Line;
import hushmaze.assess.AirComparison.Verdict;
import hushmaze.assess.BoxFitting;
import hushmaze.assess.BoxFitting.Value;
import hushmaze.assess.Finding;
import hushmaze.project.Reading;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.UnitSystem;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Regression and property tests of what was measured, in words: every kind has its sentence, and figures have their unit. */
class CompareWordingTest {
    private static final Band LOW = BandSet.THIRD_OCTAVE.bands().get(0);
    private static final Band HIGH = BandSet.THIRD_OCTAVE.bands().get(23);

    private final CompareWording words = new CompareWording(new Wording(UnitSystem.METRIC));

    @ParameterizedTest
    @EnumSource(Finding.Kind.class)
    void everyFindingHasItsSentenceForOneBandAndForSeveral(Finding.Kind kind) {
        String several = words.finding(new Finding(kind, LOW, HIGH, 4.25));
        assertThat(several).contains("from 50 to 10k Hz").doesNotContain("{").endsWith(".");
        String one = words.finding(new Finding(kind, LOW, LOW, 4.25));
        assertThat(one).contains("at 50 Hz").doesNotContain("{");
        assertThat(words.next(new Finding(kind, LOW, LOW, null))).endsWith(".");
    }

    @Test
    void everyLineOfAirHasItsSentence() {
        for (Kind kind : Kind.values()) {
            for (Verdict verdict : Verdict.values()) {
                boolean open = verdict == Verdict.NOT_PREDICTED;
                Line line = new Line(kind, 1, 0.1, open ? null : 2.0, open ? null : 3.0, verdict, false);
                assertThat(words.airSentence(line))
                        .contains("±", open ? "no prediction" : " to ")
                        .doesNotContain("{");
                boolean off = verdict == Verdict.LESS || verdict == Verdict.MORE;
                assertThat(words.airNext(line).isEmpty()).isEqualTo(!off);
            }
        }
        Line beyond = new Line(Kind.DOOR_PRESSURE, 4, 0.5, 1.0, 1.0, Verdict.MORE, true);
        assertThat(words.airSentence(beyond))
                .isEqualTo(
                        "Pressure in the room, door shut: 4 Pa ± 0.5 Pa measured, 1 Pa predicted: more than predicted.");
        assertThat(words.airNext(beyond))
                .startsWith("More than 3 Pa across the door")
                .contains("fuel is burnt");
        assertThat(words.airLines(new AirComparison(List.of()))).isEmpty();
        assertThat(words.airLines(new AirComparison(List.of(beyond)))).hasSize(4);
    }

    @Test
    void aFitIsToldWithItsEnds() {
        Value gap = new Value(0.00031, 0.0004, 0.00062);
        Value liner = new Value(9_950.0, 20_040, 41_000.0);
        List<String> all = words.fitting(new BoxFitting(gap, liner, true, 8.3, 1.2, 22));
        assertThat(all.get(0)).contains("gap of 0.4 mm", "between 0.31 mm and 0.62 mm");
        assertThat(all.get(1)).contains("20000 Pa·s/m²", "between 10000 Pa·s/m² and 41000 Pa·s/m²");
        assertThat(all.get(2)).contains("1.2 dB off", "8.3 dB off", "22 bands");
    }

    @Test
    void openEndsAreTold() {
        Value tight = new Value(0.0, 0, 0.00012);
        assertThat(fitted(tight, null)).hasSize(2).first().asString().contains("no more than a gap of 0.12 mm");
        Value wide = new Value(0.004, 0.005, null);
        assertThat(fitted(wide, new Value(null, 20_000, null)))
                .anySatisfy(s -> assertThat(s).contains("4 mm or more"))
                .anySatisfy(s -> assertThat(s).contains("say nothing about the flow resistivity"));
        assertThat(fitted(tight, new Value(15_000.0, 60_000, null)))
                .anySatisfy(s -> assertThat(s).contains("at least 15000 Pa·s/m²"));
        assertThat(fitted(tight, new Value(null, 5_000, 15_000.0)))
                .anySatisfy(s -> assertThat(s).contains("no more than 15000 Pa·s/m²"));
        assertThat(words.fitting(new BoxFitting(tight, null, false, 9, 8, 24)))
                .singleElement()
                .asString()
                .contains("Something else is the matter");
    }

    private List<String> fitted(Value gap, Value liner) {
        return words.fitting(new BoxFitting(gap, liner, true, 8, 1, 24));
    }

    @Test
    void whereLevelsAreFromIsTold() {
        assertThat(words.recordingSource(2, 1.5, 30.0, 94.0))
                .isEqualTo("Recording, channel 2, from 1.5 to 30 s; a sine at full scale is 94 dB.");
        assertThat(words.recordingSource(1, 0, null, null)).contains("to its end", "not calibrated");
        assertThat(Arrays.stream(Reading.Round.values()).map(words::round).distinct())
                .hasSize(4);
    }
}
