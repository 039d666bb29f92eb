package hushmaze.sound.porous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of the liner model against values computed apart from the program from the published equations. */
class MikiLinerTest {
    private static final double SOUND_SPEED = 343.2;

    @Test
    void checkPointAt1000HzAnd20000() {
        MikiLiner liner = new MikiLiner(20000);
        Complex impedance = liner.impedanceRatio(1000);
        Complex wavenumber = liner.wavenumberRatio(1000);
        assertThat(impedance.re()).isCloseTo(1.46410, within(5e-5));
        assertThat(impedance.im()).isCloseTo(-0.71134, within(5e-5));
        assertThat(wavenumber.re()).isCloseTo(1.69613, within(5e-5));
        assertThat(wavenumber.im()).isCloseTo(-1.01700, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({
        "25, 10000, 0.007, 0.021, 0.059, 0.148, 0.352, 0.720, 0.936",
        "25, 20000, 0.005, 0.020, 0.065, 0.191, 0.483, 0.881, 0.982",
        "25, 40000, 0.006, 0.024, 0.084, 0.261, 0.620, 0.936, 0.948",
        "50, 10000, 0.020, 0.065, 0.191, 0.485, 0.882, 0.982, 0.970",
        "50, 20000, 0.024, 0.085, 0.262, 0.621, 0.937, 0.948, 0.982",
        "50, 40000, 0.038, 0.128, 0.348, 0.662, 0.845, 0.880, 0.949",
    })
    void absorptionOfALayerOnARigidWall(
            double thicknessMm,
            double resistivity,
            double a63,
            double a125,
            double a250,
            double a500,
            double a1000,
            double a2000,
            double a4000) {
        double[] expected = {a63, a125, a250, a500, a1000, a2000, a4000};
        MikiLiner liner = new MikiLiner(resistivity);
        for (int i = 0; i < expected.length; i++) {
            double f = BandSet.OCTAVE.centreHz(i);
            assertThat(liner.normalAbsorption(f, thicknessMm / 1000, SOUND_SPEED))
                    .as("%s Hz", f)
                    .isCloseTo(expected[i], within(0.00051));
        }
    }

    /** Property: within the fit and down to a fifth of its lower end a layer absorbs between nothing and everything. */
    @Test
    void absorptionStaysBetweenZeroAndOne() {
        for (double resistivity = 500; resistivity <= 500_000; resistivity *= 3) {
            for (double thickness = 0.003; thickness < 3; thickness *= 2) {
                for (int i = 0; i < BandSet.THIRD_OCTAVE.size(); i++) {
                    double f = BandSet.THIRD_OCTAVE.centreHz(i);
                    if (f / resistivity < 0.002) {
                        continue;
                    }
                    assertThat(new MikiLiner(resistivity).normalAbsorption(f, thickness, SOUND_SPEED))
                            .isBetween(0.0, 1.0);
                }
            }
        }
    }
}
