package hushmaze.sound.criterion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of the class against another program's example and printed partitions; both rules by hand. */
class SoundTransmissionClassTest {
    /** The example of a public program for this class: third octaves 125 Hz to 4 kHz, STC 29. */
    @Test
    void anotherProgramsExample() {
        double[] loss = {
            11.66, 13.303, 14.825, 20.861, 22.868, 24.943, 26.881, 28.889, 30.964, 32.902, 34.84, 36.984, 38.923,
            40.861, 27.557, 30.67
        };
        SoundTransmissionClass rating = SoundTransmissionClass.of(thirds(loss));
        assertThat(rating.number()).isEqualTo(29);
        assertThat(rating.byStandard()).isTrue();
    }

    /**
     * Partitions printed with octaves 125 Hz to 4 kHz and their class: the first three in a copy of UFC 3-450-01, the others in
     * Introduction to Acoustics, table 11.4. The classes are of third octaves, so octaves give them only nearly; the last two
     * are the ones furthest off.
     */
    @ParameterizedTest
    @CsvSource({
        "17 26 34 40 46 44, 37, 1",
        "24 34 42 48 46 48, 44, 1",
        "20 30 39 46 52 50, 41, 1",
        "29 31 31 31 39 43, 34, 1",
        "14 19 23 18 17 21, 19, 1",
        "15 30 34 44 46 41, 37, 1",
        "29 38 45 52 58 50, 48, 1",
        "36 44 50 54 58 56, 53, 1",
        "32 34 40 47 55 61, 45, 1",
        "18 21 26 31 33 22, 26, 1",
        "31 34 38 40 37 46, 40, 1",
        "32 38 47 52 57 63, 50, 1",
        "24 23 29 31 24 40, 28, 1",
        "26 34 40 48 44 52, 43, 1",
        "23 28 39 46 54 44, 39, 2",
        "17 31 33 40 38 36, 33, 3",
        "25 34 41 51 48 50, 41, 3"
    })
    void printedPartitions(String octaves, int printed, int tolerance) {
        String[] values = octaves.split(" ");
        Spectrum loss = Spectrum.of(
                BandSet.OCTAVE, i -> Double.parseDouble(values[Math.max(0, Math.min(values.length - 1, i - 1))]));
        SoundTransmissionClass rating = SoundTransmissionClass.of(loss);
        assertThat(rating.number()).isBetween(printed - tolerance, printed + tolerance);
        assertThat(rating.byStandard()).isFalse();
    }

    /** By hand: a single hole 8 dB below the contour is allowed, one more decibel takes the contour down by one. */
    @Test
    void noBandMayLieMoreThanEightBelow() {
        int[] contour = {-16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4, 4};
        SoundTransmissionClass eight = SoundTransmissionClass.of(contourWithHole(contour, 8));
        assertThat(eight.number()).isEqualTo(40);
        assertThat(eight.largest()).isEqualTo(8);
        assertThat(eight.worst().nominalHz()).isEqualTo(1000);
        assertThat(SoundTransmissionClass.of(contourWithHole(contour, 9)).number())
                .isEqualTo(39);
    }

    /** By hand: the contour itself may be exceeded by 2 dB in each of 16 bands. */
    @Test
    void theContourIsTwoAboveItsName() {
        int[] contour = {-16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4, 4};
        SoundTransmissionClass rating = SoundTransmissionClass.of(contourWithHole(contour, 0));
        assertThat(rating.number()).isEqualTo(42);
        assertThat(rating.deficiency()).isEqualTo(32);
    }

    @Test
    void infiniteLossEverywhereHasNoClass() {
        Spectrum silent = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.POSITIVE_INFINITY);
        assertThatThrownBy(() -> SoundTransmissionClass.of(silent)).isInstanceOf(InvalidValue.class);
    }

    /** The contour at 40 with one band lower at 1 kHz. */
    private static Spectrum contourWithHole(int[] contour, double depth) {
        double[] loss = new double[contour.length];
        for (int i = 0; i < loss.length; i++) {
            loss[i] = 40 + contour[i] - (i == 9 ? depth : 0);
        }
        return thirds(loss);
    }

    private static Spectrum thirds(double[] values) {
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> i >= 4 && i < 20 ? values[i - 4] : 0);
    }
}
