package hushmaze.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;

/** <em>Property</em> tests: a refused value says which field, what was given, the limit and the unit. */
class InvalidValueTest {
    @Test
    void withinLimits() {
        assertThat(InvalidValue.within("clearWidth", 0.02, 0.02, 3, Unit.MILLIMETRE))
                .isEqualTo(0.02);
        assertThat(InvalidValue.within("clearWidth", 3, 0.02, 3, Unit.MILLIMETRE))
                .isEqualTo(3);
        assertThat(InvalidValue.within("passes", 6, 1, 6)).isEqualTo(6);
    }

    @Test
    void messageHasFieldValueLimitAndUnit() {
        InvalidValue problem = catchThrowableOfType(
                InvalidValue.class, () -> InvalidValue.within("clearWidth", 0.01, 0.02, 3, Unit.MILLIMETRE));
        assertThat(problem).hasMessage("clearWidth: 10 mm is not accepted; it must be from 20 to 3000 mm");
        assertThat(problem.given()).isEqualTo("10");
        assertThat(problem.limit()).isEqualTo("from 20 to 3000");
        assertThat(problem.unit()).isEqualTo("mm");
        assertThat(problem.inside("box").field()).isEqualTo("box.clearWidth");
        assertThat(problem.inside("box").inside("paths[0]")).hasMessageStartingWith("paths[0].box.clearWidth: 10 mm");
    }

    @Test
    void refusesNumbersThatAreNone() {
        assertThatThrownBy(() -> InvalidValue.within("x", Double.NaN, 0, 1, Unit.METRE))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("not a number");
        assertThatThrownBy(() ->
                        InvalidValue.within("x", Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY, Unit.METRE))
                .isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> InvalidValue.within("x", Double.NEGATIVE_INFINITY, 0, 1, Unit.METRE))
                .isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> InvalidValue.within("x", -1, 0, Double.POSITIVE_INFINITY, Unit.METRE))
                .hasMessageContaining("at least 0 m");
        assertThatThrownBy(() -> InvalidValue.within("passes", 7, 1, 6)).hasMessageContaining("from 1 to 6");
    }

    /** A value just outside must not be shown as if it were the limit itself. */
    @Test
    void smallNumbersAreShownAsGiven() {
        assertThatThrownBy(() -> InvalidValue.within("flow", 1e-9, 1e-6, 50, Unit.LITRE_PER_SECOND))
                .hasMessageContaining("0.000001")
                .hasMessageContaining("from 0.001 to 50000");
        assertThatThrownBy(() -> InvalidValue.within("clearWidth", 3.00000001, 0.02, 3, Unit.MILLIMETRE))
                .hasMessageContaining("3000.00001 mm");
    }

    @Test
    void textAndPresence() {
        assertThat(InvalidValue.text("name", "maple", 80)).isEqualTo("maple");
        assertThatThrownBy(() -> InvalidValue.text("name", "  ", 80)).hasMessageContaining("a blank text");
        assertThatThrownBy(() -> InvalidValue.text("name", "x".repeat(81), 80)).hasMessageContaining("81 characters");
        assertThatThrownBy(() -> InvalidValue.text("name", null, 80)).hasMessageContaining("nothing");
        assertThatThrownBy(() -> InvalidValue.present("board", null)).hasMessageContaining("board: nothing");
    }

    @Test
    void noticesNeedTheirParts() {
        assertThatThrownBy(() -> Notice.of(null, Severity.NOTE, "")).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> Notice.of(NoticeKind.NO_LINER, Severity.NOTE, null))
                .isInstanceOf(InvalidValue.class);
        Notice notice = Notice.of(NoticeKind.NO_LINER, Severity.NOTE, "pass 1");
        assertThat(notice.value()).isNull();
        assertThat(notice.limit()).isNull();
        assertThat(notice.unit()).isEqualTo(Unit.NUMBER);
    }
}
