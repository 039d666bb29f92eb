package hushmaze.sound.quick;

import static hushmaze.sound.quick.TestPaths.SOUND_SPEED;
import static hushmaze.sound.quick.TestPaths.end;
import static hushmaze.sound.quick.TestPaths.nearest;
import static hushmaze.sound.quick.TestPaths.side;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.solid.Solid;
import hushmaze.sound.porous.MikiLiner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation of the quick wave against tables computed apart from the program: a lined slit of 1 m between rigid ducts (mode
 * matching, confirmed by finite elements of high order to 0.001 dB), one rigid square bend (mode matching, 150 modes), two
 * of them (60 modes), and the closed form of a simple expansion chamber. c = 343.2 m/s. The tolerances are those of the
 * few modes used, not of the printed digits.
 */
class QuickWaveTest {
    private static final QuickTables BARE = new QuickTables(null, SOUND_SPEED);

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
    void linedSlitOfOneMetre(double airwayMm, double linerMm, double sigma, double f, double expected) {
        double width = airwayMm / 1e3;
        Solid solid = TestPaths.straight(
                width, 1.0, TestPaths.liner(linerMm / 1e3, sigma), TestPaths.SIDES, end(width), end(width));
        QuickResult result = QuickWave.of(solid, new MikiLiner(sigma), SOUND_SPEED);
        assertThat(result.transmissionLoss()[nearest(f)]).isCloseTo(expected, within(0.06));
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.021",
        "0.2, 0.092",
        "0.3, 0.235",
        "0.4, 0.505",
        "0.5, 1.030",
        "0.6, 2.113",
        "0.65, 3.062",
        "0.7, 4.473",
        "0.75, 6.565",
        "0.8, 9.659",
        "0.85, 14.292",
        "0.9, 21.804",
        "1.02, 5.05",
        "1.1, 3.29",
        "1.2, 3.50",
        "1.3, 4.42",
        "1.5, 7.42",
        "1.7, 10.19",
        "1.9, 13.55",
        "2.1, 5.84",
        "2.5, 6.96",
        "2.9, 17.59",
    })
    void oneSquareBend(double khOverPi, double expected) {
        int f = nearest(500);
        double h = khOverPi * SOUND_SPEED / (2 * QuickGrid.FINE.hz(f));
        Solid solid = TestPaths.straight(h, 2 * h, null, LinedFaces.NONE, side(h), end(h));
        double found = QuickWave.of(solid, BARE).transmissionLoss()[f];
        assertThat(found).isCloseTo(expected, within(0.003 + 0.02 * expected));
    }

    /** A turn round a baffle as thick as one or two pass widths. Values next to nulls are left out. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.3, 0.02",
        "1, 0.4, 1.00",
        "1, 0.5, 3.57",
        "1, 0.6, 5.46",
        "1, 0.7, 0.81",
        "2, 0.3, 0.73",
        "2, 0.4, 1.61",
        "2, 0.5, 0.11",
        "2, 0.6, 5.57",
        "2, 0.7, 12.21",
        "2, 0.8, 11.98",
    })
    void twoBendsToTheSameSide(double legOverWidth, double khOverPi, double expected) {
        int f = nearest(khOverPi * SOUND_SPEED / (2 * 0.05));
        double h = khOverPi * SOUND_SPEED / (2 * QuickGrid.FINE.hz(f));
        Solid solid = TestPaths.maze(2, h, h + 0.1, h, legOverWidth * h / 2, 2, null, LinedFaces.NONE, end(h), end(h));
        double found = QuickWave.of(solid, BARE).transmissionLoss()[f];
        assertThat(found).isCloseTo(expected, within(0.06 + 0.03 * expected));
    }

    /** In by one long side and out by the other. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.1, 0.06",
        "1, 0.2, 0.07",
        "1, 0.3, 0.02",
        "1, 0.4, 1.04",
        "1, 0.5, 3.78",
        "1, 0.6, 6.03",
        "1, 0.7, 1.00",
        "2, 0.1, 0.04",
        "2, 0.2, 0.01",
        "2, 0.3, 0.73",
        "2, 0.4, 1.62",
        "2, 0.5, 0.11",
        "2, 0.6, 5.53",
        "2, 0.7, 11.96",
        "2, 0.8, 12.59",
    })
    void twoBendsToOppositeSides(double legOverWidth, double khOverPi, double expected) {
        int f = nearest(500);
        double h = khOverPi * SOUND_SPEED / (2 * QuickGrid.FINE.hz(f));
        Solid solid = TestPaths.straight(h, (2 + legOverWidth) * h, null, LinedFaces.NONE, side(h), side(h));
        double found = QuickWave.of(solid, BARE).transmissionLoss()[f];
        assertThat(found).isCloseTo(expected, within(0.06 + 0.03 * expected));
    }

    /**
     * TL = 10 lg (1 + (m - 1/m)² / 4 sin² kL). Ports as wide as the pass and lower than it: the section steps in height only,
     * which the flat model takes without the end corrections that the closed form lacks too.
     */
    @Test
    void expansionChamber() {
        Port low = new Port(PortFace.END, 0.1, TestPaths.HEIGHT / 4, 0);
        Solid solid = TestPaths.straight(0.1, 0.5, null, LinedFaces.NONE, low, low);
        QuickResult result = QuickWave.of(solid, BARE);
        for (int f = 0; QuickGrid.FINE.hz(f) < 1000; f++) {
            double sine = Math.sin(2 * Math.PI * QuickGrid.FINE.hz(f) / SOUND_SPEED * 0.5);
            double expected = 10 * Math.log10(1 + 3.75 * 3.75 / 4 * sine * sine);
            assertThat(result.transmissionLoss()[f]).isCloseTo(expected, within(1e-3));
        }
    }
}
