package hushmaze.sound.section;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.wave.WaveSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Property: the medium is passive, has no step where the slit's wavenumber is held, and becomes air at high frequencies.
 * Validation: a straight pass lined on all four sides, flat, against the solution in all three directions, which does not know
 * this medium.
 */
class BroadLinedMediumTest {
    private static final double C = SampleBoxes.SOUND_SPEED;
    private static final MikiLiner LINER = new MikiLiner(20_000);

    @Test
    void neverGivesEnergy() {
        for (double height : new double[] {0.08, 0.15, 0.3, 0.5}) {
            for (double depth : new double[] {0.013, 0.025, 0.05}) {
                BroadLinedMedium medium = new BroadLinedMedium(LINER, height, depth, C);
                for (double f = 50; f < 6000; f *= 1.05) {
                    assertThat(medium.squaredIndex(f).im())
                            .as("%s m, %s m, %s Hz", height, depth, f)
                            .isNegative();
                    assertThat(medium.densityRatio(f).im()).isNotPositive();
                    // A shade above 1 where Miki's density turns negative, far below its range.
                    assertThat(medium.densityRatio(f).re()).isBetween(0.3, 1.01);
                }
            }
        }
    }

    @Test
    void hasNoStepWhereTheSlitLeavesItsRange() {
        BroadLinedMedium medium = new BroadLinedMedium(LINER, 0.3, 0.025, C);
        double f = 1.2 * C / (Math.PI * 0.3);
        assertThat(apart(medium.squaredIndex(f * 0.9999), medium.squaredIndex(f * 1.0001)))
                .isLessThan(1e-3);
        assertThat(apart(medium.densityRatio(f * 0.9999), medium.densityRatio(f * 1.0001)))
                .isLessThan(1e-3);
    }

    @Test
    void becomesAirAtHighFrequencies() {
        BroadLinedMedium medium = new BroadLinedMedium(LINER, 0.3, 0.05, C);
        assertThat(apart(medium.squaredIndex(10_000), new Complex(1, 0))).isLessThan(0.01);
        assertThat(apart(medium.densityRatio(10_000), new Complex(1, 0))).isLessThan(0.01);
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.025", "0.1, 0.05"})
    void aStraightPassLinedAllRoundLosesSomewhatLessThanInThreeDirections(double width, double depth) {
        Port whole = new Port(PortFace.END, width, 0.3, 0);
        Solid solid =
                SolidBuilder.build(SampleBoxes.maze(1, 0.6, SampleBoxes.liner(depth), LinedFaces.ALL, 1, whole, whole));
        WaveSolver flat = new WaveSolver(SolidSpace.flat(solid, LINER, C));
        WaveSolver full = new WaveSolver(SolidSpace.full(solid, LINER, C), PathWave.FULL_ACCURACY);
        for (double f : new double[] {63, 125, 250, 400}) {
            double whatIs = full.solve(f).transmissionLoss();
            assertThat(flat.solve(f).transmissionLoss())
                    .as("%s Hz, %s dB", f, whatIs)
                    .isBetween(0.84 * whatIs, 1.01 * whatIs);
        }
    }

    private static double apart(Complex a, Complex b) {
        return Math.sqrt(a.plus(b.times(-1)).absSquared());
    }
}
