package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of the need for air. */
class NeedTest {
    private static final AirState AIR = AirState.of(0, 20);
    /** Two people at 0.0052 L/s each in 30 m³, outdoors 420 ppm. */
    private static final Need TWO_PEOPLE = new Need(30, 2 * 5.2e-6, 420e-6, 500, AIR);

    /** Validation: computed independently from the mass balance; columns after 15, 30, 60 and 120 minutes, ppm. */
    @ParameterizedTest(name = "{0} L/s")
    @CsvSource({
        "5, 2500, 710, 959, 1358, 1874",
        "10, 1460, 690, 889, 1147, 1366",
        "15, 1113, 671, 831, 999, 1094",
        "20, 940, 655, 783, 893, 936",
    })
    void carbonDioxide(double litres, double steady, double t15, double t30, double t60, double t120) {
        double flow = litres / 1000;
        assertThat(TWO_PEOPLE.co2Steady(flow) * 1e6).isCloseTo(steady, within(0.51));
        double[] expected = {t15, t30, t60, t120};
        int[] minutes = {15, 30, 60, 120};
        for (int i = 0; i < expected.length; i++) {
            double ppm = TWO_PEOPLE.co2After(420e-6, flow, 60.0 * minutes[i]) * 1e6;
            assertThat(ppm).as("%d min", minutes[i]).isCloseTo(expected[i], within(0.51));
        }
    }

    /**
     * Validation: worked example of a reference on concentration in rooms (read): 100 people at 0.05 m³/h, 500 m³, one air
     * change an hour, one hour, clean at the start and at the inlet: 0.006 m³/m³, exactly 0.00632.
     */
    @Test
    void cinema() {
        Need cinema = new Need(500, 100 * 0.05 / 3600, 0, 0, AIR);
        assertThat(cinema.co2After(0, 500 / 3600.0, 3600)).isCloseTo(0.00632, within(6e-6));
    }

    /** Validation: flow for 1000 ppm 17.9 L/s, sealed room +1248 ppm an hour, computed independently. */
    @Test
    void limitsOfCarbonDioxide() {
        assertThat(TWO_PEOPLE.flowForCo2(1000e-6) * 1000).isCloseTo(17.9, within(0.05));
        assertThat((TWO_PEOPLE.co2After(420e-6, 0, 3600) - 420e-6) * 1e6).isCloseTo(1248, within(0.5));
        // 580 ppm at 1248 ppm an hour
        assertThat(TWO_PEOPLE.secondsToReach(1000e-6, 420e-6, 0)).hasValueCloseTo(580.0 / 1248 * 3600, within(0.5));
        assertThat(TWO_PEOPLE.secondsToReach(1358e-6, 420e-6, 0.005)).hasValueCloseTo(3600.0, within(5.0));
        assertThat(TWO_PEOPLE.secondsToReach(1000e-6, 420e-6, 0.020)).isEmpty();
        assertThat(TWO_PEOPLE.secondsToReach(1000e-6, 1200e-6, 0.020)).hasValue(0);
        assertThat(new Need(30, 0, 420e-6, 0, AIR).secondsToReach(1000e-6, 420e-6, 0))
                .isEmpty();
    }

    /** Validation: 82.6, 33.0 and 165 L/s for 500, 200 and 1000 W at 5 K, from 1.21 kJ/(m³·K), computed independently. */
    @ParameterizedTest(name = "{0} W")
    @CsvSource({"500, 82.6", "200, 33.0", "1000, 165"})
    void heat(double watts, double litres) {
        Need need = new Need(30, 0, 0, watts, AIR);
        assertThat(need.flowForRise(5) * 1000).isCloseTo(litres, within(0.003 * litres));
        assertThat(need.temperatureRise(litres / 1000)).isCloseTo(5, within(0.015));
    }

    /** Validation: 500 W at 10 °F takes 158 cfm by 1.08 · cfm · °F Btu/h, computed independently. */
    @Test
    void heatInFeet() {
        double cfm = new Need(30, 0, 0, 500, AIR).flowForRise(10 / 1.8) / (0.028316846592 / 60);
        assertThat(cfm).isCloseTo(158, within(0.01 * 158));
    }

    /** Property: flow for a limit gives that limit; time to reach a limit is when it is reached; courses are numbers. */
    @Test
    void roundTrips() {
        Random random = new Random(5);
        for (int i = 0; i < 2000; i++) {
            Need need = new Need(
                    5 + 100 * random.nextDouble(),
                    1e-6 + 1e-4 * random.nextDouble(),
                    4e-4,
                    1 + 2000 * random.nextDouble(),
                    AIR);
            double limit = 5e-4 + 2e-3 * random.nextDouble();
            assertThat(need.co2Steady(need.flowForCo2(limit))).isCloseTo(limit, within(1e-12));
            double kelvin = 0.5 + 10 * random.nextDouble();
            assertThat(need.temperatureRise(need.flowForRise(kelvin))).isCloseTo(kelvin, within(1e-9));
            double flow = need.flowForCo2(limit) * random.nextDouble();
            double seconds = need.secondsToReach(limit, 4e-4, flow).orElseThrow();
            assertThat(need.co2After(4e-4, flow, seconds)).isCloseTo(limit, within(1e-9));
            assertThat(need.co2After(4e-4, flow * 1e-9, seconds))
                    .isCloseTo(need.co2After(4e-4, 0, seconds), within(1e-9));
        }
    }

    @Test
    void refusesTheImpossible() {
        assertThatThrownBy(() -> TWO_PEOPLE.co2Steady(0)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> TWO_PEOPLE.temperatureRise(-1)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> TWO_PEOPLE.flowForCo2(420e-6))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("above the outdoor 420");
        assertThatThrownBy(() -> TWO_PEOPLE.flowForRise(Double.NaN)).isInstanceOf(InvalidValue.class);
    }
}
