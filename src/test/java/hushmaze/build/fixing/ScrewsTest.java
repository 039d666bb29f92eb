package hushmaze.build.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> of single screws against printed tables and worked examples of the design specification. */
class ScrewsTest {
    private static final double POUND = 4.4482216152605;
    private static final double INCH = 0.0254;
    private static final double PSI = POUND / INCH / INCH;

    /** Lag screws, National Design Specification table 12.2A, as read: 1/4, 5/16, 3/8, 7/16, 1/2 in, lb an inch of thread. */
    @ParameterizedTest(name = "G {0}")
    @CsvSource({
        "0.36, 137, 163, 186, 209, 231",
        "0.42, 173, 205, 235, 264, 291",
        "0.50, 225, 266, 305, 342, 378",
        "0.55, 260, 307, 352, 395, 437",
        "0.67, 349, 413, 473, 531, 587",
    })
    void lagWithdrawal(double gravity, double a, double b, double c, double d, double e) {
        double[] printed = {a, b, c, d, e};
        double[] inches = {0.25, 0.3125, 0.375, 0.4375, 0.5};
        for (int i = 0; i < printed.length; i++) {
            assertThat(Withdrawal.lag(gravity, inches[i] * INCH, INCH) / POUND).isCloseTo(printed[i], within(0.51));
        }
    }

    /** Wood screws: a worked example as read, spruce of G 0.45, no. 10 (0.190 in), 109 lb an inch (it cuts off 109.7). */
    @Test
    void woodScrewWithdrawal() {
        assertThat(Withdrawal.woodScrew(0.45, 0.190 * INCH, INCH) / POUND).isBetween(109.0, 110.0);
    }

    /**
     * Lag screws through steel plates, table 12K, as read, along and across the grain, rounded there to 10 lb; root diameters
     * 0.173, 0.227 and 0.265 in, bending 70, 60 and 45 ksi, steel 61.85 ksi in bearing, eight diameters in the timber.
     */
    @ParameterizedTest(name = "plate {0} in, screw {1} in, G {2}")
    @CsvSource({
        "0.075, 0.25, 0.67, 170, 130",
        "0.075, 0.25, 0.42, 140, 100",
        "0.075, 0.3125, 0.55, 200, 140",
        "0.075, 0.375, 0.50, 200, 130",
        "0.105, 0.25, 0.50, 160, 120",
        "0.105, 0.3125, 0.42, 190, 120",
        "0.105, 0.375, 0.55, 210, 140",
        "0.120, 0.25, 0.55, 180, 130",
        "0.120, 0.3125, 0.50, 210, 140",
        "0.120, 0.375, 0.42, 190, 120",
    })
    void lagShearThroughSteel(double plate, double diameter, double gravity, double along, double across) {
        double root = diameter == 0.25 ? 0.173 : diameter == 0.3125 ? 0.227 : 0.265;
        double bending = (diameter == 0.25 ? 70_000 : diameter == 0.3125 ? 60_000 : 45_000) * PSI;
        double inTimber = 8 * diameter * INCH;
        double steel = 61_850 * PSI;
        double first = new YieldLimit(
                        root * INCH, 1, inTimber, plate * INCH, YieldLimit.alongGrain(gravity), steel, bending)
                .shear();
        double other = new YieldLimit(
                        root * INCH,
                        1.25,
                        inTimber,
                        plate * INCH,
                        YieldLimit.acrossGrain(gravity, diameter * INCH),
                        steel,
                        bending)
                .shear();
        assertThat(10 * Math.round(first / POUND / 10)).isEqualTo((long) along);
        assertThat(10 * Math.round(other / POUND / 10)).isEqualTo((long) across);
    }
}
