package hushmaze.wording;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation, by hand: what is said about roughly, in both systems of units. */
class AmountsTest {
    /** 440 mm are 17.3 in; 95.9 mm are 3.78 in, the next quarter is 3.75; 253 mm are 9.96 in. */
    @ParameterizedTest
    @CsvSource({"0.440, 440 mm, 17 in", "0.0959, 96 mm, 3 3/4 in", "0.253, 250 mm, 10 in", "1.2345, 1200 mm, 49 in"})
    void aboutALength(double metres, String metric, String inch) {
        assertThat(new Amounts(UnitSystem.METRIC).about(metres, Unit.MILLIMETRE))
                .isEqualTo(metric);
        assertThat(new Amounts(UnitSystem.INCH).about(metres, Unit.MILLIMETRE)).isEqualTo(inch);
    }

    @Test
    void otherThingsHaveTwoDigits() {
        assertThat(new Amounts(UnitSystem.INCH).about(567, Unit.HERTZ)).isEqualTo("570 Hz");
    }

    /** 3 Pa are 3 / 249.08891 = 0.01204 inH2O. */
    @Test
    void theLimitOfTheRoomsPressureIsInTheProjectsUnits() {
        Notice notice = new Notice(NoticeKind.OPENING_MISSING, Severity.NOTE, "", 0.006, null, Unit.SQUARE_METRE);
        assertThat(new Wording(UnitSystem.METRIC).notice(notice)).contains("within 3 Pa");
        assertThat(new Wording(UnitSystem.INCH).notice(notice)).contains("within 0.012 inH2O");
    }
}
