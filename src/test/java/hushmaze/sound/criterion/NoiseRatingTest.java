package hushmaze.sound.criterion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.CurveRating.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Validation of the noise rating curves against values computed by hand from the standard's formula; properties. */
class NoiseRatingTest {
    @Test
    void curveNr15() {
        // L = a + b · 15 worked by hand with the coefficients of ISO 1996:1971, 63 Hz to 8 kHz, one decimal.
        double[] expected = {47.2, 35.0, 26.0, 19.4, 15, 11.7, 9.3, 7.5};
        double[] curve = NoiseRating.curve(15).values();
        for (int i = 0; i < expected.length; i++) {
            assertThat(curve[i]).isCloseTo(expected[i], within(0.0501));
        }
    }

    @Test
    void theCopyWithOtherCoefficientsAt500HzLiesHalfADecibelLower() {
        // a = 4.2, b = 0.98 as printed in one published copy: 4.2 + 0.98 · 20 = 23.8 dB at NR 20.
        assertThat(NoiseRating.curve(20).value(3) - 23.8).isCloseTo(0.48, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 10, 25.5, 60, 130})
    void aCurveRatesAsItself(double number) {
        CurveRating rating = NoiseRating.rate(NoiseRating.curve(number));
        assertThat(rating.number().orElseThrow()).isCloseTo(number, within(1e-9));
    }

    @Test
    void oneLoudBandGoverns() {
        double[] levels = NoiseRating.curve(20).values();
        levels[5] += 10.15;
        CurveRating rating = NoiseRating.rate(new Spectrum(BandSet.OCTAVE, levels));
        // 10.15 dB at b = 1.015 is ten numbers.
        assertThat(rating.number().orElseThrow()).isCloseTo(30, within(1e-9));
        assertThat(rating.governing().nominalHz()).isEqualTo(2000);
    }

    @Test
    void noNumberBeyondTheScale() {
        assertThat(NoiseRating.rate(Spectrum.flat(BandSet.OCTAVE, -20)).place()).isEqualTo(Place.BELOW);
        assertThat(NoiseRating.rate(Spectrum.flat(BandSet.OCTAVE, 170)).place()).isEqualTo(Place.ABOVE);
    }
}
