package hushmaze.sound.criterion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.CurveRating.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Validation of the noise criterion against its printed table and a worked example; properties of the rating. */
class NoiseCriterionTest {
    // Engineering Acoustics, example 6.3, as read in a published solution: NC 46, governed by 500 Hz.
    private static final Spectrum WORKED = new Spectrum(BandSet.OCTAVE, 61, 56, 54, 50, 44, 43, 39, 34);

    @Test
    void workedExampleIsNc46GovernedBy500Hz() {
        CurveRating rating = NoiseCriterion.rate(WORKED);
        assertThat(rating.number().orElseThrow()).isCloseTo(46, within(1e-9));
        assertThat(rating.governing().nominalHz()).isEqualTo(500);
    }

    @Test
    void curvesAsPrinted() {
        // Rows NC 15, 40 and 70 of the published table.
        assertThat(NoiseCriterion.curve(15).values()).containsExactly(47, 36, 29, 22, 17, 14, 12, 11);
        assertThat(NoiseCriterion.curve(40).values()).containsExactly(64, 56, 50, 45, 41, 39, 38, 37);
        assertThat(NoiseCriterion.curve(70).values()).containsExactly(83, 79, 75, 72, 71, 70, 69, 68);
    }

    @ParameterizedTest
    @ValueSource(doubles = {15, 15.4, 20, 33.3, 46, 69.9, 70})
    void aCurveRatesAsItself(double number) {
        CurveRating rating = NoiseCriterion.rate(NoiseCriterion.curve(number));
        assertThat(rating.place()).isEqualTo(Place.WITHIN);
        assertThat(rating.number().orElseThrow()).isCloseTo(number, within(1e-9));
    }

    @Test
    void thirdsAreSummedFirst() {
        Spectrum thirds = WORKED.levelsInThirds();
        assertThat(NoiseCriterion.rate(thirds).number().orElseThrow()).isCloseTo(46, within(1e-9));
    }

    @Test
    void belowTheLowestCurveThereIsNoNumber() {
        CurveRating rating = NoiseCriterion.rate(NoiseCriterion.curve(15).plus(-0.1));
        assertThat(rating.place()).isEqualTo(Place.BELOW);
        assertThat(rating.number()).isEmpty();
        CurveRating silence = NoiseCriterion.rate(Spectrum.flat(BandSet.OCTAVE, Double.NEGATIVE_INFINITY));
        assertThat(silence.place()).isEqualTo(Place.BELOW);
    }

    @Test
    void aboveTheHighestCurveThereIsNoNumber() {
        CurveRating rating = NoiseCriterion.rate(new Spectrum(BandSet.OCTAVE, 80, 70, 60, 90, 60, 60, 60, 60));
        assertThat(rating.place()).isEqualTo(Place.ABOVE);
        assertThat(rating.number()).isEmpty();
        assertThat(rating.governing().nominalHz()).isEqualTo(500);
    }

    @Test
    void curvesBeyondTheTableAreRefused() {
        assertThatThrownBy(() -> NoiseCriterion.curve(14.9)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> NoiseCriterion.curve(70.1)).isInstanceOf(InvalidValue.class);
    }
}
