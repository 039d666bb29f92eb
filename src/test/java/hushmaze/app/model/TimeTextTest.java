package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Property: a time that is shown is the one that was meant, to a hundredth of a second, and can be typed back. */
class TimeTextTest {
    @ParameterizedTest
    @CsvSource({
        "0, false, 0",
        "0, true, 0:00",
        "9.999, true, 0:10",
        "59.995, true, 1:00",
        "83.5, true, 1:23.5",
        "60.07, true, 1:00.07",
        "83.504, false, 83.5",
        "100, false, 100",
        "3600, true, 1:00:00",
        "3723.25, true, 1:02:03.25"
    })
    void timesAreShownAndTypedBack(double seconds, boolean minutes, String shown) {
        assertThat(TimeText.show(seconds, minutes)).isEqualTo(shown);
        double back = TimeText.parse("time", shown);
        assertThat(Math.abs(back - seconds)).isLessThan(0.0051);
        assertThat(TimeText.show(back, minutes)).isEqualTo(shown);
    }
}
