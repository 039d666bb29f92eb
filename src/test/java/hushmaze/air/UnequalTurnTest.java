package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of sharp turns from one width into another. */
class UnequalTurnTest {
    /** Validation: the cells of the duct construction handbook's table A-7 E that could be read without doubt. */
    @ParameterizedTest(name = "H/W {0}, W1/W {1}")
    @CsvSource({"0.25, 0.6, 1.8", "0.25, 1.2, 1.1", "1, 0.6, 1.7", "1, 1.2, 1.0", "4, 0.6, 1.5", "4, 1.2, 0.81"})
    void printedCells(double aspect, double ratio, double printed) {
        assertThat(UnequalTurn.table(aspect, ratio)).isCloseTo(printed, within(1e-12));
    }

    /** Property: equal widths give the turn of equal widths at the aspects of the table. */
    @Test
    void equalWidths() {
        for (double aspect : new double[] {0.25, 1, 4, 8}) {
            assertThat(UnequalTurn.zeta(aspect, 1, 2e4, 0.01).likely())
                    .isCloseTo(SharpTurn.zeta(aspect, 2e4, 0.01).likely(), within(1e-12));
        }
    }

    /** Property: a narrower way on is never cheaper in pascals, and a wider one never below a plain sudden widening. */
    @Test
    void narrowerIsDearer() {
        for (double aspect = 0.1; aspect < 12; aspect *= 1.3) {
            double before = Double.POSITIVE_INFINITY;
            for (double ratio = 0.1; ratio < 2; ratio *= 1.05) {
                double zeta = UnequalTurn.table(aspect, ratio);
                assertThat(zeta).isLessThanOrEqualTo(before * (1 + 1e-12));
                before = zeta;
            }
            for (double ratio = 1; ratio < 40; ratio *= 1.2) {
                assertThat(UnequalTurn.table(aspect, ratio)).isGreaterThanOrEqualTo((1 - 1 / ratio) * (1 - 1 / ratio));
            }
        }
    }

    /** Property: beyond the narrow end the coefficient on the velocity after the turn stays. */
    @Test
    void heldOnTheVelocityAfterIt() {
        double at = UnequalTurn.table(1, 0.6) * 0.6 * 0.6;
        assertThat(UnequalTurn.table(1, 0.2) * 0.2 * 0.2).isCloseTo(at, within(1e-12));
        assertThat(UnequalTurn.notice("room port", 0.2)).isPresent();
        assertThat(UnequalTurn.notice("room port", 3)).isPresent();
        assertThat(UnequalTurn.notice("room port", 1.5)).isEmpty();
    }
}
