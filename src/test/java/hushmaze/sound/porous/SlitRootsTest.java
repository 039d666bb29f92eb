package hushmaze.sound.porous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: attenuation of the least attenuated mode of a lined slit (both walls, bulk reacting, Miki's layer), against a
 * table computed independently by mode matching and by a high-order finite element method, c = 343.2 m/s. Property: no mode
 * is missing, counted by the principle of the argument; symmetry; limits.
 */
class SlitRootsTest {
    private static final double C = 343.2;
    private static final double DB_PER_NEPER = 20 / Math.log(10);

    @ParameterizedTest
    @CsvSource({
        "100, 50, 20000, 63.10, 0.532",
        "100, 50, 20000, 125.89, 2.038",
        "100, 50, 20000, 251.19, 7.104",
        "100, 50, 20000, 501.19, 21.048",
        "100, 50, 20000, 1000.0, 49.474",
        "100, 50, 20000, 1995.3, 55.512",
        "100, 50, 20000, 3981.1, 37.217",
        "100, 25, 20000, 63.10, 0.170",
        "100, 25, 20000, 125.89, 0.677",
        "100, 25, 20000, 251.19, 2.454",
        "100, 25, 20000, 501.19, 8.129",
        "100, 25, 20000, 1000.0, 24.268",
        "100, 25, 20000, 1995.3, 65.061",
        "100, 25, 20000, 3981.1, 31.505",
        "100, 50, 10000, 125.89, 2.442",
        "100, 50, 10000, 501.19, 18.877",
        "100, 50, 10000, 1000.0, 40.750",
        "100, 50, 10000, 1995.3, 72.144",
        "100, 50, 40000, 125.89, 2.334",
        "100, 50, 40000, 501.19, 20.918",
        "100, 50, 40000, 1000.0, 40.000",
        "100, 50, 40000, 1995.3, 50.884",
        "50, 25, 20000, 125.89, 1.363",
        "50, 25, 20000, 501.19, 14.905",
        "50, 25, 20000, 1000.0, 37.645",
        "50, 25, 20000, 1995.3, 81.296",
        "150, 50, 20000, 125.89, 1.419",
        "150, 50, 20000, 501.19, 16.335",
        "150, 50, 20000, 1000.0, 40.219",
        "150, 50, 20000, 1995.3, 32.268",
        "150, 50, 20000, 3981.1, 13.711",
    })
    void leastAttenuatedMode(double airwayMm, double linerMm, double sigma, double f, double expected) {
        SlitSection section = new SlitSection(linerMm / 1e3, airwayMm / 1e3, linerMm / 1e3);
        SlitRoots.Mode[] modes = new SlitRoots(section).find(SlitMedia.of(new MikiLiner(sigma), f, C), 8, true);
        assertThat(modes[0].parity()).isEqualTo(1);
        assertThat(-DB_PER_NEPER * modes[0].axial().im()).isCloseTo(expected, within(0.002));
    }

    @Test
    void noneOfTheModesThatDecayLeastIsMissing() {
        Random random = new Random(5);
        for (int i = 0; i < 40; i++) {
            double low = random.nextInt(4) == 0 ? 0 : 0.005 + 0.06 * random.nextDouble();
            double high = random.nextBoolean() ? low : 0.005 + 0.06 * random.nextDouble();
            double width = Math.exp(Math.log(0.001) + random.nextDouble() * Math.log(200));
            double sigma = Math.exp(Math.log(1000) + random.nextDouble() * Math.log(200));
            SlitSection section = new SlitSection(low, width, high);
            SlitRoots roots = new SlitRoots(section);
            for (int band = 0; band < BandSet.THIRD_OCTAVE.size(); band++) {
                double f = BandSet.THIRD_OCTAVE.centreHz(band);
                SlitRoots.Mode[] modes = roots.find(SlitMedia.of(new MikiLiner(sigma), f, C), 20, true);
                assertThat(modes).hasSizeGreaterThanOrEqualTo(8);
                assertThat(roots.complete())
                        .as("%s, sigma %s, %s Hz", section, sigma, f)
                        .isTrue();
            }
        }
    }

    /** Followed from frequency to frequency or found afresh: the same set, to the twelfth mode. */
    @Test
    void followingTheModesLosesNone() {
        for (SlitSection section : new SlitSection[] {
            new SlitSection(0.046, 0.132, 0.046), new SlitSection(0, 0.178, 0.046), new SlitSection(0.02, 0.06, 0.05)
        }) {
            SlitRoots followed = new SlitRoots(section);
            for (int i = 0; i < 115; i++) {
                double f = 50 * Math.pow(10, i / 50.0);
                SlitMedia media = SlitMedia.of(new MikiLiner(20500), f, C);
                SlitRoots.Mode[] found = followed.find(media, 24, i % 5 == 2);
                SlitRoots.Mode[] afresh = new SlitRoots(section).find(media, 24, true);
                for (int mode = 0; mode < 12 && i % 5 == 2; mode++) {
                    assertThat(found[mode].axial().im())
                            .as("%s, %s Hz, mode %s", section, f, mode)
                            .isCloseTo(afresh[mode].axial().im(), within(1e-6));
                }
            }
        }
    }

    /** A slit with one lined wall is half a slit of twice the width with both. */
    @Test
    void oneLinedWallIsHalfASlit() {
        for (double f : new double[] {100, 1000, 4000}) {
            SlitMedia media = SlitMedia.of(new MikiLiner(15000), f, C);
            SlitRoots.Mode half = new SlitRoots(new SlitSection(0, 0.06, 0.03)).find(media, 8, true)[0];
            SlitRoots.Mode[] whole = new SlitRoots(new SlitSection(0.03, 0.12, 0.03)).find(media, 12, true);
            SlitRoots.Mode even = whole[0].parity() == 1 ? whole[0] : whole[1];
            assertThat(half.axial().im()).isCloseTo(even.axial().im(), within(1e-8));
            assertThat(half.axial().re()).isCloseTo(even.axial().re(), within(1e-8));
        }
    }

    /** Between bare walls the modes are cosines. */
    @Test
    void bareWalls() {
        double k = 2 * Math.PI * 2000 / C;
        SlitRoots.Mode[] modes =
                new SlitRoots(new SlitSection(0, 0.1, 0)).find(SlitMedia.of(new MikiLiner(20000), 2000, C), 4, true);
        assertThat(modes[0].axial().re()).isCloseTo(k, within(1e-9));
        assertThat(modes[1].axial().re()).isCloseTo(Math.sqrt(k * k - Math.pow(Math.PI / 0.1, 2)), within(1e-9));
        assertThat(modes[2].axial().im()).isCloseTo(-Math.sqrt(Math.pow(2 * Math.PI / 0.1, 2) - k * k), within(1e-9));
    }

    /** A very thin layer hardly matters; a layer of air is air. */
    @Test
    void layersOfAirAreAir() {
        Complex air = new Complex(900, -1);
        SlitMedia.Layer layer = new SlitMedia.Layer(air, new Complex(1, 0));
        SlitRoots.Mode[] modes =
                new SlitRoots(new SlitSection(0.02, 0.06, 0.04)).find(new SlitMedia(air, layer, layer), 3, true);
        for (int n = 0; n < 3; n++) {
            double across = n * Math.PI / 0.12;
            assertThat(modes[n].squared().re()).isCloseTo(900 - across * across, within(1e-6));
            assertThat(modes[n].squared().im()).isCloseTo(-1, within(1e-6));
        }
    }
}
