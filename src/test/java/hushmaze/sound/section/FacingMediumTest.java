package hushmaze.sound.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.wave.AirMedium;
import hushmaze.sound.wave.WaveAnswer;
import hushmaze.sound.wave.WaveBlock;
import hushmaze.sound.wave.WavePort;
import hushmaze.sound.wave.WaveSolver;
import hushmaze.sound.wave.WaveSpace;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: the loss of a limp film or a cloth across a duct against the closed form 10 lg |1 + (jωm + R)/(2ρc)|², and the
 * power a cloth takes up against R ρc / |ρc + R/2|².
 */
class FacingMediumTest {
    private static final double C = 343.2;
    private static final double RHO = 1.2041;
    private static final double THICKNESS = 0.001;

    @ParameterizedTest
    @CsvSource({
        "0.1, 0",
        "0.5, 0",
        "0.02, 0",
        "0.1, 200",
        "0.06, 400",
        "0.3, 1000",
    })
    void lossAcrossADuct(double mass, double resistance) {
        WaveSolver solver = new WaveSolver(duct(new FacingMedium(mass, resistance, THICKNESS, RHO)));
        for (double f : new double[] {63, 250, 1000, 1600}) {
            double re = 1 + resistance / (2 * RHO * C);
            double im = 2 * Math.PI * f * mass / (2 * RHO * C);
            double expected = 10 * Math.log10(re * re + im * im);
            assertThat(solver.solve(f).transmissionLoss()).as("%s Hz", f).isCloseTo(expected, within(0.001));
        }
    }

    @Test
    void aClothTakesUpPower() {
        double resistance = 400;
        WaveAnswer answer = new WaveSolver(duct(new FacingMedium(1e-6, resistance, THICKNESS, RHO))).solve(250);
        double sum = RHO * C + resistance / 2;
        double expected = RHO * C * resistance / (sum * sum);
        assertThat(1 - answer.transmittedPower(0) - answer.reflectedPower(0)).isCloseTo(expected, within(1e-4));
    }

    @Test
    void aFilmWithoutMassIsRefused() {
        assertThatThrownBy(() -> new FacingMedium(0, 100, THICKNESS, RHO))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("massPerArea: 0 ");
    }

    /** A duct of 100 mm with the facing across it. */
    private static WaveSpace duct(FacingMedium facing) {
        WaveBlock air = new WaveBlock(new AirMedium(), new Cuboid(-0.2, 0, 0, 0.2, 0.1, 1));
        WaveBlock film = new WaveBlock(facing, new Cuboid(0, 0, 0, THICKNESS, 0.1, 1));
        WavePort inlet = new WavePort(Axis.X, false, new Cuboid(-0.25, 0, 0, -0.2, 0.1, 1));
        WavePort outlet = new WavePort(Axis.X, true, new Cuboid(0.2, 0, 0, 0.25, 0.1, 1));
        return new WaveSpace(C, true, List.of(air, film), inlet, outlet);
    }
}
