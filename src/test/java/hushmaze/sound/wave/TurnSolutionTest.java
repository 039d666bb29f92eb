package hushmaze.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: square turns in a rigid duct, width h, against values computed by mode matching (150 modes for one turn, 60
 * for two). Property: what does not pass comes back, and inlet and outlet can be changed over.
 */
class TurnSolutionTest {
    private static final double WIDTH = 0.1;
    /** Above this loss a value stands on the flank of a narrow null. */
    private static final double NULL = 25;

    private static double hertz(double khOverPi) {
        return khOverPi * Spaces.C / (2 * WIDTH);
    }

    @ParameterizedTest
    @CsvSource({
        "0.05, 0.005, 0.0012", "0.1, 0.021, 0.0049", "0.2, 0.092, 0.0209", "0.3, 0.235, 0.0526",
        "0.4, 0.505, 0.1098", "0.5, 1.030, 0.2112", "0.6, 2.113, 0.3853", "0.65, 3.062, 0.5060",
        "0.7, 4.473, 0.6429", "0.75, 6.565, 0.7795", "0.8, 9.659, 0.8918", "0.85, 14.292, 0.9628",
        "0.9, 21.804, 0.9934",
    })
    void oneTurn(double khOverPi, double loss, double reflected) {
        WaveAnswer fine = new WaveSolver(Spaces.turn(WIDTH), WaveAccuracy.FINE).solve(hertz(khOverPi));
        assertThat(fine.transmissionLoss()).isCloseTo(loss, within(0.003));
        assertThat(fine.reflectedPower(0)).isCloseTo(reflected, within(1e-4));
        WaveAnswer standard = new WaveSolver(Spaces.turn(WIDTH)).solve(hertz(khOverPi));
        assertThat(standard.transmissionLoss()).isCloseTo(loss, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
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
    void oneTurnWhereMoreModesCarry(double khOverPi, double loss) {
        WaveAnswer answer = new WaveSolver(Spaces.turn(WIDTH)).solve(hertz(khOverPi));
        assertThat(answer.transmissionLoss()).isCloseTo(loss, within(0.03));
    }

    @ParameterizedTest
    @CsvSource({
        "0, true, 0.12, 0.44, 0.87, 1.09, 0.46, 0.65, 4.65, 6.40, 6.54",
        "0, false, 0.06, 0.21, 0.33, 0.28, 0.01, 2.06, 35.99, 9.60, 7.41",
        "1, true, 0.06, 0.07, 0.02, 1.00, 3.57, 5.46, 0.81, 36.43, 19.97",
        "1, false, 0.06, 0.07, 0.02, 1.04, 3.78, 6.03, 1.00, 17.37, 19.40",
        "2, true, 0.04, 0.01, 0.73, 1.61, 0.11, 5.57, 12.21, 11.98, 30.60",
        "2, false, 0.04, 0.01, 0.73, 1.62, 0.11, 5.53, 11.96, 12.59, 32.81",
    })
    void twoTurns(
            double legOverWidth,
            boolean back,
            double l1,
            double l2,
            double l3,
            double l4,
            double l5,
            double l6,
            double l7,
            double l8,
            double l9) {
        WaveSolver solver = new WaveSolver(Spaces.twoTurns(WIDTH, legOverWidth * WIDTH, back));
        double[] expected = {l1, l2, l3, l4, l5, l6, l7, l8, l9};
        for (int i = 0; i < expected.length; i++) {
            double found = solver.solve(hertz(0.1 * (i + 1))).transmissionLoss();
            double tolerance = expected[i] < NULL ? 0.1 : 1;
            assertThat(found).as("kh/pi 0.%s", i + 1).isCloseTo(expected[i], within(tolerance));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.07, 0.33, 0.66, 0.93, 1.4, 2.2, 3.7})
    void whatDoesNotPassComesBackForEveryMode(double khOverPi) {
        WaveSpace space = Spaces.twoTurns(WIDTH, 0.07, true);
        WaveAnswer there = new WaveSolver(space).solve(hertz(khOverPi));
        WaveAnswer back = new WaveSolver(Spaces.reversed(space)).solve(hertz(khOverPi));
        for (int mode = 0; mode < there.inletModes().size(); mode++) {
            assertThat(there.transmittedPower(mode) + there.reflectedPower(mode))
                    .isCloseTo(1, within(1e-9));
        }
        double plane = there.transmitted().get(0).get(0).absSquared();
        assertThat(back.transmitted().get(0).get(0).absSquared()).isCloseTo(plane, within(1e-9));
    }
}
