package hushmaze.sound.criterion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Validation of the A-weighting against the published table of IEC 61672-1 and values computed from its formula. */
class AWeightingTest {
    @Test
    void tableOfTheStandard() {
        // Third octaves 50 Hz to 10 kHz, as read in a published copy of the table, printed to 0.1 dB.
        double[] table = {
            -30.2, -26.2, -22.5, -19.1, -16.1, -13.4, -10.9, -8.6, -6.6, -4.8, -3.2, -1.9, -0.8, 0, 0.6, 1.0, 1.2, 1.3,
            1.2, 1.0, 0.5, -0.1, -1.1, -2.5
        };
        for (int i = 0; i < table.length; i++) {
            assertThat(AWeighting.weights(BandSet.THIRD_OCTAVE).value(i))
                    .as("%s Hz", BandSet.THIRD_OCTAVE.bands().get(i).label())
                    .isCloseTo(table[i], within(0.1));
        }
    }

    @Test
    void octavesAtExactCentres() {
        // Computed apart from the program from the formula of the standard at exact centres.
        double[] computed = {-26.19, -16.10, -8.63, -3.23, 0, 1.20, 0.97, -1.11};
        for (int i = 0; i < computed.length; i++) {
            assertThat(AWeighting.weights(BandSet.OCTAVE).value(i)).isCloseTo(computed[i], within(0.0051));
        }
    }

    @Test
    void oneBandAlone() {
        double[] levels = new double[8];
        Arrays.fill(levels, Double.NEGATIVE_INFINITY);
        levels[4] = 40;
        assertThat(AWeighting.total(new Spectrum(BandSet.OCTAVE, levels))).isCloseTo(40, within(0.001));
    }

    @Test
    void thirdsOfAFlatOctaveGiveNearlyTheSameTotal() {
        // By hand: the weight bends little within an octave above 125 Hz, so both sums agree within half a decibel.
        Spectrum octaves = new Spectrum(BandSet.OCTAVE, 20, 30, 40, 50, 50, 50, 40, 30);
        assertThat(AWeighting.total(octaves.levelsInThirds())).isCloseTo(AWeighting.total(octaves), within(0.5));
    }
}
