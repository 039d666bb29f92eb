package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * <em>Validation</em> of the state of air against the printed standard atmosphere and an independent computation of dry
 * air.
 */
class AirStateTest {
    /** US Standard Atmosphere as printed in a mechanical engineers' handbook, volume 4, table 6 (read). */
    @ParameterizedTest(name = "{0} m")
    @CsvSource({
        "0, 288.15, 101330, 1.2250, 340.3",
        "1000, 281.65, 89880, 1.1117, 336.4",
        "2000, 275.15, 79500, 1.0066, 332.5",
        "3000, 268.66, 70120, 0.9093, 328.6",
    })
    void standardAtmosphere(double altitude, double kelvin, double pressure, double density, double soundSpeed) {
        AirState air = AirState.of(altitude, kelvin - 273.15);
        assertThat(air.pressure()).isCloseTo(pressure, within(pressure * 3e-4));
        assertThat(air.density()).isCloseTo(density, within(3e-4));
        assertThat(air.soundSpeed()).isCloseTo(soundSpeed, within(0.06));
    }

    /** Density over that at sea level, by altitude in feet, standard atmosphere table 3.5 (read). */
    @ParameterizedTest(name = "{0} ft")
    @CsvSource({"1000, 0.9711", "2000, 0.9428", "3000, 0.9151", "4000, 0.8881", "5000, 0.8617"})
    void densityRatio(double feet, double ratio) {
        double altitude = feet * 0.3048;
        AirState high = AirState.of(altitude, 15 - 0.0065 * altitude);
        assertThat(high.density() / AirState.of(0, 15).density()).isCloseTo(ratio, within(6e-5));
    }

    /** Dry air at 101 325 Pa, computed independently from the stated equations; 15 °C also printed as 1.789e-5 Pa s. */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({
        "-10, 1.3414, 1.6661, 325.20",
        "0, 1.2923, 1.7161, 331.32",
        "10, 1.2466, 1.7652, 337.33",
        "15, 1.2250, 1.7894, 340.29",
        "20, 1.2041, 1.8134, 343.23",
        "25, 1.1839, 1.8372, 346.15",
        "30, 1.1644, 1.8609, 349.04",
        "40, 1.1272, 1.9076, 354.75",
    })
    void dryAir(double celsius, double density, double viscosityE5, double soundSpeed) {
        AirState air = AirState.of(0, celsius);
        assertThat(air.density()).isCloseTo(density, within(6e-5));
        assertThat(air.viscosity() * 1e5).isCloseTo(viscosityE5, within(6e-5));
        assertThat(air.soundSpeed()).isCloseTo(soundSpeed, within(0.012));
    }

    /** Dynamic pressure of standard air, 0.602 V² (printed in a duct design lecture); Re by its definition. */
    @Test
    void dynamicPressureAndReynolds() {
        AirState air = AirState.of(0, 20);
        assertThat(air.dynamicPressure(2.5)).isCloseTo(0.602 * 6.25, within(0.003));
        // 1 m/s in 0.1333 m with the kinematic viscosity 1.5060e-5 m²/s
        assertThat(air.reynolds(1, 0.13333)).isCloseTo(8853, within(2.0));
    }

    @Test
    void refusesWhatIsOutsideItsRange() {
        assertThatThrownBy(() -> AirState.of(12_000, 20))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("altitude")
                .hasMessageContaining("11000");
        assertThatThrownBy(() -> AirState.of(0, Double.NaN)).isInstanceOf(InvalidValue.class);
    }
}
