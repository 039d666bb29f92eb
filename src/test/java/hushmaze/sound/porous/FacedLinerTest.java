package hushmaze.sound.porous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Facing;
import hushmaze.material.Liner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: facings before a deep space against closed forms. Property: modes of a slit, found as roots of its function and by the
 * secant method from another form of it; a facing that is next to nothing.
 */
class FacedLinerTest {
    private static final double C = 343.2;
    private static final double RHO_C = 413.3;
    /** Next to no liner at all, Pa·s/m². */
    private static final double AIR = 1;

    /**
     * A heavy cloth a quarter wave before a rigid wall is a resistance alone: α = 4 r / (1 + r)², r = R/ρc (textbook). 0.2 m: 429 Hz.
     */
    @ParameterizedTest
    @CsvSource({"100", "413.3", "1000", "2000"})
    void aClothAQuarterWaveBeforeAWall(double resistance) {
        LinerModel cloth = new FacedLiner(new MikiLiner(AIR), facing(2, resistance));
        double r = resistance / RHO_C;
        assertThat(cloth.normalAbsorption(C / 4 / 0.2, 0.2, C)).isCloseTo(4 * r / ((1 + r) * (1 + r)), within(0.03));
    }

    /**
     * A film before a shallow space takes up sound about 60 / √(m d) Hz (textbook, from memory: mass on the spring of the air), or
     * up to a factor √1.4 below where the liner keeps the air at its temperature.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 0.05", "1, 0.03", "2, 0.05"})
    void aFilmOnASpring(double mass, double depth) {
        LinerModel film = new FacedLiner(new MikiLiner(2000), facing(mass, null));
        double best = 0;
        double peak = 0;
        for (double f = 50; f < 2000; f *= 1.01) {
            double absorbed = film.normalAbsorption(f, depth, C);
            if (absorbed > best) {
                best = absorbed;
                peak = f;
            }
        }
        double expected = 60 / Math.sqrt(mass * depth);
        assertThat(peak).isBetween(expected / Math.sqrt(1.4), 1.1 * expected);
        assertThat(film.normalAbsorption(8 * expected, depth, C)).isLessThan(0.1);
    }

    /** By hand at 1 kHz: 0.06 kg/m² are j 376.99 Pa·s/m, beside 200 Pa·s/m 156.07 + j 82.80. */
    @Test
    void aClothMoves() {
        Complex ratio = new FacedLiner(new MikiLiner(20000), facing(0.06, 200.0)).facingRatio(1000);
        assertThat(ratio.re() * RHO_C).isCloseTo(156.07, within(0.01));
        assertThat(ratio.im() * RHO_C).isCloseTo(82.80, within(0.01));
    }

    /** The first symmetric mode of the root set and of the secant method. */
    @ParameterizedTest
    @CsvSource({"0.05, 63", "0.05, 250", "0.05, 500", "0.3, 63", "0.3, 125"})
    void bothWaysToAModeAgree(double mass, double f) {
        LinerModel film = new FacedLiner(new MikiLiner(20000), facing(mass, null));
        double k0 = 2 * Math.PI * f / C;
        Complex secant =
                LinedSlit.axialSquared(0.1, 0.05, film, f, C).orElseThrow().times(k0 * k0);
        SlitRoots.Mode[] roots =
                new SlitRoots(new SlitSection(0.05, 0.1, 0.05)).find(SlitMedia.of(film, f, C), 8, true);
        assertThat(roots[0].parity()).isEqualTo(1);
        assertThat(roots[0].squared().re()).isCloseTo(secant.re(), within(1e-6 * k0 * k0));
        assertThat(roots[0].squared().im()).isCloseTo(secant.im(), within(1e-6 * k0 * k0));
    }

    @Test
    void aFacingOfNextToNothingChangesNothing() {
        MikiLiner bare = new MikiLiner(20000);
        LinerModel gauze = new FacedLiner(bare, facing(0.005, 1.0));
        for (double f = 50; f < 10_000; f *= 1.5) {
            assertThat(gauze.normalAbsorption(f, 0.05, C)).isCloseTo(bare.normalAbsorption(f, 0.05, C), within(0.01));
        }
    }

    @Test
    void aLinerKnowsItsFacing() {
        Liner liner = new Liner("wool", 0.05, 50, 15800, 10000, 25000, 0.0009, "invented for a test");
        assertThat(FacedLiner.miki(liner))
                .isEqualTo(new MikiLiner(15800))
                .extracting(LinerModel::faced)
                .isEqualTo(false);
        Facing cloth = facing(0.06, 200.0);
        assertThat(FacedLiner.miki(liner.faced(cloth))).isEqualTo(new FacedLiner(new MikiLiner(15800), cloth));
        assertThat(FacedLiner.of(liner.faced(cloth), 10000, JohnsonLiner::new))
                .isEqualTo(new FacedLiner(new JohnsonLiner(10000), cloth));
    }

    private static Facing facing(double mass, Double resistance) {
        return new Facing("facing", mass, resistance, "invented for a test");
    }
}
