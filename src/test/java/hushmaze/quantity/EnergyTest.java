package hushmaze.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> of energy sums against numbers worked by hand, and <em>property</em> tests. */
class EnergyTest {
    private static final double SILENCE = Double.NEGATIVE_INFINITY;

    /** Worked by hand: 10 lg 2 = 3.0103; 10 lg(1 + 0.1) = 0.4139; 10 lg(1 + 0.01) = 0.0432. */
    @ParameterizedTest(name = "{0} and {1} dB")
    @CsvSource({"60, 60, 63.0103", "60, 50, 60.4139", "60, 40, 60.0432", "-20, -20, -16.9897", "0, 0, 3.0103"})
    void twoLevels(double one, double other, double sum) {
        assertThat(Energy.sum(one, other)).isCloseTo(sum, within(6e-5));
        assertThat(Energy.sum(other, one)).isCloseTo(sum, within(6e-5));
        assertThat(Energy.minus(sum, other)).isCloseTo(one, within(2e-2));
    }

    /** Worked by hand: ten times 50 dB is 60 dB; 70, 73.0103 and 74.7712 (10 lg 1, 2, 3) together 10 lg 6 above 70. */
    @Test
    void severalLevels() {
        assertThat(Energy.sum(50, 50, 50, 50, 50, 50, 50, 50, 50, 50)).isCloseTo(60, within(1e-9));
        assertThat(Energy.sum(70, 73.0103, 74.7712)).isCloseTo(77.7815, within(1e-4));
        assertThat(Energy.mean(60, 60, SILENCE, SILENCE)).isCloseTo(56.9897, within(6e-5));
    }

    /** Worked by hand: 63.0103 less 60 is 60; 60 less 50 is 10 lg 0.9 below 60. */
    @Test
    void difference() {
        assertThat(Energy.minus(63.0103, 60)).isCloseTo(60, within(1e-4));
        assertThat(Energy.minus(60, 50)).isCloseTo(60 - 0.4576, within(6e-5));
        assertThat(Energy.minus(60, 60)).isEqualTo(SILENCE);
        assertThat(Energy.minus(60, 61)).isEqualTo(SILENCE);
        assertThat(Energy.minus(60, SILENCE)).isEqualTo(60);
        assertThat(Energy.minus(SILENCE, SILENCE)).isEqualTo(SILENCE);
    }

    /** Worked by hand: 40 dB beside an open hundredth is 10 lg(1e-4 + 1e-2) = 19.957. */
    @Test
    void routesSideBySide() {
        assertThat(Energy.parallelLoss(40, 20)).isCloseTo(19.957, within(6e-4));
        assertThat(Energy.parallelLoss(30, Double.POSITIVE_INFINITY)).isCloseTo(30, within(1e-12));
        // three bands 10, 20, 30: mean of 0.1, 0.01, 0.001 is 0.037
        assertThat(Energy.meanLoss(10, 20, 30)).isCloseTo(14.318, within(6e-4));
        assertThat(Energy.meanLoss(25, 25, 25)).isCloseTo(25, within(1e-12));
    }

    /** Worked by hand. */
    @Test
    void ratios() {
        assertThat(Energy.ratio(20)).isCloseTo(100, within(1e-12));
        assertThat(Energy.ratio(SILENCE)).isZero();
        assertThat(Energy.db(0.5)).isCloseTo(-3.0103, within(6e-5));
        assertThat(Energy.db(0)).isEqualTo(SILENCE);
    }

    @Test
    void edges() {
        assertThat(Energy.sum()).isEqualTo(SILENCE);
        assertThat(Energy.sum(SILENCE, SILENCE)).isEqualTo(SILENCE);
        assertThat(Energy.sum(SILENCE, 12)).isEqualTo(12);
        assertThat(Energy.sum(Double.POSITIVE_INFINITY, 12)).isEqualTo(Double.POSITIVE_INFINITY);
        // far beyond what 10^(L/10) itself could hold
        assertThat(Energy.sum(5000, 5000)).isCloseTo(5003.0103, within(6e-5));
        assertThat(Energy.sum(-9000, -9000)).isCloseTo(-8996.9897, within(6e-5));
        assertThatThrownBy(() -> Energy.sum(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Energy.minus(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Energy.db(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(Energy::mean).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(Energy::meanLoss).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Energy.parallelLoss(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Property: what is added can be taken away; the sum is above the top and at most 10 lg n above it. */
    @Test
    void addAndTakeAway() {
        Random random = new Random(1);
        for (int i = 0; i < 2000; i++) {
            double one = 100 * random.nextDouble();
            double other = one - 25 * random.nextDouble();
            double sum = Energy.sum(one, other);
            assertThat(sum).isBetween(one, one + 3.0104);
            assertThat(Energy.minus(sum, other)).isCloseTo(one, within(1e-9));
            assertThat(Energy.minus(sum, one)).isCloseTo(other, within(1e-9));
        }
    }
}
