package hushmaze.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: transmission loss of a slit 1.0 m long between liners in boxes with rigid ends, Miki's liner, c = 343.2 m/s,
 * against values computed by mode matching.
 */
class LinedSlitSolutionTest {
    @ParameterizedTest
    @CsvSource({
        "100, 50, 20000, 63.10, 1.212",
        "100, 50, 20000, 125.89, 2.228",
        "100, 50, 20000, 251.19, 7.401",
        "100, 50, 20000, 501.19, 21.485",
        "100, 50, 20000, 1000.0, 50.230",
        "100, 50, 20000, 1995.3, 55.231",
        "100, 50, 20000, 3981.1, 35.929",
        "100, 25, 20000, 63.10, 0.446",
        "100, 25, 20000, 125.89, 0.697",
        "100, 25, 20000, 251.19, 2.517",
        "100, 25, 20000, 501.19, 8.219",
        "100, 25, 20000, 1000.0, 24.401",
        "100, 25, 20000, 1995.3, 67.26",
        "100, 25, 20000, 3981.1, 30.690",
        "100, 50, 10000, 125.89, 2.595",
        "100, 50, 10000, 501.19, 19.381",
        "100, 50, 10000, 1000.0, 42.830",
        "100, 50, 10000, 1995.3, 69.874",
        "100, 50, 40000, 125.89, 2.540",
        "100, 50, 40000, 501.19, 21.109",
        "100, 50, 40000, 1000.0, 39.980",
        "100, 50, 40000, 1995.3, 50.892",
        "50, 25, 20000, 125.89, 1.526",
        "50, 25, 20000, 501.19, 15.218",
        "50, 25, 20000, 1000.0, 38.151",
        "50, 25, 20000, 1995.3, 83.365",
        "150, 50, 20000, 125.89, 1.463",
        "150, 50, 20000, 501.19, 16.562",
        "150, 50, 20000, 1000.0, 40.590",
        "150, 50, 20000, 1995.3, 31.918",
        "150, 50, 20000, 3981.1, 13.206",
    })
    void transmissionLoss(double airwayMm, double linerMm, double sigma, double frequency, double expected) {
        WaveAnswer answer = new WaveSolver(Spaces.slit(airwayMm / 1e3, linerMm / 1e3, sigma)).solve(frequency);
        assertThat(answer.transmissionLoss()).isCloseTo(expected, within(0.01));
        assertThat(answer.residual()).isLessThan(1e-10);
    }
}
