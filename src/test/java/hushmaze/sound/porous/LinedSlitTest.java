package hushmaze.sound.porous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: attenuation of the least attenuated symmetric mode of a lined slit (both walls, bulk reacting, Miki's layer),
 * against a table computed independently by mode matching and by a high-order finite element method, c = 343.2 m/s.
 */
class LinedSlitTest {
    private static final double C = 343.2;

    @ParameterizedTest
    @CsvSource({
        "100, 50, 20000, 63.10, 0.532",
        "100, 50, 20000, 125.89, 2.038",
        "100, 50, 20000, 251.19, 7.104",
        "100, 50, 20000, 501.19, 21.048",
        "100, 25, 20000, 63.10, 0.170",
        "100, 25, 20000, 125.89, 0.677",
        "100, 25, 20000, 251.19, 2.454",
        "100, 25, 20000, 501.19, 8.129",
        "100, 50, 10000, 125.89, 2.442",
        "100, 50, 10000, 501.19, 18.877",
        "100, 50, 40000, 125.89, 2.334",
        "100, 50, 40000, 501.19, 20.918",
        "50, 25, 20000, 125.89, 1.363",
        "50, 25, 20000, 501.19, 14.905",
        "50, 25, 20000, 1000, 37.645",
        "150, 50, 20000, 125.89, 1.419",
        "150, 50, 20000, 501.19, 16.335",
    })
    void attenuationOfTheLeastAttenuatedMode(double airwayMm, double linerMm, double sigma, double f, double expected) {
        double waves = LinedSlit.axialSquared(airwayMm / 1e3, linerMm / 1e3, new MikiLiner(sigma), f, C)
                .map(squared -> Math.abs(squared.sqrt().im()))
                .orElseThrow();
        double found = 20 / Math.log(10) * 2 * Math.PI * f / C * waves;
        assertThat(found).isCloseTo(expected, within(0.002 + 1e-4 * expected));
    }

    @Test
    void wavesShortToTheSlitAreNotJudged() {
        assertThat(LinedSlit.axialSquared(0.4, 0.05, new MikiLiner(20000), 1000, C))
                .isEmpty();
    }
}
