package hushmaze.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** <em>Validation</em> of conversions between bands against numbers worked by hand, and <em>property</em> tests. */
class SpectrumTest {
    private static final Spectrum OCTAVES = new Spectrum(BandSet.OCTAVE, 60, 57, 51, 48, 45, 42, 39, 30);

    /** Worked by hand: three equal thirds of 50 dB are 54.7712 dB; a loss of 20 in each third is 20 in the octave. */
    @Test
    void thirdsToOctaves() {
        Spectrum flat = Spectrum.flat(BandSet.THIRD_OCTAVE, 50);
        assertThat(flat.levelsInOctaves().value(0)).isCloseTo(54.7712, within(6e-5));
        assertThat(flat.lossesInOctaves().value(7)).isCloseTo(50, within(1e-9));
        Spectrum steps = Spectrum.of(BandSet.THIRD_OCTAVE, i -> 10.0 * (1 + i % 3));
        // 10 lg(10 + 100 + 1000) = 30.4532; losses: 14.318
        assertThat(steps.levelsInOctaves().value(3)).isCloseTo(30.4532, within(6e-5));
        assertThat(steps.lossesInOctaves().value(3)).isCloseTo(14.318, within(6e-4));
    }

    /** Worked by hand: an octave of 60 dB in three equal thirds is 55.2288 dB each. */
    @Test
    void octavesToThirds() {
        Spectrum thirds = OCTAVES.levelsInThirds();
        for (int i = 0; i < 3; i++) {
            assertThat(thirds.value(i)).isCloseTo(55.2288, within(6e-5));
        }
        assertThat(thirds.value(21)).isCloseTo(25.2288, within(6e-5));
    }

    /** Worked by hand: straight over log frequency, held below the 63 Hz and above the 8 kHz centre. */
    @Test
    void interpolatedInThirds() {
        Spectrum thirds = OCTAVES.interpolatedInThirds();
        double[] expected = {60, 60, 59, 58, 57, 55, 53, 51, 50, 49, 48};
        for (int i = 0; i < expected.length; i++) {
            assertThat(thirds.value(i)).as("third %d", i).isCloseTo(expected[i], within(1e-9));
        }
        assertThat(thirds.value(21)).isCloseTo(33, within(1e-9));
        assertThat(thirds.value(22)).isEqualTo(30);
        assertThat(thirds.value(23)).isEqualTo(30);
    }

    /** Property: octaves to thirds and back are the same octaves; levels keep their total. */
    @Test
    void thereAndBack() {
        Random random = new Random(2);
        for (int n = 0; n < 500; n++) {
            Spectrum octaves = Spectrum.of(BandSet.OCTAVE, i -> 90 * random.nextDouble());
            Spectrum back = octaves.levelsInThirds().levelsInOctaves();
            for (int i = 0; i < octaves.size(); i++) {
                assertThat(back.value(i)).isCloseTo(octaves.value(i), within(1e-9));
                assertThat(octaves.interpolatedInThirds().value(3 * i + 1)).isEqualTo(octaves.value(i));
            }
            Spectrum thirds = Spectrum.of(BandSet.THIRD_OCTAVE, i -> 90 * random.nextDouble());
            assertThat(thirds.levelsInOctaves().total()).isCloseTo(thirds.total(), within(1e-9));
        }
    }

    @Test
    void whatIsInTheBandsAlreadyStays() {
        assertThat(OCTAVES.levelsInOctaves()).isSameAs(OCTAVES);
        assertThat(OCTAVES.lossesInOctaves()).isSameAs(OCTAVES);
        Spectrum thirds = Spectrum.flat(BandSet.THIRD_OCTAVE, 3);
        assertThat(thirds.levelsInThirds()).isSameAs(thirds);
        assertThat(thirds.interpolatedInThirds()).isSameAs(thirds);
    }

    /** Silence, and routes that let nothing through, pass through every conversion. */
    @Test
    void infiniteValues() {
        Spectrum silence = Spectrum.flat(BandSet.OCTAVE, Double.NEGATIVE_INFINITY);
        assertThat(silence.levelsInThirds().value(5)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(silence.levelsInThirds().levelsInOctaves()).isEqualTo(silence);
        assertThat(silence.total()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(silence.interpolatedInThirds().value(5)).isEqualTo(Double.NEGATIVE_INFINITY);
        Spectrum closed = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.POSITIVE_INFINITY);
        assertThat(closed.lossesInOctaves().value(0)).isEqualTo(Double.POSITIVE_INFINITY);
        Spectrum one = new Spectrum(BandSet.OCTAVE, Double.NEGATIVE_INFINITY, 20, 20, 20, 20, 20, 20, 20);
        assertThat(one.interpolatedInThirds().value(2)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    /** Worked by hand: 60 and 60 are 63.0103; 40 and 20 side by side 19.957; plain sums are plain. */
    @Test
    void bandByBand() {
        Spectrum sixty = Spectrum.flat(BandSet.OCTAVE, 60);
        assertThat(sixty.energyPlus(sixty).value(4)).isCloseTo(63.0103, within(6e-5));
        assertThat(sixty.energyMinus(Spectrum.flat(BandSet.OCTAVE, 50)).value(4))
                .isCloseTo(59.5424, within(6e-5));
        assertThat(sixty.energyMinus(sixty).value(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        Spectrum forty = Spectrum.flat(BandSet.OCTAVE, 40);
        assertThat(forty.parallelLoss(Spectrum.flat(BandSet.OCTAVE, 20)).value(1))
                .isCloseTo(19.957, within(6e-4));
        assertThat(sixty.minus(forty)).isEqualTo(Spectrum.flat(BandSet.OCTAVE, 20));
        assertThat(forty.plus(forty)).isEqualTo(Spectrum.flat(BandSet.OCTAVE, 80));
        assertThat(forty.plus(-1.5)).isEqualTo(Spectrum.flat(BandSet.OCTAVE, 38.5));
    }

    @Test
    void refusesWhatDoesNotFit() {
        assertThatThrownBy(() -> new Spectrum(BandSet.OCTAVE, 1, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("8");
        assertThatThrownBy(() -> Spectrum.flat(BandSet.OCTAVE, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("63 Hz");
        assertThatThrownBy(() -> OCTAVES.plus(Spectrum.flat(BandSet.THIRD_OCTAVE, 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A spectrum cannot be changed from outside. */
    @Test
    void immutable() {
        double[] values = {1, 2, 3, 4, 5, 6, 7, 8};
        Spectrum spectrum = new Spectrum(BandSet.OCTAVE, values);
        values[0] = 99;
        spectrum.values()[1] = 99;
        assertThat(spectrum).isEqualTo(new Spectrum(BandSet.OCTAVE, 1, 2, 3, 4, 5, 6, 7, 8));
        assertThat(spectrum.hashCode()).isEqualTo(new Spectrum(BandSet.OCTAVE, 1, 2, 3, 4, 5, 6, 7, 8).hashCode());
    }
}
