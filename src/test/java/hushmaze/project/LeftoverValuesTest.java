package hushmaze.project;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Property: a value that the chosen kind does not need is checked like one that it does, so that every project can be
 * saved and read again. A file holds no infinite numbers.
 */
class LeftoverValuesTest {
    private static final Spectrum SILENT = Spectrum.flat(BandSet.OCTAVE, Double.NEGATIVE_INFINITY);
    private static final Spectrum QUIET = Spectrum.flat(BandSet.OCTAVE, 20);
    private static final Target NC_20 = new Target(Target.Kind.NC, 20.0, null, "test");

    @Test
    void ownNoiseMustBeFinite() {
        assertThatThrownBy(() -> new Room(
                        "room",
                        40,
                        2,
                        5e-6,
                        4e-4,
                        200,
                        List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0),
                        2,
                        20,
                        0,
                        SILENT,
                        NC_20))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("ownNoise")
                .hasMessageContaining("-30 to 160 dB");
    }

    @Test
    void distanceIsCheckedAtTheMicrophoneToo() {
        assertThatThrownBy(() -> new Noise(QUIET, Noise.Place.AT_MICROPHONE, Double.NaN, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("distance")
                .hasMessageContaining("0.1 to 20 m");
    }

    @Test
    void targetNumberIsCheckedBesideASpectrum() {
        assertThatThrownBy(() -> new Target(Target.Kind.SPECTRUM, Double.POSITIVE_INFINITY, QUIET, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("number");
    }

    @Test
    void targetSpectrumMustBeFinite() {
        assertThatThrownBy(() -> new Target(Target.Kind.SPECTRUM, null, SILENT, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("spectrum")
                .hasMessageContaining("dB");
    }
}
