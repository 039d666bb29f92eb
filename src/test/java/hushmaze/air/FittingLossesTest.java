package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of the losses of plates, louvres, filters, flexible ducts and collars. */
class FittingLossesTest {
    private static final AirState AIR = AirState.of(0, 20);

    /**
     * Validation of the arithmetic: both handbook forms (from memory) evaluated apart from this program, printed to two
     * decimals; low is 0.9 of the older, high 1.1 of the newer.
     */
    @ParameterizedTest(name = "free area {0}")
    @CsvSource({
        "0.3, 18.53, 19.32",
        "0.4, 8.23, 8.76",
        "0.5, 4.00, 4.37",
        "0.6, 1.99, 2.26",
        "0.7, 0.96, 1.15",
        "0.8, 0.42, 0.54"
    })
    void plate(double free, double older, double newer) {
        Zeta zeta = PerforatedPlate.zeta(free);
        assertThat(zeta.likely()).isCloseTo(older, within(0.006));
        assertThat(zeta.low()).isCloseTo(0.9 * older, within(0.006));
        assertThat(zeta.high()).isCloseTo(1.1 * newer, within(0.006));
    }

    @Test
    void plateLimits() {
        assertThat(PerforatedPlate.zeta(1).high()).isZero();
        assertThatThrownBy(() -> PerforatedPlate.zeta(0)).isInstanceOf(InvalidValue.class);
    }

    /** Validation: printed 7 to 9 at an outlet, 8 to 10 at an inlet. */
    @Test
    void louvre() {
        assertThat(WeatherLouvre.zeta(true)).isEqualTo(new Zeta(7, 8, 9));
        assertThat(WeatherLouvre.zeta(false)).isEqualTo(new Zeta(8, 9, 10));
    }

    /** Validation by hand: 20 Pa at 50 L/s; at 25 L/s 5, 7.071 and 10 Pa; at 100 L/s 40, 56.57 and 80 Pa. */
    @ParameterizedTest
    @CsvSource({"0.025, 5, 7.0711, 10", "0.05, 20, 20, 20", "0.1, 40, 56.5685, 80"})
    void filter(double flow, double low, double likely, double high) {
        Loss loss = FilterLoss.zeta(20, 0.05, flow, 0.03, AIR)
                .loss("filter", "filter", FilterLoss.SOURCE, flow / 0.03, AIR);
        assertThat(loss.pressureLow()).isCloseTo(low, within(1e-3));
        assertThat(loss.pressure()).isCloseTo(likely, within(1e-3));
        assertThat(loss.pressureHigh()).isCloseTo(high, within(1e-3));
    }

    /**
     * Validation: at Re 1e5 and relative roughness 0.001 Colebrook's equation gives 0.02217, at 1e4 0.03238 (solved apart
     * from this program); a duct of 0.09144 m has the smooth end of the table there. Within 1 %.
     */
    @ParameterizedTest
    @CsvSource({"1e5, 0.02217", "1e4, 0.03238"})
    void flexibleStraight(double reynolds, double factor) {
        Zeta zeta = FlexibleDuct.zeta(0.9144, 0.09144, 0, reynolds);
        assertThat(zeta.low()).isCloseTo(10 * factor, within(0.1 * factor));
    }

    /** Validation: relative roughness 0.01, Re 1e5, Colebrook 0.03850, the rough end of the same duct; within 1 %. */
    @Test
    void flexibleRough() {
        Zeta zeta = FlexibleDuct.zeta(0.9144, 0.09144, 0, 1e5);
        assertThat(zeta.high()).isCloseTo(0.3850, within(0.00385));
        assertThat(zeta.likely()).isStrictlyBetween(zeta.low(), zeta.high());
    }

    /** By hand: 58 · 0.1 · exp(-4.96 · 0.2) = 2.1508 is added for a tenth of compression at 0.2 m. */
    @Test
    void flexibleCompressed() {
        double straight = FlexibleDuct.zeta(1, 0.2, 0, 3e4).likely();
        assertThat(FlexibleDuct.zeta(1, 0.2, 0.1, 3e4).likely() / straight).isCloseTo(3.1508, within(1e-3));
    }

    /**
     * Validation: measured on ducts of 150 to 250 mm, as the abstract says: moderate compression about four times, more of it
     * close to ten times the pressure drop (our reading: a tenth and three tenths, the smallest duct).
     */
    @ParameterizedTest
    @CsvSource({"0.1, 4, 0.5", "0.3, 10, 1"})
    void flexibleAsMeasured(double compression, double times, double tolerance) {
        double straight = FlexibleDuct.zeta(1, 0.15, 0, 3e4).likely();
        assertThat(FlexibleDuct.zeta(1, 0.15, compression, 3e4).likely() / straight)
                .isCloseTo(times, within(tolerance));
    }

    /** Validation: printed table of narrowings, 0.45, 0.32 and 0.18 at 0.25, 0.5 and 0.75; the formula is within 12 %. */
    @ParameterizedTest
    @CsvSource({"0.25, 0.45", "0.5, 0.32", "0.75, 0.18"})
    void intoACollar(double ratio, double printed) {
        double area = Math.PI * 0.15 * 0.15 / 4 / ratio;
        Zeta zeta = RoundCollar.zeta(area, 0.15, 0, true);
        assertThat(zeta.likely()).isCloseTo(printed, within(0.12 * printed));
        assertThat(zeta.likely()).isCloseTo(0.5 * Math.pow(1 - ratio, 0.75), within(1e-12));
    }

    /** Validation: printed table of widenings, 0.64, 0.36, 0.16 and 0.04. */
    @ParameterizedTest
    @CsvSource({"0.2, 0.64", "0.4, 0.36", "0.6, 0.16", "0.8, 0.04"})
    void outOfACollar(double ratio, double printed) {
        double area = Math.PI * 0.15 * 0.15 / 4 / ratio;
        assertThat(RoundCollar.zeta(area, 0.15, 0, false).likely()).isCloseTo(printed, within(1e-9));
    }

    /** Validation: printed 0.80 at a projection of 0.05 diameters and 1.0 from 0.5 on, out of a very large part. */
    @Test
    void projectingCollar() {
        assertThat(RoundCollar.zeta(1000, 0.1, 0.005, true).likely()).isCloseTo(0.80, within(1e-4));
        assertThat(RoundCollar.zeta(1000, 0.1, 0.1, true).likely()).isCloseTo(1.0, within(1e-4));
    }

    /** By hand: a part of half the collar's area; (1 - 0.5)² on the part, four times that on the collar. */
    @Test
    void collarLargerThanThePart() {
        double area = Math.PI * 0.2 * 0.2 / 8;
        assertThat(RoundCollar.zeta(area, 0.2, 0, true).likely()).isCloseTo(1.0, within(1e-9));
    }
}
