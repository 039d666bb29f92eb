package hushmaze.sound.criterion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Margins to each kind of limit, worked by hand from the printed curves; properties. */
class TargetMarginTest {
    // Engineering Acoustics, example 6.3, as read in a published solution: NC 46, governed by 500 Hz.
    private static final Spectrum WORKED = new Spectrum(BandSet.OCTAVE, 61, 56, 54, 50, 44, 43, 39, 34);

    @Test
    void ncMarginByHand() {
        // NC 45 is 67, 60, 54, 49, 46, 44, 43, 42.
        TargetMargin margin = TargetMargin.of(WORKED, new Target(Target.Kind.NC, 45.0, null, "test"));
        assertThat(margin.octaves().values()).containsExactly(6, 4, 0, -1, 2, 1, 4, 8);
        assertThat(margin.margin()).isEqualTo(-1);
        assertThat(margin.governing().nominalHz()).isEqualTo(500);
        assertThat(margin.whole()).isFalse();
        assertThat(margin.ok()).isFalse();
    }

    @Test
    void nrMarginByHand() {
        // ISO 1996:1971: NR 45 at 500 Hz is 4.8 + 0.974 · 45 = 48.63 dB.
        TargetMargin margin = TargetMargin.of(WORKED, new Target(Target.Kind.NR, 45.0, null, "test"));
        assertThat(margin.margin()).isCloseTo(48.63 - 50, within(1e-9));
        assertThat(margin.governing().nominalHz()).isEqualTo(500);
    }

    @Test
    void rcMarginByHand() {
        // RC 45: 65, 60, 55, 50, 45, 40, 35, 30; the worked spectrum is 4 dB above it at 4 and 8 kHz.
        TargetMargin margin = TargetMargin.of(WORKED, new Target(Target.Kind.RC, 45.0, null, "test"));
        assertThat(margin.octaves().values()).containsExactly(4, 4, 1, 0, 1, -3, -4, -4);
        assertThat(margin.margin()).isEqualTo(-4);
        assertThat(margin.governing().nominalHz()).isEqualTo(4000);
    }

    @Test
    void dbAMarginIsOfTheWholeSpectrum() {
        double[] levels = new double[8];
        Arrays.fill(levels, Double.NEGATIVE_INFINITY);
        levels[4] = 40;
        levels[0] = 50;
        // By hand: 40 dB at 1 kHz and 50 - 26.2 dB at 63 Hz are 40.10 dB(A).
        TargetMargin margin =
                TargetMargin.of(new Spectrum(BandSet.OCTAVE, levels), new Target(Target.Kind.DBA, 45.0, null, "test"));
        assertThat(margin.margin()).isCloseTo(45 - 40.10, within(0.01));
        assertThat(margin.whole()).isTrue();
        assertThat(margin.governing().nominalHz()).isEqualTo(1000);
    }

    @Test
    void aLimitInThirdsIsKeptInThirds() {
        Spectrum limit = Spectrum.flat(BandSet.THIRD_OCTAVE, 30);
        double[] levels = limit.values();
        levels[7] = 32;
        levels[6] = 10;
        levels[8] = 10;
        // The octave is within the limit, the third is not.
        TargetMargin margin = TargetMargin.of(
                new Spectrum(BandSet.THIRD_OCTAVE, levels), new Target(Target.Kind.SPECTRUM, null, limit, "test"));
        assertThat(margin.margin()).isCloseTo(-2, within(1e-9));
        assertThat(margin.governing()).isEqualTo(BandSet.THIRD_OCTAVE.bands().get(7));
        assertThat(margin.octaves().value(2)).isPositive();
    }

    @Test
    void silenceKeepsEveryLimit() {
        Spectrum silence = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY);
        for (Target.Kind kind : new Target.Kind[] {Target.Kind.NC, Target.Kind.NR, Target.Kind.RC, Target.Kind.DBA}) {
            TargetMargin margin = TargetMargin.of(silence, new Target(kind, 20.0, null, "test"));
            assertThat(margin.margin()).isEqualTo(Double.POSITIVE_INFINITY);
            assertThat(margin.ok()).isTrue();
        }
    }
}
