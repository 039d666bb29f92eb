package hushmaze.assess;

import static hushmaze.assess.TestRooms.nc;
import static hushmaze.assess.TestRooms.path;
import static hushmaze.assess.TestRooms.project;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Validation: what the target leaves for each path, worked by hand. NC 20 is 51, 40, 33, 26, 22, 19, 17, 16 dB in the
 * octaves from 63 Hz (published NC table).
 */
class NoiseNeedsTest {
    private static final int KHZ = 4;

    @Test
    void twoEqualPathsGetHalfTheEnergyEach() {
        Project project =
                project(nc(20), null, path("in", Purpose.SUPPLY, 50, null), path("out", Purpose.RETURN, 50, null));
        List<NoiseNeed> needs = NoiseNeeds.of(project);
        // 22 dB less 10 lg 2 = 3.01 dB.
        assertThat(needs.get(0).allowedOctaves().value(KHZ)).isCloseTo(18.99, within(0.005));
        assertThat(needs.get(1).allowedOctaves().value(KHZ)).isCloseTo(18.99, within(0.005));
        assertThat(needs.get(0).noiseOctaves().value(KHZ)).isCloseTo(50, within(1e-9));
    }

    @Test
    void ownNoiseIsTakenOffByEnergy() {
        Spectrum own = Spectrum.flat(BandSet.OCTAVE, 19);
        NoiseNeed need = NoiseNeeds.of(project(nc(20), own, path("in", Purpose.SUPPLY, 50, null)))
                .get(0);
        // 10 lg (10^2.2 - 10^1.9) = 10 lg (158.49 - 79.43) = 10 lg 79.06 = 18.98 dB.
        assertThat(need.allowedOctaves().value(KHZ)).isCloseTo(18.98, within(0.005));
        // At 8 kHz the curve is 16 dB: nothing is left.
        assertThat(need.allowedOctaves().value(7)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void aGivenShareLeavesTheRestToTheOthers() {
        Project project =
                project(nc(20), null, path("in", Purpose.SUPPLY, 50, 0.25), path("out", Purpose.RETURN, 50, null));
        List<NoiseNeed> needs = NoiseNeeds.of(project);
        // 22 + 10 lg 0.25 = 15.98; 22 + 10 lg 0.75 = 20.75.
        assertThat(needs.get(0).allowedOctaves().value(KHZ)).isCloseTo(15.98, within(0.005));
        assertThat(needs.get(1).allowedOctaves().value(KHZ)).isCloseTo(20.75, within(0.005));
    }

    @Test
    void sharesOfMoreThanAllAreRefused() {
        Project project =
                project(nc(20), null, path("in", Purpose.SUPPLY, 50, 0.7), path("out", Purpose.RETURN, 50, 0.7));
        assertThatThrownBy(() -> NoiseNeeds.of(project))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("1.4");
    }

    @Test
    void anAWeightedTargetIsSharedAsAWhole() {
        Target target = new Target(Target.Kind.DBA, 30.0, null, "invented for a test");
        Project project =
                project(target, null, path("in", Purpose.SUPPLY, 50, null), path("out", Purpose.RETURN, 50, null));
        assertThat(NoiseNeeds.of(project).get(0).allowedDbA()).isCloseTo(30 - 3.0103, within(1e-4));
    }
}
