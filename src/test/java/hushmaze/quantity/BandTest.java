package hushmaze.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> of bands against figures of IEC 61260-1 as quoted in public annexes. */
class BandTest {
    /** Exact centres of the base-10 system, to the printed digits (read). */
    @ParameterizedTest(name = "1/{0} octave, {1}")
    @CsvSource({
        "1, -5, 31.623, 0.0006", "1, -4, 63.096, 0.0006", "1, -3, 125.89, 0.006", "1, 0, 1000, 1e-9",
        "3, -2, 630.96, 0.006", "3, -1, 794.33, 0.006", "3, 1, 1258.9, 0.06", "3, 2, 1584.9, 0.06",
        "3, 10, 10000, 1e-8", "3, -10, 100, 1e-10", "1, 1, 1995.26, 0.006",
    })
    void centres(int fraction, int index, double hertz, double tolerance) {
        assertThat(new Band(fraction, index).centreHz()).isCloseTo(hertz, within(tolerance));
    }

    /**
     * Edges f G^(-1/2b), f G^(1/2b) with G = 10^0.3 (from memory): at 1 kHz 10^2.85 = 707.95 and 10^3.15 = 1412.54 for the
     * octave, 10^2.95 = 891.25 and 10^3.05 = 1122.02 for the third, worked with a table of powers of ten.
     */
    @ParameterizedTest(name = "1/{0} octave")
    @CsvSource({"1, 707.946, 1412.538", "3, 891.251, 1122.018"})
    void edgesAtOneKilohertz(int fraction, double lower, double upper) {
        Band band = new Band(fraction, 0);
        assertThat(band.lowerHz()).isCloseTo(lower, within(6e-4));
        assertThat(band.upperHz()).isCloseTo(upper, within(6e-4));
    }

    /** Nominal frequencies of the standard in their usual writing. */
    @Test
    void labels() {
        assertThat(BandSet.THIRD_OCTAVE.bands())
                .extracting(Band::label)
                .containsExactly(
                        "50", "63", "80", "100", "125", "160", "200", "250", "315", "400", "500", "630", "800", "1k",
                        "1.25k", "1.6k", "2k", "2.5k", "3.15k", "4k", "5k", "6.3k", "8k", "10k");
        assertThat(BandSet.OCTAVE.bands())
                .extracting(Band::label)
                .containsExactly("63", "125", "250", "500", "1k", "2k", "4k", "8k");
        assertThat(new Band(1, -5).label()).isEqualTo("31.5");
        assertThat(new Band(3, -15).label()).isEqualTo("31.5");
    }

    /** Property: bands of a set join without gap or overlap, and three thirds fill the octave exactly. */
    @Test
    void bandsJoin() {
        for (BandSet set : BandSet.values()) {
            for (int i = 1; i < set.size(); i++) {
                double edge = set.bands().get(i - 1).upperHz();
                assertThat(set.bands().get(i).lowerHz()).isCloseTo(edge, within(1e-9 * edge));
            }
        }
        for (int i = 0; i < BandSet.OCTAVE.size(); i++) {
            Band octave = BandSet.OCTAVE.bands().get(i);
            assertThat(BandSet.THIRD_OCTAVE.bands().get(3 * i).lowerHz())
                    .isCloseTo(octave.lowerHz(), within(1e-9 * octave.lowerHz()));
            assertThat(BandSet.THIRD_OCTAVE.bands().get(3 * i + 2).upperHz())
                    .isCloseTo(octave.upperHz(), within(1e-9 * octave.upperHz()));
            assertThat(BandSet.THIRD_OCTAVE.centreHz(3 * i + 1)).isCloseTo(octave.centreHz(), within(1e-8));
        }
    }

    /** Property: the name is within 1.5 % of the exact centre. */
    @Test
    void nominalIsNearTheCentre() {
        for (BandSet set : BandSet.values()) {
            for (Band band : set.bands()) {
                assertThat(band.nominalHz()).isCloseTo(band.centreHz(), within(0.015 * band.centreHz()));
            }
        }
    }

    @Test
    void refusesOtherFractions() {
        assertThatThrownBy(() -> new Band(2, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2");
    }
}
