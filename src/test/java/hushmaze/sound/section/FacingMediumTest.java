package hushmaze.sound.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Facing;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.wave.AirMedium;
import hushmaze.sound.wave.WaveAnswer;
import hushmaze.sound.wave.WaveBlock;
import hushmaze.sound.wave.WavePort;
import hushmaze.sound.wave.WaveSolver;
import hushmaze.sound.wave.WaveSpace;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: the loss of a limp film or a cloth across a duct against the closed form 10 lg |1 + Z/(2ρc)|², Z = jωm for a film and
 * 1 / (1/R + 1/(jωm)) for a cloth, and the power a cloth takes up, 4 ρc Re Z / |2ρc + Z|².
 */
class FacingMediumTest {
    private static final double C = 343.2;
    private static final double RHO_C = 413.3;
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
    void acrossADuct(double mass, double resistance) {
        WaveSolver solver = new WaveSolver(duct(mass, resistance));
        for (double f : new double[] {63, 250, 1000, 1600}) {
            double w = 2 * Math.PI * f * mass;
            // R jω m (R - jω m) / (R² + ω² m²)
            double below = resistance * resistance + w * w;
            double re = resistance == 0 ? 0 : resistance * w * w / below;
            double im = resistance == 0 ? w : resistance * resistance * w / below;
            double size = (2 * RHO_C + re) * (2 * RHO_C + re) + im * im;
            WaveAnswer answer = solver.solve(f);
            assertThat(answer.transmissionLoss())
                    .as("%s Hz", f)
                    .isCloseTo(10 * Math.log10(size / (4 * RHO_C * RHO_C)), within(0.001));
            assertThat(1 - answer.transmittedPower(0) - answer.reflectedPower(0))
                    .isCloseTo(4 * RHO_C * re / size, within(2e-4));
        }
    }

    private static WaveSpace duct(double mass, double resistance) {
        Facing facing = new Facing("sheet", mass, resistance == 0 ? null : resistance, "invented for a test");
        return duct(new FacingMedium(new FacedLiner(new MikiLiner(20000), facing), THICKNESS, C));
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
