package hushmaze.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.MikiLiner;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: three directions against the exact transmission of every mode of a rectangular duct through a plug of liner.
 * Property: a flat space drawn out along z gives the flat answer.
 */
class SolidSolutionTest {
    private static final double HEIGHT = 0.25;
    private static final MikiLiner LINER = new MikiLiner(8000);

    @ParameterizedTest
    @ValueSource(doubles = {100, 900, 1500})
    void plugOfLinerForEveryMode(double frequency) {
        double width = 0.2;
        double thickness = 0.12;
        Cuboid plug = new Cuboid(0, 0, 0, thickness, width, HEIGHT);
        WaveAnswer answer = new WaveSolver(new WaveSpace(
                        Spaces.C,
                        false,
                        List.of(new WaveBlock(new LinerMedium(LINER), plug)),
                        new WavePort(Axis.X, false, plug.with(Axis.X, -0.1, 0)),
                        new WavePort(Axis.X, true, plug.with(Axis.X, thickness, thickness + 0.1))))
                .solve(frequency);
        double k = 2 * Math.PI * frequency / Spaces.C;
        for (int i = 0; i < answer.inletModes().size(); i++) {
            PortMode mode = answer.inletModes().get(i);
            double across = Math.pow(mode.u() * Math.PI / width, 2) + Math.pow(mode.v() * Math.PI / HEIGHT, 2);
            Complex expected = throughPlug(k, across, frequency, thickness);
            Complex found = answer.transmitted().get(i).get(i);
            assertThat(found.plus(expected.times(-1)).absSquared())
                    .as("mode %s", mode)
                    .isLessThan(1e-9 * expected.absSquared());
        }
    }

    /** 1 / (cos κd + j/2 (κ/(ρ q) + ρ q/κ) sin κd), κ and q wavenumbers along the duct in liner and air. */
    private static Complex throughPlug(double k, double across, double frequency, double d) {
        Medium liner = new LinerMedium(LINER);
        Complex rho = liner.densityRatio(frequency);
        Complex along = liner.squaredIndex(frequency)
                .times(k * k)
                .plus(new Complex(-across, 0))
                .sqrt();
        double q = Math.sqrt(k * k - across);
        Complex ratio = along.dividedBy(rho.times(q));
        Complex sum = ratio.plus(new Complex(1, 0).dividedBy(ratio));
        double x = along.re() * d;
        double y = along.im() * d;
        Complex cos = new Complex(Math.cos(x) * Math.cosh(y), -Math.sin(x) * Math.sinh(y));
        Complex sin = new Complex(Math.sin(x) * Math.cosh(y), Math.cos(x) * Math.sinh(y));
        return new Complex(1, 0).dividedBy(cos.plus(sum.times(sin).times(new Complex(0, 0.5))));
    }

    @Test
    void flatSpaceDrawnOut() {
        WaveSpace flat = MazeSpaces.flat(2, 0.5, 0.3, 0.025, 20000);
        List<WaveBlock> blocks = flat.blocks().stream()
                .map(b -> new WaveBlock(b.medium(), b.place().with(Axis.Z, 0, HEIGHT)))
                .toList();
        WaveSpace solid = new WaveSpace(Spaces.C, false, blocks, drawnOut(flat.inlet()), drawnOut(flat.outlet()));
        for (double frequency : new double[] {80, 300, 600}) {
            double expected = new WaveSolver(flat).solve(frequency).transmissionLoss();
            double found = new WaveSolver(solid).solve(frequency).transmissionLoss();
            assertThat(found).isCloseTo(expected, within(1e-6));
        }
    }

    private static WavePort drawnOut(WavePort port) {
        return new WavePort(port.normal(), port.high(), port.start().with(Axis.Z, 0, HEIGHT));
    }

    /** A duct of half the height carries half the flow: a step as if to a duct of half the width. */
    @Test
    void heightIsAWeightInAFlatSpace() {
        Cuboid low = new Cuboid(0, 0, 0, 0.3, 0.1, 0.5);
        Cuboid high = low.with(Axis.X, 0.3, 0.7).with(Axis.Z, 0, 1);
        WaveAnswer answer = new WaveSolver(new WaveSpace(
                        Spaces.C,
                        true,
                        List.of(new WaveBlock(new AirMedium(), low), new WaveBlock(new AirMedium(), high)),
                        new WavePort(Axis.X, false, low.with(Axis.X, -0.1, 0)),
                        new WavePort(Axis.X, true, high.with(Axis.X, 0.7, 0.8))))
                .solve(200);
        // a step of areas 1 to 2: T power = 4 S1 S2 / (S1 + S2)²
        assertThat(answer.transmittedPower(0)).isCloseTo(8.0 / 9, within(1e-8));
        assertThat(answer.reflectedPower(0)).isCloseTo(1.0 / 9, within(1e-8));
    }
}
