package hushmaze.sound.wave;

import static hushmaze.sound.wave.Spaces.air;
import static hushmaze.sound.wave.Spaces.high;
import static hushmaze.sound.wave.Spaces.liner;
import static hushmaze.sound.wave.Spaces.low;
import static hushmaze.sound.wave.Spaces.space;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Property: odd spaces give numbers, impossible ones a reason; errors fall as the degree rises; cells that touch at a corner
 * only do not let sound through.
 */
class WaveLimitsTest {
    @ParameterizedTest
    @ValueSource(doubles = {1000, 5000, 20_000, 80_000, 200_000})
    void everyLinerGivesALoss(double flowResistivity) {
        WaveSolver solver = new WaveSolver(MazeSpaces.flat(2, 0.4, 0.3, 0.03, flowResistivity));
        for (double frequency : new double[] {20, 50, 500, 5000, 10_000}) {
            WaveAnswer answer = solver.solve(frequency);
            assertThat(answer.transmissionLoss()).isFinite().isPositive();
            assertThat(answer.transmissionLossAllModes()).isFinite().isPositive();
            assertThat(answer.residual()).isLessThan(SafeSolver.TOLERANCE);
            assertThat(answer.reflectedPower(0) + answer.transmittedPower(0)).isBetween(0.0, 1.0);
        }
    }

    @Test
    void passesOfAMillimetre() {
        WaveSolver solver = new WaveSolver(MazeSpaces.flat(4, 0.9, 4 * 0.019 - 0.018, 0.0001, 20_000));
        for (double frequency : new double[] {50, 1000, 5000}) {
            assertThat(solver.solve(frequency).transmissionLoss()).isFinite().isNotNegative();
        }
    }

    @Test
    void linerThatFillsThePass() {
        WaveSpace full = space(List.of(liner(20_000, 0, 0, 1, 0.1)), low(0, 0, 0.1), high(1, 0, 0.1));
        assertThat(new WaveSolver(full).solve(500).transmissionLoss())
                .isFinite()
                .isGreaterThan(20);
    }

    @Test
    void aDuctThatGoesOnLosesNothing() {
        WaveSpace duct = space(List.of(air(0, 0, 1, 0.1)), low(0, 0, 0.1), high(1, 0, 0.1));
        for (double frequency : new double[] {1, 50, 1000, 5000, 20_000}) {
            WaveAnswer answer = new WaveSolver(duct).solve(frequency);
            for (int mode = 0; mode < answer.inletModes().size(); mode++) {
                assertThat(answer.transmittedPower(mode)).isCloseTo(1, within(1e-5));
            }
        }
    }

    @Test
    void errorsFallAsTheDegreeRises() {
        double coarse = error(-2);
        double standard = error(0);
        double fine = error(3);
        assertThat(standard).isLessThan(0.03).isLessThan(0.6 * coarse);
        assertThat(fine).isLessThan(0.6 * standard);
    }

    /** Root of the mean square error of six losses of a lined maze against those at eight degrees more, dB. */
    private static double error(int extraDegree) {
        WaveSpace maze = MazeSpaces.flat(3, 0.6, 0.45, 0.025, 20_000);
        WaveSolver exact = new WaveSolver(maze, new WaveAccuracy(8, 0));
        WaveSolver some = new WaveSolver(maze, new WaveAccuracy(extraDegree, 0));
        double[] frequencies = {80, 160, 250, 400, 800, 1600};
        double sum = 0;
        for (double frequency : frequencies) {
            double error = some.solve(frequency).transmissionLoss()
                    - exact.solve(frequency).transmissionLoss();
            sum += error * error / frequencies.length;
        }
        return Math.sqrt(sum);
    }

    @Test
    void cellsThatTouchAtACornerAreApart() {
        double touching = roundAboutLoss(0.1);
        double apart = roundAboutLoss(0.101);
        assertThat(touching).isGreaterThan(60).isCloseTo(apart, within(1.0));
    }

    /** Two ducts that meet at a corner if the second starts at 0.1 m, and are joined by a long way through liner. */
    private static double roundAboutLoss(double secondFrom) {
        List<WaveBlock> blocks = List.of(
                air(0, 0, 0.5, 0.1),
                liner(20_000, 0, 0.1, 0.1, 0.3),
                liner(20_000, 0, 0.3, 0.6, 0.4),
                liner(20_000, 0.5, 0.2, 0.6, 0.3),
                air(0.5, secondFrom, 1, 0.2));
        WaveSpace space = space(blocks, low(0, 0, 0.1), high(1, secondFrom, 0.2));
        return new WaveSolver(space).solve(700).transmissionLoss();
    }

    @Test
    void impossibleSpacesAreRefused() {
        List<WaveBlock> duct = List.of(air(0, 0, 1, 0.1));
        refused(space(duct, low(0, 0, 0.1), high(1, 0.2, 0.3)), "touches no block");
        refused(space(duct, low(0, 0, 0.2), high(1, 0, 0.1)), "partly against a rigid face");
        refused(space(duct, low(0, 0, 0.1), high(0.5, 0, 0.1)), "runs through a block");
        refused(
                space(List.of(air(0, 0, 1, 0.1), air(0, 0.2, 1, 0.3)), low(0, 0, 0.1), high(1, 0.2, 0.3)),
                "no way from the inlet");
        WavePort up = new WavePort(Axis.Z, true, new Cuboid(0, 0, 1, 0.1, 0.1, 2));
        refused(space(duct, low(0, 0, 0.1), up), "flat space");
    }

    private static void refused(WaveSpace space, String reason) {
        assertThatThrownBy(() -> new WaveSolver(space))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining(reason);
    }

    @Test
    void frequenciesAndSizesHaveLimits() {
        WaveSolver solver = new WaveSolver(Spaces.turn(0.1));
        for (double frequency : new double[] {0, -5, 0.5, 1e6, Double.NaN}) {
            assertThatThrownBy(() -> solver.solve(frequency))
                    .isInstanceOf(InvalidValue.class)
                    .hasMessageContaining("frequency");
        }
        WaveSpace hall = space(List.of(air(0, 0, 100, 100)), low(0, 0, 1), high(100, 0, 1));
        assertThatThrownBy(() -> new WaveSolver(hall).solve(5000))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("unknowns");
    }
}
