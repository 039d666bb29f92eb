package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.app.model.WhatIfModel.Course;
import hushmaze.app.model.WhatIfModel.Point;
import hushmaze.app.model.WhatIfModel.State;
import hushmaze.app.model.WhatIfModel.Verdict;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.project.Box;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.ResizedBox;
import hushmaze.size.Sizing;
import hushmaze.size.SweepRange;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Property tests of trying other values of one number: every value is judged as the project with that value is, the present one is
 * among them, edits outdate what there is, stopping keeps it, values that make no box are told with their reason.
 */
class WhatIfModelTest {
    @TempDir
    Path folder;

    private final InterruptedRunner trials = new InterruptedRunner();
    private Designer designer;
    private WhatIfModel model;

    @BeforeEach
    void open() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, trials, Sizing::ofPath, folder.resolve("unnamed.json"));
        designer.files().newFrom("trio-cellar");
        model = designer.whatIf();
    }

    private Project project() {
        return designer.edit().project();
    }

    private void twoPasses() {
        Box two = new ResizedBox(box()).ofPasses(2);
        designer.edit().edit("two", p -> p.withPath(0, p.paths().get(0).withBox(two)));
    }

    private Box box() {
        return project().paths().get(0).box();
    }

    @ParameterizedTest
    @EnumSource(Swept.class)
    void everyNumberIsTriedAroundItsPresentValue(Swept number) {
        twoPasses();
        assertThat(model.numbers()).contains(number);
        model.numberProperty().set(number);
        assertThat(model.stateProperty().get()).isEqualTo(State.NONE);
        model.start();
        assertThat(model.stateProperty().get()).isEqualTo(State.FINISHED);
        Course course = model.courseProperty().get();
        assertThat(course.points().size() + course.refusals().size())
                .isEqualTo(course.range().steps())
                .isBetween(2, 26);
        assertThat(course.points()).extracting(Point::value).isSorted().contains(course.now());

        PathResult asItIs = Assessor.assess(project(), Methods.ESTIMATE, Progress.NONE)
                .paths()
                .get(0);
        Point now = course.points().stream().filter(course::isNow).findFirst().orElseThrow();
        assertThat(now.margin()).isEqualTo(asItIs.quiet().margin());
        assertThat(now.drop()).isEqualTo(asItIs.pathAir().pressureHigh());
        assertThat(now.good()).isEqualTo(asItIs.ok());
        assertThat(model.words()).contains("As it is", "Every verdict good:");
    }

    @Test
    void theValueTypedGivesWhatTheChartSays() {
        model.numberProperty().set(Swept.FLOW);
        model.start();
        Point last = last();
        assertThat(designer.edit().enter(Field.of("path.brief.flow"), "Airflow", last.value() + " L/s"))
                .isEmpty();
        PathResult typed = Assessor.assess(project(), Methods.ESTIMATE, Progress.NONE)
                .paths()
                .get(0);
        assertThat(last.drop()).isEqualTo(typed.pathAir().pressureHigh());
        assertThat(last.margin()).isEqualTo(typed.quiet().margin());
        assertThat(model.outdatedProperty().get()).isTrue();
        designer.edit().undo();
        assertThat(model.outdatedProperty().get()).isFalse();
        designer.edit().setUnits(UnitSystem.INCH);
        assertThat(model.outdatedProperty().get()).isFalse();
        assertThat(model.words()).contains("cfm");
    }

    private Point last() {
        List<Point> points = model.courseProperty().get().points();
        return points.get(points.size() - 1);
    }

    /** Less room and more air cost pressure; louder noise costs as much margin as it is louder where nothing else sounds. */
    @Test
    void theCurvesGoTheWayTheyMust() {
        model.numberProperty().set(Swept.FLOW);
        model.start();
        assertThat(model.courseProperty().get().points())
                .extracting(Point::drop)
                .isSorted();
        model.numberProperty().set(Swept.CLEAR_HEIGHT);
        model.start();
        List<Double> drops =
                model.courseProperty().get().points().stream().map(Point::drop).toList();
        assertThat(drops.subList(1, drops.size())).hasSizeGreaterThan(5).allMatch(drop -> drop < drops.get(0));
        model.numberProperty().set(Swept.NOISE);
        model.start();
        List<Point> noise = model.courseProperty().get().points();
        assertThat(noise).extracting(p -> -p.margin()).isSorted();
        assertThat(noise).allMatch(p -> p.margin() >= 0 || p.failing().contains(Verdict.QUIET));
        assertThat(model.words()).contains("What fails elsewhere: quiet");
        assertThat(noise.get(0).margin() - last().margin()).isBetween(15.0, 60.0);
    }

    @Test
    void stoppingKeepsWhatThereIsAndAnotherNumberHasItsOwn() {
        trials.meanwhile = () -> {
            if (model.courseProperty().get().points().size() == 3) {
                model.cancel();
            }
        };
        model.numberProperty().set(Swept.FLOW);
        model.start();
        assertThat(model.stateProperty().get()).isEqualTo(State.STOPPED);
        assertThat(model.courseProperty().get().points()).hasSize(3);
        assertThat(model.fractionProperty().get()).isBetween(0.05, 0.6);
        assertThat(model.words()).startsWith("Stopped before the end.");
        model.numberProperty().set(Swept.NOISE);
        assertThat(model.stateProperty().get()).isEqualTo(State.NONE);
        assertThat(model.courseProperty().get()).isNull();
        model.numberProperty().set(Swept.FLOW);
        assertThat(model.courseProperty().get().points()).hasSize(3);
        trials.meanwhile = () -> {};
        model.start();
        assertThat(model.stateProperty().get()).isEqualTo(State.FINISHED);
        designer.files().newFrom("lesson-cabin");
        assertThat(model.stateProperty().get()).isEqualTo(State.NONE);
    }

    @Test
    void valuesThatMakeNoBoxAreTold() {
        designer.edit().set(Field.of("path.box.passes"), "Passes", 1);
        assertThat(model.numbers()).doesNotContain(Swept.TURN_GAP);
        twoPasses();
        model.numberProperty().set(Swept.TURN_GAP);
        double most = box().clearLength() - Box.MIN_BAFFLE;
        designer.edit().set(Field.of("path.box.turnGap"), "Gap", most * 0.8);
        model.start();
        Course course = model.courseProperty().get();
        assertThat(course.refusals()).isNotEmpty().allMatch(why -> why.startsWith("Gap at every turn: "));
        assertThat(last().value()).isLessThanOrEqualTo(most * 1000);
        assertThat(model.words()).containsPattern("values? makes? no box");
    }

    @Test
    void withoutABoxThereIsNothingToBegin() {
        HeldRunner held = new HeldRunner();
        Designer open = TestDesigner.of(held, trials, Sizing::ofPath, folder.resolve("open.json"));
        open.edit().edit("open", p -> p.withPath(0, p.paths().get(0).withBox(null)));
        assertThat(open.whatIf().numbers()).isEmpty();
        assertThat(open.whatIf().mayStart()).isFalse();
        open.whatIf().start();
        assertThat(open.whatIf().stateProperty().get()).isEqualTo(State.NONE);
        assertThat(open.whatIf().about()).isEqualTo("There is no box yet.");
    }

    @Test
    void holesThatFillTheirPassGoOnFillingIt() {
        Box old = box();
        Box box = new ResizedBox(filled(old, 0.11)).clear(0.15, 0.2, old.clearLength());
        assertThat(box.openingPort().width()).isEqualTo(0.15);
        assertThat(box.openingPort().height()).isEqualTo(0.2);
        assertThat(box.roomPort().width()).isEqualTo(0.11);
        assertThat(box.roomPort().height()).isEqualTo(0.05);
        Box less = new ResizedBox(filled(old, 0.11)).clear(0.12, 0.04, old.clearLength());
        assertThat(less.openingPort().height()).isEqualTo(0.04);
        assertThat(less.roomPort().height()).isEqualTo(0.04);
        assertThat(less.roomPort().width()).isEqualTo(0.11);
    }

    /** One pass of 130 by 110 mm, its first hole as large as the pass, the other along its side. */
    private static Box filled(Box like, double width) {
        return new Box(
                Box.Form.MAZE,
                1,
                0.13,
                0.11,
                like.clearLength(),
                0,
                like.shell(),
                like.baffleBoard(),
                1,
                like.liner(),
                like.linedFaces(),
                new Port(PortFace.END, 0.13, 0.11, 0),
                new Port(PortFace.SIDE, width, 0.05, 0.02));
    }

    @Test
    void rangesHaveEvenSteps() {
        SweepRange width = Swept.CLEAR_WIDTH.range(137, UnitSystem.METRIC);
        assertThat(width.from()).isBetween(60.0, 77.0);
        assertThat(width.to()).isBetween(250.0, 275.0);
        assertThat(width.value(1) - width.value(0)).isEqualTo(10);
        assertThat(Swept.PASSES.range(1, UnitSystem.METRIC)).isEqualTo(new SweepRange(1, 4, 4));
        assertThat(Swept.PASSES.range(5, UnitSystem.METRIC)).isEqualTo(new SweepRange(2, 6, 5));
        SweepRange inches = Swept.CLEAR_WIDTH.range(101.6, UnitSystem.INCH);
        assertThat(inches.value(1) - inches.value(0)).isCloseTo(6.35, within(1e-9));
        assertThat(inches.from()).isCloseTo(50.8, within(1e-9));
        assertThat(Swept.even(0.21)).isEqualTo(0.5);
        assertThat(Swept.even(1)).isEqualTo(1);
        assertThat(Swept.even(1.1)).isEqualTo(2);
    }
}
