package hushmaze.wording;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.material.Fan;
import hushmaze.project.Brief;
import hushmaze.project.Drive;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.FirstLayout;
import hushmaze.store.TestProjects;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: what is said of air follows the figures, in both systems of units. */
class AirWordingTest {
    private final Wording metric = new Wording(UnitSystem.METRIC);

    private static Project laidOut(String name) {
        return FirstLayout.complete(TestProjects.read(name), Progress.NONE);
    }

    private static Assessment assess(Project project) {
        return Assessor.assess(project, Methods.ESTIMATE, Progress.NONE);
    }

    private static Project withFirst(Project project, Brief brief) {
        List<VentPath> paths = new ArrayList<>(project.paths());
        VentPath first = paths.get(0);
        paths.set(0, new VentPath(first.name(), first.purpose(), brief, first.box()));
        return project.withPaths(paths);
    }

    @Test
    void needIsMetOrNotOrUnknown() {
        Project cellar = laidOut("trio-cellar");
        assertThat(metric.roomAir(assess(cellar).room()))
                .startsWith("The room needs 28.1 L/s (to keep carbon dioxide at its limit); 30 L/s come in.");
        Brief brief = cellar.paths().get(0).brief();
        Project poor = withFirst(cellar, brief.withFlow(0.012));
        assertThat(metric.roomAir(assess(poor).room()))
                .startsWith("NOT enough: the room needs 28.1 L/s")
                .contains("12 L/s come in");
        assertThat(assess(poor).roomOk()).isFalse();
        Project still = withFirst(
                cellar,
                brief.withAirFrom(
                        brief.opening(), brief.flow(), new Drive(Drive.Kind.NOTHING, null, null, null, "test")));
        assertThat(metric.roomAir(assess(still).room())).contains("whether they come in is not known");
        Project tight = cellar.withPaths(cellar.paths().subList(0, 1));
        Project sealed = new Project(
                1,
                tight.name(),
                tight.titleBlock(),
                tight.units(),
                tight.room().withAir(null, tight.room().use(), null),
                tight.stock(),
                tight.paths());
        Assessment none = assess(sealed);
        assertThat(metric.roomAir(none.room())).contains("sealed as it is, it gets none");
        assertThat(metric.room(none.room(), sealed.room().target())).contains("rise without end");
    }

    @Test
    void fansTooWeakAndStrongEnough() {
        Project cabin = laidOut("lesson-cabin");
        Assessment good = assess(cabin);
        assertThat(metric.air(good.paths().get(0)))
                .startsWith("Enough air: 28 L/s")
                .contains("With the door shut the path carries")
                .contains("% of the speed of its curve the fan brings just that");
        Brief brief = cabin.paths().get(0).brief();
        Fan fan = brief.drive().fan();
        Drive slow = new Drive(Drive.Kind.FAN_CURVE, null, fan, 0.55, "test");
        Assessment weak = assess(withFirst(cabin, brief.withAirFrom(brief.opening(), brief.flow(), slow)));
        assertThat(metric.air(weak.paths().get(0))).startsWith("NOT enough air: 28 L/s would cost");
        Fan small = new Fan("small", List.of(new Fan.Point(0, 3), new Fan.Point(0.03, 0)), "test");
        Drive tiny = new Drive(Drive.Kind.FAN_CURVE, null, small, null, "test");
        Assessment hopeless = assess(withFirst(cabin, brief.withAirFrom(brief.opening(), brief.flow(), tiny)));
        assertThat(metric.air(hopeless.paths().get(0))).contains("the fan would have to turn at");
    }
}
