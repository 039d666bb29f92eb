package hushmaze.sound.criterion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties of limits per band; expected values of NC worked by hand from the printed curves. */
class TargetCurveTest {
    private static final double LG3 = 4.771;

    @Test
    void ncIsItsCurveAndThirdsLieTenLgThreeLower() {
        TargetCurve limits = TargetCurve.of(new Target(Target.Kind.NC, 20.0, null, "test"));
        assertThat(limits.octaves().values()).containsExactly(51, 40, 33, 26, 22, 19, 17, 16);
        assertThat(limits.shapeAssumed()).isFalse();
        // 63 Hz: 51 - 4.77; 80 Hz: a third of the way from 51 to 40; 50 Hz: held at the end.
        assertThat(limits.thirds().value(1)).isCloseTo(51 - LG3, within(0.001));
        assertThat(limits.thirds().value(2)).isCloseTo(51 - 11 / 3.0 - LG3, within(0.001));
        assertThat(limits.thirds().value(0)).isCloseTo(51 - LG3, within(0.001));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 20, 25, 45, 90})
    void dbALimitsAddUpToTheTarget(double dbA) {
        TargetCurve limits = TargetCurve.of(new Target(Target.Kind.DBA, dbA, null, "test"));
        assertThat(AWeighting.total(limits.octaves())).isCloseTo(dbA, within(1e-6));
        assertThat(AWeighting.total(limits.thirds())).isCloseTo(dbA, within(0.6));
        assertThat(limits.shapeAssumed()).isTrue();
    }

    /** Computed apart from the program: the curve NR 20 in all eight octaves adds up to 30.12 dB(A). */
    @Test
    void thirtyDbAIsTheShapeOfNr20() {
        TargetCurve limits = TargetCurve.of(new Target(Target.Kind.DBA, 30.116, null, "test"));
        assertThat(NoiseRating.rate(limits.octaves()).number().orElseThrow()).isCloseTo(20, within(0.01));
    }

    @Test
    void ownSpectrumIsKeptInItsBands() {
        Spectrum octaves = new Spectrum(BandSet.OCTAVE, 40, 36, 30, 25, 20, 15, 12, 10);
        assertThat(TargetCurve.of(new Target(Target.Kind.SPECTRUM, null, octaves, "test"))
                        .octaves())
                .isEqualTo(octaves);
        Spectrum thirds = Spectrum.of(BandSet.THIRD_OCTAVE, i -> 40 - i);
        TargetCurve limits = TargetCurve.of(new Target(Target.Kind.SPECTRUM, null, thirds, "test"));
        assertThat(limits.thirds()).isEqualTo(thirds);
        assertThat(limits.octaves()).isEqualTo(thirds.levelsInOctaves());
    }
}
