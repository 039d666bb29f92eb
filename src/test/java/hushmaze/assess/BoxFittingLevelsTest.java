package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.air.AirState;
import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import hushmaze.project.Reading;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.size.FirstLayout;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Property: readings that are just what was predicted are explained by the box as it is, whatever method the prediction rests
 * on, for the sound in the passes as well as for the path.
 */
class BoxFittingLevelsTest {
    /** Gaps are tried in steps of an eighth. */
    private static final double STEP_DB = 0.3;

    @Test
    void whatWasPredictedIsExplained() {
        explained(Methods.ALL);
        explained(Methods.ESTIMATE);
    }

    private static void explained(Methods methods) {
        Project project = FirstLayout.complete(SampleProjects.read("trio-cellar"), Progress.NONE);
        Assessment assessment = Assessor.assess(project, methods, Progress.NONE);
        for (PathResult path : assessment.paths()) {
            Comparison comparison = Comparison.of(
                    path, predicted(path), AirState.of(project.room()).soundSpeed());
            BoxFitting fitting =
                    BoxFitting.of(project, path, comparison, Progress.NONE).orElseThrow();
            assertThat(path.sound().loss().methods().wave() != null).isEqualTo(methods.wave());
            assertThat(fitting.before()).isLessThan(1e-9);
            assertThat(fitting.after()).as(path.path().name()).isLessThan(STEP_DB);
            assertThat(fitting.explains()).isTrue();
        }
    }

    private static PathReadings predicted(PathResult path) {
        return new PathReadings(
                List.of(
                        reading(Reading.Round.WITHOUT_BOX, BandLevels.of(BandSet.THIRD_OCTAVE, i -> 90)),
                        reading(
                                Reading.Round.WITH_BOX,
                                BandLevels.of(
                                        BandSet.THIRD_OCTAVE,
                                        i -> 90 - path.thirds().get(i).likely()))),
                null,
                null);
    }

    private static Reading reading(Reading.Round round, BandLevels levels) {
        return new Reading("a place", round, Reading.Scale.CALIBRATED, levels, "invented for a test");
    }
}
