package hushmaze.wording;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Validation: figures and units stay together as ISO 80000-1:2022, 7.1.4, wants it (a space between them), from memory. */
class UnbrokenTest {
    @ParameterizedTest
    @CsvSource({
        "through this box NC 23 and 31 dB(A), through this box NC_23 and 31_dB(A)",
        "warms by 9.7 K. It, warms by 9.7_K. It",
        "36 1/2 × 16 1/4 in outside, 36_1/2 × 16_1/4_in outside",
        "2 passes in 3 boxes, 2 passes in 3 boxes",
        "after 5 minutes, after 5 minutes",
        "4 Window panes, 4 Window panes",
        "59 cfm at 0.063 inH2O, 59_cfm at 0.063_inH2O"
    })
    void whatIsReadAsOneStaysTogether(String text, String kept) {
        assertThat(Unbroken.of(text).replace('\u00a0', '_')).isEqualTo(kept);
        assertThat(Unbroken.plain(Unbroken.of(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everyUnitStaysWithItsFigure(Unit unit) {
        String text = ("7 " + unit.symbol()).strip();
        assertThat(Unbroken.of(text)).doesNotContain(" ");
    }

    @Test
    void nothingIsLost() {
        assertThat(Unbroken.of("")).isEmpty();
    }
}
