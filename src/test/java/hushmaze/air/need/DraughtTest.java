package hushmaze.air.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of the draught rate and of the jet that causes it. */
class DraughtTest {
    /** Validation: guidance to the Danish building regulations (read), DR 20 %, Tu 40 %; velocities printed to 0.01 m/s. */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({
        "18, 0.15",
        "19, 0.15",
        "20, 0.16",
        "21, 0.17",
        "22, 0.18",
        "23, 0.19",
        "24, 0.21",
        "25, 0.23",
        "26, 0.25",
        "27, 0.27",
        "28, 0.31",
    })
    void danishTable(double temperature, double velocity) {
        assertThat(Draught.velocityFor(20, temperature, 40)).isCloseTo(velocity, within(0.0055));
        assertThat(Draught.rate(velocity, temperature, 40)).isCloseTo(20, within(0.75));
    }

    /** Validation: velocities for the categories' 10, 20 and 30 %, Tu 40 %, computed independently from the formula. */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({
        "20, 0.099, 0.162, 0.221",
        "22, 0.110, 0.182, 0.248",
        "24, 0.125, 0.210, 0.285",
        "26, 0.147, 0.248, 0.337",
    })
    void categories(double temperature, double a, double b, double c) {
        assertThat(Draught.velocityFor(10, temperature, 40)).isCloseTo(a, within(0.00051));
        assertThat(Draught.velocityFor(20, temperature, 40)).isCloseTo(b, within(0.00051));
        assertThat(Draught.velocityFor(30, temperature, 40)).isCloseTo(c, within(0.00051));
    }

    /** Property: still air is not felt, nothing is above 100 %, the rate and its velocity invert each other. */
    @Test
    void roundTrips() {
        assertThat(Draught.rate(0.03, 22, 40)).isZero();
        assertThat(Draught.rate(20, 22, 40)).isEqualTo(100);
        Random random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            double t = 15 + 15 * random.nextDouble();
            double turbulence = 70 * random.nextDouble();
            double rate = 0.5 + 95 * random.nextDouble();
            double velocity = Draught.velocityFor(rate, t, turbulence);
            assertThat(Draught.rate(velocity, t, turbulence)).isCloseTo(rate, within(1e-6));
            assertThat(Draught.rate(1.01 * velocity, t, turbulence)).isGreaterThan(rate);
        }
    }

    @Test
    void range() {
        assertThat(Draught.inRange(0.2, 22, 40)).isTrue();
        assertThat(Draught.inRange(0.5, 22, 40)).isFalse();
        assertThat(Draught.inRange(0.2, 19, 40)).isFalse();
        assertThat(Draught.inRange(0.2, 27, 40)).isFalse();
        assertThat(Draught.inRange(0.2, 22, 71)).isFalse();
        assertThatThrownBy(() -> Draught.rate(0.2, 34, 40)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> Draught.rate(-0.1, 22, 40)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> Draught.velocityFor(0, 22, 40)).isInstanceOf(InvalidValue.class);
    }

    /** Validation, by hand: 0.04 m², 1.3 m/s, 2 m: 1.3 · 0.2 / 2 times 4, 5 and 7. */
    @Test
    void jet() {
        JetVelocity jet = JetVelocity.at(0.04, 1.3, 2);
        assertThat(jet.low()).isCloseTo(0.52, within(1e-12));
        assertThat(jet.likely()).isCloseTo(0.65, within(1e-12));
        assertThat(jet.high()).isCloseTo(0.91, within(1e-12));
        assertThat(JetVelocity.at(0.04, 1.3, 0.5)).isEqualTo(new JetVelocity(1.3, 1.3, 1.3));
        assertThat(JetVelocity.at(0.04, 0, 2).high()).isZero();
        assertThatThrownBy(() -> JetVelocity.at(0.04, 1, 0)).isInstanceOf(InvalidValue.class);
    }
}
