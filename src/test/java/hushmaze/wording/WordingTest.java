package hushmaze.wording;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Relaxation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Property: every kind of notice and every limit has its sentence, with all its blanks filled. */
class WordingTest {
    private final Wording metric = new Wording(UnitSystem.METRIC);
    private final Wording inches = new Wording(UnitSystem.INCH);

    @ParameterizedTest
    @EnumSource(NoticeKind.class)
    void everyNoticeHasASentence(NoticeKind kind) {
        String sentence = metric.notice(Notice.of(kind, Severity.NOTE, "pass 2", 0.05, 0.04, Unit.MILLIMETRE));
        assertThat(sentence).isNotBlank().doesNotContain("{").endsWith(".");
    }

    @ParameterizedTest
    @EnumSource(Relaxation.Limit.class)
    void everyLimitHasASentence(Relaxation.Limit limit) {
        Relaxation relaxation = new Relaxation(limit, 0.3, 0.4, Unit.MILLIMETRE);
        assertThat(metric.relaxation(relaxation)).contains("400 mm").contains("300 mm");
    }

    @Test
    void aNoticeNamesPartValueAndLimit() {
        Notice notice =
                Notice.of(NoticeKind.VELOCITY_ABOVE_LIMIT, Severity.STOP, "turn 1", 2.8, 2.5, Unit.METRE_PER_SECOND);
        assertThat(metric.notice(notice)).contains("turn 1", "2.8 m/s", "2.5 m/s");
        // By hand: 2.8 m/s * 60 / 0.3048 = 551.2 ft/min.
        assertThat(inches.notice(notice)).contains("551 ft/min");
    }

    @Test
    void amountsInBothSystems() {
        assertThat(metric.amounts().flow(0.028)).isEqualTo("28 L/s");
        // By hand: 0.028 m³/s / 0.000471947 = 59.3 cfm.
        assertThat(inches.amounts().flow(0.028)).isEqualTo("59 cfm");
        assertThat(inches.amounts().sizes(0.1397, 0.0254)).isEqualTo("5 1/2 × 1 in");
        assertThat(metric.amounts().decibels(-0.04)).isEqualTo("0 dB");
    }
}
