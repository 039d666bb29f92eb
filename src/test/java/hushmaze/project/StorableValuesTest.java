package hushmaze.project;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Property: every project that can be made can be saved and read again. A file holds no infinite numbers, no control
 * characters and only dates of four-digit years, so a value is checked for that even where the chosen kind does not need
 * it.
 */
class StorableValuesTest {
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

    @Test
    void dateMustHaveAYearOfFourDigits() {
        assertThatThrownBy(() -> new TitleBlock("owner", "1", LocalDate.of(12_026, 1, 1), "creator", null))
                .isInstanceOf(InvalidValue.class)
                .hasMessage("date.year: 12026 is not accepted; it must be from 1 to 9999");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\nb", "a\tb", "a\u007fb", "a\ud800b", "a\udfbb"})
    void textsAreOfOneLineAndOfWholeCharacters(String text) {
        assertThatThrownBy(() -> new TitleBlock(text, "1", LocalDate.of(2026, 1, 1), "creator", null))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("owner")
                .hasMessageContaining("without control characters");
    }
}
