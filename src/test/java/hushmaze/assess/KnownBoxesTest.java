package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.project.Box;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * Property: an assessment is the same with what is known of boxes and without, after edits of a box, of what is
 * asked of it and of its air.
 */
class KnownBoxesTest {
    private final KnownBoxes known = new KnownBoxes();

    @Test
    void anAssessmentIsTheSameWithWhatIsKnown() {
        Project project = SampleProjects.read("story-booth");
        compare(project);
        VentPath first = project.paths().get(0);
        Box box = first.box();
        compare(project.withPath(0, first.withBox(taller(box, 0.005))));
        compare(project.withPath(0, first.withBrief(first.brief().withNoiseShare(0.3))));
        compare(project.withPath(
                0, first.withBrief(first.brief().withFlow(0.9 * first.brief().flow()))));
        compare(project);
    }

    private void compare(Project project) {
        Assessment fresh = Assessor.assess(project, Methods.QUICK, Progress.NONE);
        Assessment again = Assessor.assess(project, Methods.QUICK, known, Progress.NONE);
        assertThat(again.room()).usingRecursiveComparison().isEqualTo(fresh.room());
        for (int i = 0; i < fresh.paths().size(); i++) {
            PathResult one = fresh.paths().get(i);
            PathResult other = again.paths().get(i);
            assertThat(other.quiet()).isEqualTo(one.quiet());
            assertThat(other.thirds()).isEqualTo(one.thirds());
            assertThat(other.pathAir()).isEqualTo(one.pathAir());
            assertThat(other.layouts()).usingRecursiveComparison().isEqualTo(one.layouts());
            assertThat(other.notices()).isEqualTo(one.notices());
            assertThat(other.buildable()).isEqualTo(one.buildable());
        }
    }

    /** The wave solution of a box is not computed again for another share of the target, and is for another box; what was stopped is not kept. */
    @Test
    void theWaveSolutionIsComputedOnce() {
        Project project = SampleProjects.read("story-booth");
        Methods wave = new Methods(Methods.QUICK.quick(), true, Methods.QUICK.sheets());
        assertThatThrownBy(() -> Assessor.assess(project, wave, known, (fraction, doing) -> {
                    if (doing.contains("wave")) {
                        throw new Progress.Cancelled();
                    }
                }))
                .isInstanceOf(Progress.Cancelled.class);
        assertThat(steps(project, wave)).isPositive();
        VentPath first = project.paths().get(0);
        Project stricter = project.withPath(0, first.withBrief(first.brief().withNoiseShare(0.3)));
        assertThat(steps(stricter, wave)).isZero();
        assertThat(steps(project.withPath(0, first.withBox(taller(first.box(), 0.005))), wave))
                .isPositive();
    }

    /** Steps of the wave solution while a project is judged. */
    private int steps(Project project, Methods methods) {
        AtomicInteger steps = new AtomicInteger();
        Assessor.assess(project, methods, known, (fraction, doing) -> {
            if (doing.contains("wave")) {
                steps.incrementAndGet();
            }
        });
        return steps.get();
    }

    @Test
    void aBoxThatCannotBeBuiltIsRefusedEveryTime() {
        Project project = SampleProjects.read("story-booth");
        VentPath first = project.paths().get(0);
        Box box = first.box();
        Port back = new Port(PortFace.BACK, 0.05, 0.05, 0);
        Box impossible = box.sized(1, box.clearWidth(), box.clearHeight(), 0.08, 0, box.liner(), back, back);
        for (int i = 0; i < 2; i++) {
            assertThatThrownBy(() -> Assessor.assess(
                            project.withPath(0, first.withBox(impossible)), Methods.QUICK, known, Progress.NONE))
                    .isInstanceOf(InvalidValue.class)
                    .hasMessageContaining("paths[0].box");
        }
    }

    private static Box taller(Box box, double by) {
        return box.sized(
                box.passes(),
                box.clearWidth(),
                box.clearHeight() + by,
                box.clearLength(),
                box.turnGap(),
                box.liner(),
                box.openingPort(),
                box.roomPort());
    }
}
