package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.project.Project;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import org.junit.jupiter.api.Test;

/**
 * Regression: the boxes of the sample projects are those a search recommends. One path is searched here; after a change of the
 * search renew them all with {@code size presets/projects/NAME.json --keep 1 --save ...} until nothing changes: with its share of the target
 * given a path may get another box than when shares are sought too.
 */
class SampleBoxesTest {
    @Test
    void theBoxOfASampleIsTheOneRecommended() {
        Project project = SampleProjects.read("lesson-cabin");
        PathDesigns found = Sizing.ofPath(project, 0, 1, Progress.NONE, Sizing.Watch.NOBODY);
        Design design = found.recommended().orElseThrow();
        assertThat(design.placed(project.paths().get(0)))
                .isEqualTo(project.paths().get(0));
    }
}
