package hushmaze.sound.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Unit;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation of the table of turns: both columns at both ends of every row (the table is from memory), and the unlined column
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

    /** ASHRAE square elbow without vanes, from memory; fw in kHz·in, first and last of each row. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0, 0", "1.89, 0, 0",
        "1.9, 1, 1", "3.79, 1, 1",
        "3.8, 5, 6", "7.49, 5, 6",
        "7.5, 8, 11", "14.99, 8, 11",
        "15, 4, 10", "29.99, 4, 10",
        "30, 3, 10", "400, 3, 10"
    })
    void bothColumnsOfTheTable(double fw, double unlined, double lined) {
        double width = 4 * 0.0254;
        double f = fw * 1000 / 4 * (1 + 1e-12);
        assertThat(AshraeSquareElbow.loss(f, width, false)).isEqualTo(unlined);
        assertThat(AshraeSquareElbow.loss(f, width, true)).isEqualTo(lined);
    }

    /** A row holds one figure for an octave in which the bend's loss varies: it must lie within what that octave has. */
    @ParameterizedTest
    @CsvSource({"0, 1.9, 0.2", "1.9, 3.8, 0", "3.8, 7.5, 0", "7.5, 15, 0"})
    void theUnlinedColumnLiesWithinTheExactBend(double from, double to, double slack) {
        double[] exact = Arrays.stream(MITRE_BEND)
                .filter(row -> inRow(row[0], from, to))
                .mapToDouble(row -> row[1])
                .toArray();
        double printed = AshraeSquareElbow.loss((from + to) / 2 * KILOHERTZ_INCH / 0.1, 0.1, false);
        assertThat(exact).hasSizeGreaterThan(2);
        assertThat(printed)
                .isBetween(
                        Arrays.stream(exact).min().orElseThrow() - slack,
                        Arrays.stream(exact).max().orElseThrow());
    }

    private static boolean inRow(double waves, double from, double to) {
        double fw = waves * SOUND_SPEED / 2 / KILOHERTZ_INCH;
        return fw >= from && fw < to;
    }

    /** The rule of a tenth, worked by hand. */
    @ParameterizedTest
    @CsvSource({"0.010, 0.1, true", "0.0099, 0.1, false", "0.025, 0.25, true", "0, 0.1, false"})
    void aTurnIsLinedFromATenthOfTheWidth(double liner, double width, boolean lined) {
        assertThat(AshraeSquareElbow.lines(liner, width)).isEqualTo(lined);
    }

    /** By hand: 30 kHz·in at 7943 Hz is a width of 95.9 mm. */
    @Test
    void theOpenRowIsSaid() {
        assertThat(AshraeSquareElbow.loss(0.095, true, "turn 1").notices()).isEmpty();
        Notice notice = AshraeSquareElbow.loss(0.1, true, "turn 1").notices().get(0);
        assertThat(notice.kind()).isEqualTo(NoticeKind.TURN_ABOVE_TABLE);
        assertThat(notice.part()).isEqualTo("turn 1");
        assertThat(notice.value()).isEqualTo(0.1);
        assertThat(notice.limit()).isBetween(0.0959, 0.0960);
        assertThat(notice.unit()).isEqualTo(Unit.MILLIMETRE);
    }
}
