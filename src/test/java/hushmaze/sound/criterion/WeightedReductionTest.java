package hushmaze.sound.criterion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Validation of the weighted ratings against the standard's worked example and a second spectrum; properties. */
class WeightedReductionTest {
    /**
     * ISO 717-1, annex C, table C.1, as read in a public copy: third octaves 100 Hz to 3150 Hz. Printed there: R_w
     * (C; C_tr) = 30 (-2; -3) dB, sum of unfavourable deviations 31.8 dB, the largest 8.5 dB at 3150 Hz.
     */
    private static final double[] ANNEX_C = {
        20.4, 16.3, 17.7, 22.6, 22.4, 22.7, 24.8, 26.6, 28.0, 30.5, 31.8, 32.5, 33.4, 33.0, 31.0, 25.5
    };

    @Test
    void workedExampleOfTheStandard() {
        WeightedReduction rating = WeightedReduction.of(thirds(ANNEX_C));
        assertThat(rating.number()).isEqualTo(30);
        assertThat(rating.c()).isEqualTo(-2);
        assertThat(rating.ctr()).isEqualTo(-3);
        assertThat(rating.unfavourable()).isCloseTo(31.8, within(1e-6));
        assertThat(rating.worst().nominalHz()).isEqualTo(3150);
        assertThat(rating.byStandard()).isTrue();
    }

    /**
     * A 6 mm float glass pane in a public example report after ISO 717-1, made with another program: third octaves 100 Hz to
     * 3150 Hz, R_w (C; C_tr) = 31 (-1; -3) dB.
     */
    @Test
    void anotherProgramsExample() {
        WeightedReduction rating = WeightedReduction.of(
                thirds(15.7, 17.6, 19.7, 21.7, 23.6, 25.6, 27.7, 29.6, 31.6, 33.7, 35.6, 33.2, 30.6, 28.2, 31.1, 34.1));
        assertThat(rating.number()).isEqualTo(31);
        assertThat(rating.c()).isEqualTo(-1);
        assertThat(rating.ctr()).isEqualTo(-3);
    }

    /** Joint tested after ISO 10140-1, a public example report of the same kind: R_s,w (C; C_tr) = 49 (-1; -4) dB. */
    @Test
    void aJointsExample() {
        WeightedReduction rating = WeightedReduction.of(
                thirds(34.4, 35.9, 38.8, 41.3, 43.6, 45.8, 46.1, 46.8, 47.0, 46.2, 45.1, 46.9, 49.8, 52.6, 55.4, 59.5));
        assertThat(rating.number()).isEqualTo(49);
        assertThat(rating.c()).isEqualTo(-1);
        assertThat(rating.ctr()).isEqualTo(-4);
    }

    /** By hand: the reference curve itself, 52 at 500 Hz, may be exceeded by 2 dB in each of 16 bands. */
    @Test
    void theReferenceCurveIsTwoDecibelsAboveItsName() {
        double[] curve = {33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56};
        WeightedReduction rating = WeightedReduction.of(thirds(curve));
        assertThat(rating.number()).isEqualTo(54);
        assertThat(rating.unfavourable()).isCloseTo(32, within(1e-9));
    }

    @Test
    void anAssumedShapeHasItsNumber() {
        for (int number = 5; number < 90; number++) {
            Spectrum shape = WeightedReduction.assumedShape(number);
            assertThat(WeightedReduction.of(shape).number()).isEqualTo(number);
        }
        assertThatThrownBy(() -> WeightedReduction.assumedShape(Double.NaN)).isInstanceOf(InvalidValue.class);
    }

    @Test
    void oneDecibelMoreEverywhereIsOneMore() {
        Random random = new Random(3);
        for (int n = 0; n < 200; n++) {
            Spectrum loss = Spectrum.of(BandSet.THIRD_OCTAVE, i -> Math.rint(random.nextDouble() * 700) / 10);
            WeightedReduction rating = WeightedReduction.of(loss);
            WeightedReduction more = WeightedReduction.of(loss.plus(1));
            assertThat(more.number()).isEqualTo(rating.number() + 1);
            assertThat(rating.unfavourable()).isBetween(0.0, 32.0 + 1e-9);
        }
    }

    @Test
    void octavesAreMarked() {
        assertThat(WeightedReduction.of(Spectrum.flat(BandSet.OCTAVE, 30)).byStandard())
                .isFalse();
    }

    @Test
    void extremes() {
        Spectrum silent = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.POSITIVE_INFINITY);
        assertThatThrownBy(() -> WeightedReduction.of(silent))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("infinite in every band");
        Spectrum open = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY);
        assertThatThrownBy(() -> WeightedReduction.of(open)).isInstanceOf(InvalidValue.class);
        Spectrum oneBand = Spectrum.of(BandSet.THIRD_OCTAVE, i -> i == 10 ? 20 : Double.POSITIVE_INFINITY);
        // By hand: 500 Hz alone may lie 32 dB below the curve.
        assertThat(WeightedReduction.of(oneBand).number()).isEqualTo(52);
    }

    private static Spectrum thirds(double... values) {
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> i >= 3 && i < 19 ? values[i - 3] : 0);
    }
}
