package hushmaze.sound.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.porous.MikiLiner;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation of the beam in a straight lined run against mode matching of a slit lined on both walls (Miki's liner of 20,000
 * Pa·s/m², rigid back, c = 343.2 m/s); the script is {@code lined_slit_modes.py} beside this test's resources.
 */
class StraightBeamTest {
    private static final double C = 343.2;
    private static final MikiLiner LINER = new MikiLiner(20_000);

    /** Width, liner in mm, frequency, decay of the least attenuated mode: layers deeper than a third of a wave, w > 2 waves. */
    @ParameterizedTest
    @CsvSource({
        "100, 25, 7943.28, 11.053",
        "150, 25, 7943.28, 3.544",
        "250, 25, 7943.28, 0.805",
        "250, 50, 3981.07, 3.139",
        "250, 50, 7943.28, 0.788",
        "400, 50, 3981.07, 0.776",
        "400, 50, 7943.28, 0.196",
    })
    void theBeamDecaysAsTheLeastAttenuatedMode(double widthMm, double linerMm, double f, double decay) {
        assertThat(linerMm / 1e3).isGreaterThan(C / f / 3);
        assertThat(StraightBeam.decay(widthMm / 1e3, LINER, f, C)).isCloseTo(decay, within(0.2 * decay));
    }

    /** Width in mm, band, index of the third, loss of 3 m for equal power in all modes that come in. */
    @ParameterizedTest
    @CsvSource({
        "250, 25, 19, 14.72",
        "250, 25, 22, 12.29",
        "250, 50, 19, 16.68",
        "250, 50, 22, 12.21",
        "400, 50, 16, 15.18",
        "400, 50, 19, 11.25",
        "400, 50, 22, 9.87",
    })
    void whereItDecidesItIsNearSoundFromAllSides(double widthMm, double linerMm, int third, double exact) {
        double width = widthMm / 1e3;
        // Two lined walls and an endless height: A / P = w / 2.
        double regression = ReynoldsBledsoe.uncapped(2, width, linerMm / 1e3, 3, "")
                .thirds()
                .value(third);
        double limit = StraightBeam.most(new LinedSlits(List.of(width), List.of(0.025)), 3, LINER, C)
                .value(third);
        assertThat(limit).isLessThan(regression);
        assertThat(limit - exact).isBetween(0.0, 5.0);
        assertThat(regression - exact).as("what it mends").isGreaterThan(3.9);
    }

    @Test
    void belowOneWavelengthOfWidthItSaysNothing() {
        Spectrum most = StraightBeam.most(new LinedSlits(List.of(0.1), List.of(0.025)), 1, LINER, C);
        // By hand: c / w = 3432 Hz, between the thirds 3.15 k and 4 k.
        assertThat(most.value(18)).isInfinite();
        assertThat(most.value(19)).isFinite().isGreaterThan(10);
        Spectrum bare = StraightBeam.most(new LinedSlits(List.of(), List.of()), 1, LINER, C);
        assertThat(bare).isEqualTo(Spectrum.flat(BandSet.THIRD_OCTAVE, Double.POSITIVE_INFINITY));
    }

    /** Lined on both pairs of walls both slits take from the beam: their decays add to the same 10 dB. */
    @Test
    void twoSlitsAddTheirDecays() {
        int third = 22;
        double one = StraightBeam.most(new LinedSlits(List.of(0.2), List.of(0.025)), 2, LINER, C)
                .value(third);
        double other = StraightBeam.most(new LinedSlits(List.of(0.3), List.of(0.025)), 2, LINER, C)
                .value(third);
        double both = StraightBeam.most(new LinedSlits(List.of(0.2, 0.3), List.of(0.025, 0.025)), 2, LINER, C)
                .value(third);
        assertThat(both).isCloseTo(one + other - 10, within(1e-9));
    }
}
