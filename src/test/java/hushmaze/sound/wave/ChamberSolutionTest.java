package hushmaze.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.Complex;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: expansion chambers against mode matching ({@link ChamberModes}) and, for long waves, against 1 + (m - 1/m)²/4
 * sin² kL, the textbook's formula; in three directions with a mode that changes along the height, for which the height's
 * share of the wavenumber is taken off.
 */
class ChamberSolutionTest {
    private static final double DUCT = 0.1;
    private static final double CHAMBER = 0.3;
    private static final double LENGTH = 0.4;
    private static final int MODES = 48;

    private static WaveSpace chamber(boolean flat, double height) {
        double edge = (CHAMBER - DUCT) / 2;
        return new WaveSpace(
                Spaces.C,
                flat,
                List.of(new WaveBlock(new AirMedium(), new Cuboid(0, 0, 0, LENGTH, CHAMBER, height))),
                new WavePort(Axis.X, false, new Cuboid(-0.1, edge, 0, 0, edge + DUCT, height)),
                new WavePort(Axis.X, true, new Cuboid(LENGTH, edge, 0, LENGTH + 0.1, edge + DUCT, height)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {30, 100, 214.5, 300, 429, 600, 800, 1000, 1100})
    void flatChamber(double frequency) {
        double k = 2 * Math.PI * frequency / Spaces.C;
        double expected = new ChamberModes(DUCT, CHAMBER, LENGTH, MODES).transmissionLoss(k * k);
        double found = new WaveSolver(chamber(true, 1)).solve(frequency).transmissionLoss();
        assertThat(found).isCloseTo(expected, within(0.01 + 0.003 * expected));
    }

    @Test
    void longWavesFollowTheFormula() {
        double k = 2 * Math.PI * 40 / Spaces.C;
        double m = CHAMBER / DUCT;
        double expected = 10 * Math.log10(1 + Math.pow((m - 1 / m) / 2 * Math.sin(k * LENGTH), 2));
        assertThat(new WaveSolver(chamber(true, 1)).solve(40).transmissionLoss())
                .isCloseTo(expected, within(0.1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {620, 800, 1000})
    void modeThatChangesAlongTheHeight(double frequency) {
        double height = 0.3;
        WaveAnswer answer = new WaveSolver(chamber(false, height)).solve(frequency);
        int mode = 1;
        assertThat(answer.inletModes().get(mode)).matches(m -> m.u() == 0 && m.v() == 1);
        double k = 2 * Math.PI * frequency / Spaces.C;
        double left = k * k - Math.pow(Math.PI / height, 2);
        double expected = new ChamberModes(DUCT, CHAMBER, LENGTH, MODES).transmissionLoss(left);
        double found = -10 * Math.log10(answer.transmittedPower(mode));
        assertThat(found).isCloseTo(expected, within(0.02 + 0.01 * expected));
        Complex plane = answer.transmitted().get(mode).get(0);
        assertThat(plane.absSquared()).as("modes do not mix along the height").isLessThan(1e-20);
    }
}
