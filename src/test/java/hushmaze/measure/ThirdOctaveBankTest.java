package hushmaze.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: every band's filter with its decimation keeps the limits of class 1 for third octaves, those of IEC
 * 61260-1:2014 (from memory) everywhere, and the narrower ones of IEC 61260:1995 (read in a published program that plots them)
 * but for 0.05 dB between their frequencies outside the band.
 */
class ThirdOctaveBankTest {
    /** Frequency over that of the centre, for thirds; the limits hold for one over it too. */
    private static final double[] RATIO = {
        1, 1.02667, 1.05575, 1.08746, 1.12202, 1.12202, 1.29437, 1.88173, 3.05365, 5.39195
    };
    /** Least attenuation, dB; between the ratios in a straight line over the logarithm of the ratio. */
    private static final double[] LEAST_1995 = {-0.3, -0.3, -0.3, -0.3, -0.3, 2, 17.5, 42, 61, 70};

    private static final double[] LEAST_2014 = {-0.4, -0.4, -0.4, -0.4, -0.4, 1.6, 16.6, 40.5, 60, 70};
    /** Most attenuation inside the band, dB; those of 2014 are 0.4, 0.5, 0.7, 1.4, 5.3. */
    private static final double[] MOST_1995 = {0.3, 0.4, 0.6, 1.3, 5};

    private static final int INSIDE = 5;
    private static final int STEPS = 4000;

    @ParameterizedTest
    @ValueSource(doubles = {44_100, 48_000, 96_000})
    void everyBandKeepsClassOne(double rate) {
        ThirdOctaveBank bank = new ThirdOctaveBank(rate);
        for (int band = 0; band < BandSet.THIRD_OCTAVE.size(); band++) {
            double centre = BandSet.THIRD_OCTAVE.centreHz(band);
            assertThat(bank.covers(band)).isTrue();
            double lowest = Math.log(centre / 40);
            double highest = Math.log(rate / 2 * 0.9999);
            for (int i = 0; i <= STEPS; i++) {
                double hz = Math.exp(lowest + (highest - lowest) * i / STEPS);
                double ratio = Math.max(hz / centre, centre / hz);
                double attenuation = bank.attenuation(band, hz);
                String where = "%.0f Hz at %.1f Hz, %.0f Hz sampling".formatted(centre, hz, rate);
                assertThat(attenuation).as(where).isGreaterThanOrEqualTo(least(LEAST_2014, ratio));
                assertThat(attenuation).as(where).isGreaterThanOrEqualTo(least(LEAST_1995, ratio));
                if (ratio < RATIO[INSIDE - 1]) {
                    assertThat(attenuation).as(where).isLessThanOrEqualTo(between(MOST_1995, ratio, 0, INSIDE - 1));
                }
            }
        }
    }

    private static double least(double[] limits, double ratio) {
        if (ratio < RATIO[INSIDE]) {
            return limits[0];
        }
        return between(limits, ratio, INSIDE, RATIO.length - 1);
    }

    private static double between(double[] values, double ratio, int first, int last) {
        for (int i = first; i < last; i++) {
            if (ratio <= RATIO[i + 1]) {
                double share = Math.log(ratio / RATIO[i]) / Math.log(RATIO[i + 1] / RATIO[i]);
                return values[i] + share * (values[i + 1] - values[i]);
            }
        }
        return values[last];
    }

    /** What is computed from the coefficients is what the filters do: tones through them, in a band and far from it. */
    @ParameterizedTest
    @ValueSource(doubles = {52.3, 250, 447, 3700, 8800, 13_400, 19_000})
    void tonesComeOutAsComputed(double hz) {
        double rate = 48_000;
        ThirdOctaveBank bank = new ThirdOctaveBank(rate);
        double[] block = new double[ThirdOctaveBank.BLOCK];
        long at = 0;
        for (int n = 0; n < 120; n++) {
            for (int i = 0; i < block.length; i++) {
                block[i] = Math.sin(2 * Math.PI * hz * at++ / rate);
            }
            bank.run(block, block.length - n % 3, n >= 60);
            at -= n % 3;
        }
        BandLevels levels = bank.levels();
        for (int band = 0; band < BandSet.THIRD_OCTAVE.size(); band++) {
            double computed = bank.attenuation(band, hz);
            if (computed < 90) {
                assertThat(levels.level(band) + 3.0103).isCloseTo(-computed, within(0.15));
            }
        }
    }
}
