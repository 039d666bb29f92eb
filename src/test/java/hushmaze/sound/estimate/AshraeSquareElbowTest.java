package hushmaze.sound.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Unit;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation of the table of turns: both columns in the middle of every row (the table is from memory), and the unlined column
 * against the transmission loss of a rigid mitre bend computed apart from the program. Rules worked by hand.
 */
class AshraeSquareElbowTest {
    private static final double KILOHERTZ_INCH = 25.4;
    private static final double SOUND_SPEED = 343.2;

    /**
     * Rigid mitre bend between ducts of width h, exact, by mode matching with 150 modes: k h/π = 2 f h/c and the
     * transmission loss in dB, below the first cut-on for the plane wave, above it for the power in all modes.
     */
    private static final double[][] MITRE_BEND = {
        {0.05, 0.005},
        {0.1, 0.021},
        {0.2, 0.092},
        {0.3, 0.235},
        {0.4, 0.505},
        {0.5, 1.030},
        {0.6, 2.113},
        {0.65, 3.062},
        {0.7, 4.473},
        {0.75, 6.565},
        {0.8, 9.659},
        {0.85, 14.292},
        {0.9, 21.804},
        {1.02, 5.05},
        {1.1, 3.29},
        {1.2, 3.50},
        {1.3, 4.42},
        {1.5, 7.42},
        {1.7, 10.19},
        {1.9, 13.55},
        {2.1, 5.84},
        {2.5, 6.96},
        {2.9, 17.59}
    };

    /** ASHRAE square elbow without vanes, from memory; fw in kHz·in, the middle of each row by ratio, √(from · to). */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0, 0",
        "1.3435, 0, 0",
        "2.6870, 1, 1",
        "5.3385, 5, 6",
        "10.6066, 8, 11",
        "21.2132, 4, 10",
        "42.4264, 3, 10",
        "400, 3, 10"
    })
    void bothColumnsOfTheTable(double fw, double unlined, double lined) {
        assertThat(atRow(fw, 0)).isCloseTo(unlined, within(1e-3));
        assertThat(atRow(fw, 1)).isCloseTo(lined, within(1e-3));
    }

    /** By hand: half way, by ratio, from 2.6870 to 5.3385 is 3.7874; half lined is half way between the columns. */
    @Test
    void betweenTheMiddlesTheLossGoesOverInAStraightLine() {
        assertThat(atRow(3.7874, 0)).isCloseTo(3, within(1e-3));
        assertThat(atRow(3.7874, 1)).isCloseTo(3.5, within(1e-3));
        assertThat(atRow(3.7874, 0.5)).isCloseTo(3.25, within(1e-3));
    }

    /** A row holds one figure for an octave in which the bend's loss varies: it must lie within what that octave has. */
    @ParameterizedTest
    @CsvSource({"0, 1.9, 0.2", "1.9, 3.8, 0", "3.8, 7.5, 0", "7.5, 15, 0"})
    void theUnlinedColumnLiesWithinTheExactBend(double from, double to, double slack) {
        double[] exact = Arrays.stream(MITRE_BEND)
                .filter(row -> inRow(row[0], from, to))
                .mapToDouble(row -> row[1])
                .toArray();
        double printed = atRow(from == 0 ? to / Math.sqrt(2) : Math.sqrt(from * to), 0);
        assertThat(exact).hasSizeGreaterThan(2);
        assertThat(printed)
                .isBetween(
                        Arrays.stream(exact).min().orElseThrow() - slack,
                        Arrays.stream(exact).max().orElseThrow());
    }

    private static double atRow(double fw, double lined) {
        double width = 0.1;
        return AshraeSquareElbow.loss(fw * KILOHERTZ_INCH / width, width, lined);
    }

    private static boolean inRow(double waves, double from, double to) {
        double fw = waves * SOUND_SPEED / 2 / KILOHERTZ_INCH;
        return fw >= from && fw < to;
    }

    /** A tenth of the width and two widths, worked by hand; half of either makes an unlined turn, three quarters half a lined one. */
    @ParameterizedTest
    @CsvSource({
        "0.010, 0.2, 0.1, 1",
        "0.025, 0.6, 0.1, 1",
        "0.025, 0.5, 0.25, 1",
        "0.0075, 0.2, 0.1, 0.5",
        "0.010, 0.15, 0.1, 0.5",
        "0.008, 0.15, 0.1, 0.5",
        "0.005, 0.2, 0.1, 0",
        "0.010, 0.1, 0.1, 0",
        "0, 1, 0.1, 0",
        "0.010, 0, 0.1, 0"
    })
    void howFarATurnIsLined(double liner, double beyond, double width, double share) {
        assertThat(AshraeSquareElbow.linedShare(liner, beyond, width)).isCloseTo(share, within(1e-9));
    }

    /** By hand: 30 kHz·in at 7943 Hz is a width of 95.9 mm. */
    @Test
    void theOpenRowIsSaid() {
        assertThat(AshraeSquareElbow.loss(0.095, 1, "turn 1").notices()).isEmpty();
        Notice notice = AshraeSquareElbow.loss(0.1, 1, "turn 1").notices().get(0);
        assertThat(notice.kind()).isEqualTo(NoticeKind.TURN_ABOVE_TABLE);
        assertThat(notice.part()).isEqualTo("turn 1");
        assertThat(notice.value()).isEqualTo(0.1);
        assertThat(notice.limit()).isBetween(0.0959, 0.0960);
        assertThat(notice.unit()).isEqualTo(Unit.MILLIMETRE);
    }
}
