package hushmaze.air.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Fan;
import hushmaze.quantity.InvalidValue;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of the fan curve and its operating point. */
class FanCurveTest {
    /** L/s and Pa of a made-up fan. */
    private static final double[][] POINTS = {{0, 60}, {20, 55}, {40, 45}, {60, 30}, {80, 10}, {90, 0}};

    private static FanCurve fan(double[]... points) {
        return new FanCurve(new Fan(
                "made up",
                List.of(points).stream()
                        .map(p -> new Fan.Point(p[0] / 1000, p[1]))
                        .toList(),
                "made up"));
    }

    /** Validation: values of an independent numerical library's shape-preserving cubic through the same points. */
    @ParameterizedTest
    @CsvSource({"10, 58.02083333333333", "50, 38.14285714285714", "85, 5", "20, 55", "90, 0"})
    void betweenThePoints(double flow, double pressure) {
        assertThat(fan(POINTS).pressure(flow / 1000)).isCloseTo(pressure, within(1e-9));
    }

    /** Property: no overshoot, and falling all the way. */
    @Test
    void falls() {
        FanCurve fan = fan(POINTS);
        double before = 60;
        for (int i = 1; i <= 900; i++) {
            double p = fan.pressure(Math.min(fan.largestFlow(), i * 1e-4));
            assertThat(p).isBetween(0.0, before);
            before = p;
        }
    }

    /** Validation: the fan laws by hand at 0.8 of the speed: 40 L/s, 45 Pa become 32 L/s, 28.8 Pa; power 0.512. */
    @Test
    void fanLaws() {
        assertThat(fan(POINTS).atSpeed(0.8).pressure(0.032)).isCloseTo(28.8, within(1e-9));
        assertThat(fan(POINTS).atSpeed(0.8).largestFlow()).isCloseTo(0.072, within(1e-12));
        assertThat(FanCurve.powerRatio(0.8)).isCloseTo(0.512, within(1e-12));
    }

    @Test
    void refuses() {
        assertThatThrownBy(() -> fan(new double[] {0, 60})).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> fan(new double[] {0, 60}, new double[] {0, 50}))
                .isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> fan(new double[] {0, 60}, new double[] {10, 50}, new double[] {20, 55}))
                .isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> fan(new double[] {0, 50}, new double[] {10, 60}))
                .isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> fan(POINTS).pressure(0.0901)).isInstanceOf(InvalidValue.class);
        assertThat(fan(new double[] {0, 50}, new double[] {10, 60}, new double[] {20, 0})
                        .summitFlow())
                .isCloseTo(0.01, within(1e-12));
    }

    /**
     * Validation: the same library's cubic and its bracketed root finder, system 20 Pa at 50 L/s: 60.65517 L/s, 29.43240 Pa.
     */
    @Test
    void operatingPoint() {
        assertThat(OperatingPoint.of(fan(POINTS), q -> 8000 * q * q))
                .isInstanceOfSatisfying(OperatingPoint.Found.class, found -> {
                    assertThat(found.flow() * 1000).isCloseTo(60.65516829968322, within(1e-9));
                    assertThat(found.pressure()).isCloseTo(29.432395531703165, within(1e-8));
                });
    }

    /** Validation: straight line 60 L/s, 30 Pa to 80 L/s, 10 Pa; 0.008 q² = 90 - q by hand: 60.611 L/s, 29.389 Pa. */
    @Test
    void operatingPointOfAStraightLine() {
        assertThat(OperatingPoint.of(q -> 90 - 1000 * q, 0.06, 0.06, 0.08, q -> 8000 * q * q))
                .isInstanceOfSatisfying(OperatingPoint.Found.class, found -> {
                    assertThat(found.flow() * 1000).isCloseTo(60.611, within(5e-4));
                    assertThat(found.pressure()).isCloseTo(29.389, within(5e-4));
                });
    }

    @Test
    void noOperatingPoint() {
        assertThat(OperatingPoint.of(fan(POINTS), q -> 61 + q))
                .isEqualTo(new OperatingPoint.None(OperatingPoint.Reason.FAN_TOO_WEAK));
        assertThat(OperatingPoint.of(fan(new double[] {0, 60}, new double[] {50, 30}), q -> 100 * q))
                .isEqualTo(new OperatingPoint.None(OperatingPoint.Reason.FAN_RUNS_OFF_ITS_CURVE));
    }
}
