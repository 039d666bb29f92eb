package hushmaze.sound.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import org.junit.jupiter.api.Test;

/** Power from a diffuse field: validation against limits that are derived in another way, and values worked by hand. */
class DiffuseIncidenceTest {
    private static final double SOUND_SPEED = 343.2;

    @Test
    void ontoAnAreaByHand() {
        // 10 lg(0.02 / 4) = -23.01.
        Spectrum power = DiffuseIncidence.onto(Spectrum.flat(BandSet.OCTAVE, 80), 0.02);
        assertThat(power.value(3)).isCloseTo(80 - 23.01, within(0.005));
    }

    /**
     * A duct that is small to the wavelength takes p² S / ρc of the pressure at a stiff wall, where p² is twice the mean: 8
     * times p² S / (4 ρc), 9.03 dB. The end reflection used is within 0.2 dB of the exact one.
     */
    @Test
    void aSmallMouthTakesEightTimesAsMuch() {
        for (double area : new double[] {0.0025, 0.005, 0.01}) {
            double more = DiffuseIncidence.intoDuct(50, area, SOUND_SPEED) - DiffuseIncidence.onto(area);
            assertThat(more).isCloseTo(9.03, within(0.2));
        }
    }

    @Test
    void aLargeMouthTakesWhatFallsOnIt() {
        assertThat(DiffuseIncidence.intoDuct(8000, 0.25, SOUND_SPEED))
                .isCloseTo(DiffuseIncidence.onto(0.25), within(0.01));
    }

    @Test
    void inBetweenNeitherMoreThanTheOneNorMuchLessThanTheOther() {
        for (double f = 20; f < 12000; f *= 1.1) {
            for (double area = 0.001; area < 4; area *= 1.7) {
                double more = DiffuseIncidence.intoDuct(f, area, SOUND_SPEED) - DiffuseIncidence.onto(area);
                assertThat(more).isBetween(-0.6, 9.2);
            }
        }
    }

    @Test
    void silenceDrivesNothing() {
        Spectrum silence = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY);
        assertThat(DiffuseIncidence.intoDuct(silence, 0.01, SOUND_SPEED)).isEqualTo(silence);
    }
}
