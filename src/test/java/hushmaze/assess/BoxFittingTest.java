package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.AirState;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.JointGap;
import hushmaze.project.PathReadings;
import hushmaze.project.Project;
import hushmaze.project.Reading;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.size.FirstLayout;
import hushmaze.store.TestProjects;
import hushmaze.work.Progress;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Property: readings of a box that differs from the project in its gap and its liner, as the whole assessment predicts them and
 * shaken by a seeded error, give back that gap and that liner; readings of no such box give neither.
 */
class BoxFittingTest {
    private static final double BEFORE = 90;
    private static final int PATH = 0;

    private static Project project;
    private static PathResult predicted;

    @BeforeAll
    static void assess() {
        project = FirstLayout.complete(TestProjects.read("trio-cellar"), Progress.NONE);
        predicted = assessed(project);
    }

    private static PathResult assessed(Project of) {
        return Assessor.assess(of, Methods.QUICK, Progress.NONE).paths().get(PATH);
    }

    private static Project built(double gap, double times) {
        Box box = project.paths().get(PATH).box();
        Liner liner = box.liner();
        Liner other = new Liner(
                liner.name(),
                liner.thickness(),
                liner.density(),
                times * liner.flowResistivity(),
                times * liner.flowResistivity(),
                times * liner.flowResistivity(),
                liner.roughness(),
                "made up for a test");
        Box otherBox = box.withLiner(other)
                .joined(box.joinery().gapping(new JointGap(gap, gap, gap, "made up for a test")), box.seams());
        return project.withPath(PATH, project.paths().get(PATH).withBox(otherBox));
    }

    private static Comparison comparison(BandSet set, IntToDoubleFunction reduction) {
        PathReadings readings = PathReadings.NONE
                .and(reading(Reading.Round.WITHOUT_BOX, BandLevels.of(set, i -> BEFORE)))
                .and(reading(Reading.Round.WITH_BOX, BandLevels.of(set, i -> BEFORE - reduction.applyAsDouble(i))));
        return Comparison.of(predicted, readings, AirState.of(project.room()).soundSpeed());
    }

    private static Reading reading(Reading.Round round, BandLevels levels) {
        return new Reading("made up", round, Reading.Scale.AS_GIVEN, levels, "made up for a test");
    }

    private static BoxFitting fit(Comparison comparison) {
        return BoxFitting.of(project, predicted, comparison, Progress.NONE).orElseThrow();
    }

    @Test
    void givesBackGapAndLiner() {
        List<BandResult> truth = assessed(built(0.0006, 2)).thirds();
        Random random = new Random(11);
        double[] error = random.doubles(24, -1, 1).toArray();
        BoxFitting fitting =
                fit(comparison(BandSet.THIRD_OCTAVE, i -> truth.get(i).likely() + error[i]));
        assertThat(fitting.bands()).isEqualTo(24);
        assertThat(fitting.explains()).isTrue();
        assertThat(fitting.after()).isLessThan(1.2).isLessThan(fitting.before());
        assertThat(fitting.tellsGap()).isTrue();
        assertThat(fitting.gap().likely()).isBetween(0.0005, 0.0007);
        assertThat(fitting.gap().least()).isBetween(0.0003, 0.0006);
        assertThat(fitting.gap().most()).isBetween(0.0006, 0.001);
        double resistivity = 2 * project.paths().get(PATH).box().liner().flowResistivity();
        BoxFitting.Value liner = fitting.resistivity();
        assertThat(liner.least() == null || liner.least() <= resistivity).isTrue();
        assertThat(liner.most() == null || liner.most() >= resistivity).isTrue();
        BoxFitting exact =
                fit(comparison(BandSet.THIRD_OCTAVE, i -> truth.get(i).likely()));
        assertThat(exact.resistivity().likely()).isCloseTo(resistivity, within(1.0));
        assertThat(exact.after()).isLessThan(0.3);
        JointGap kept = fitting.asGap("readings of a test");
        assertThat(kept.likely()).isEqualTo(fitting.gap().likely());
        assertThat(kept.source()).isEqualTo("readings of a test");
    }

    @Test
    void givesBackThemFromOctaves() {
        List<BandResult> truth = assessed(built(0.001, 1)).octaves();
        BoxFitting fitting = fit(comparison(BandSet.OCTAVE, i -> truth.get(i).likely()));
        assertThat(fitting.bands()).isEqualTo(8);
        assertThat(fitting.gap().likely()).isBetween(0.0009, 0.0011);
        double resistivity = project.paths().get(PATH).box().liner().flowResistivity();
        BoxFitting.Value liner = fitting.resistivity();
        assertThat(liner.least() == null || liner.least() <= resistivity).isTrue();
        assertThat(liner.most() == null || liner.most() >= resistivity).isTrue();
    }

    @Test
    void whatIsKeptPredictsTheReadings() {
        List<BandResult> truth = assessed(built(0.0006, 0.5)).thirds();
        BoxFitting fitting =
                fit(comparison(BandSet.THIRD_OCTAVE, i -> truth.get(i).likely()));
        assertThat(fitting.tellsGap()).isTrue();
        Box box = project.paths().get(PATH).box();
        Box kept = box.joined(box.joinery().gapping(fitting.asGap("test")), box.seams());
        if (fitting.tellsResistivity()) {
            kept = kept.withLiner(fitting.asLiner(box.liner(), "test"));
        }
        PathResult next =
                assessed(project.withPath(PATH, project.paths().get(PATH).withBox(kept)));
        double worst = 0;
        double was = 0;
        for (int i = 0; i < truth.size(); i++) {
            worst = Math.max(
                    worst, Math.abs(next.thirds().get(i).likely() - truth.get(i).likely()));
            was = Math.max(
                    was,
                    Math.abs(predicted.thirds().get(i).likely() - truth.get(i).likely()));
            assertThat(next.thirds().get(i).low())
                    .isLessThanOrEqualTo(next.thirds().get(i).likely());
            assertThat(next.thirds().get(i).high())
                    .isGreaterThanOrEqualTo(next.thirds().get(i).likely());
        }
        assertThat(was).isGreaterThan(5);
        assertThat(worst).isLessThan(2);
    }

    @Test
    void tightReadingsOnlyHoldTheGapFromAbove() {
        List<BandResult> truth = assessed(built(0, 1)).thirds();
        BoxFitting fitting =
                fit(comparison(BandSet.THIRD_OCTAVE, i -> truth.get(i).likely()));
        assertThat(fitting.gap().least()).isZero();
        assertThat(fitting.gap().most()).isLessThan(0.0002);
        assertThat(fitting.asGap("test").least()).isZero();
    }

    @Test
    void whatNoGapAndNoLinerMakesIsNotExplained() {
        BoxFitting fitting = fit(
                comparison(BandSet.THIRD_OCTAVE, i -> predicted.thirds().get(i).likely() + (i % 2 == 0 ? 12 : -12)));
        assertThat(fitting.explains()).isFalse();
        assertThat(fitting.tellsGap()).isFalse();
        assertThat(fitting.tellsResistivity()).isFalse();
        assertThatThrownBy(() -> fitting.asGap("test")).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void fewBandsSayNothing() {
        boolean[] few = new boolean[24];
        few[10] = true;
        BandLevels loud = new BandLevels(BandSet.THIRD_OCTAVE, new double[24], few);
        PathReadings readings = PathReadings.NONE
                .and(reading(Reading.Round.WITHOUT_BOX, loud.plus(BEFORE)))
                .and(reading(Reading.Round.WITH_BOX, loud.plus(50)));
        Comparison comparison =
                Comparison.of(predicted, readings, AirState.of(project.room()).soundSpeed());
        assertThat(BoxFitting.of(project, predicted, comparison, Progress.NONE)).isEmpty();
    }

    @Test
    void canBeStopped() {
        Comparison comparison =
                comparison(BandSet.THIRD_OCTAVE, i -> predicted.thirds().get(i).likely());
        assertThatThrownBy(() -> BoxFitting.of(project, predicted, comparison, (share, doing) -> {
                    throw new Progress.Cancelled();
                }))
                .isInstanceOf(Progress.Cancelled.class);
    }
}
