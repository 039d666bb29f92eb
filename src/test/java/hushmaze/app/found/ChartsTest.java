package hushmaze.app.found;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.PreparedFinds;
import hushmaze.app.model.SizingModel;
import hushmaze.app.model.Swept;
import hushmaze.app.model.TestDesigner;
import hushmaze.app.model.WhatIfModel.Course;
import hushmaze.app.sheet.PageSource;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Page;
import hushmaze.drawing.Shape;
import hushmaze.drawing.TextMeasure;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Design;
import hushmaze.size.Kind;
import hushmaze.size.PathDesigns;
import hushmaze.size.Sizing;
import hushmaze.size.Tally;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Property tests of the charts of the best boxes at the sizes they are shown in: all is on the page, no words lie over others. */
class ChartsTest {
    /** Widths and heights of the chart in windows of 1280 and 1920, mm. */
    private static final double[][] SIZES = {{129, 44}, {150, 44}, {280, 44}};

    private static final double SLACK = 0.05;

    @TempDir
    Path folder;

    private void check(Page page, TextMeasure measure) {
        List<Shape> shapes = page.shapes();
        List<Bounds> words = new ArrayList<>();
        for (Shape shape : shapes) {
            Bounds b = shape.bounds(measure);
            assertThat(new Bounds(0, 0, page.width(), page.height())
                            .grown(SLACK)
                            .contains(b))
                    .as(shape + " on " + page.width() + " x " + page.height())
                    .isTrue();
            if (shape instanceof Shape.Text) {
                Bounds core = b.grown(-0.3);
                assertThat(words).as(shape.toString()).noneMatch(core::overlaps);
                words.add(core);
            }
        }
    }

    static Stream<Arguments> cases() {
        List<Arguments> all = new ArrayList<>();
        for (Cost cost : Cost.values()) {
            for (double level : new double[] {20, 62}) {
                all.add(Arguments.of(cost, level, List.of(List.of(Kind.values()))));
                all.add(Arguments.of(cost, level, each(List.of(Kind.values()))));
                List<List<Kind>> two = List.of(
                        List.of(Kind.RECOMMENDED),
                        List.of(Kind.QUIETEST, Kind.SHALLOWEST, Kind.CHEAPEST, Kind.LEAST_RESISTANCE, Kind.LIGHTEST));
                all.add(Arguments.of(cost, level, two));
            }
        }
        return all.stream();
    }

    private static List<List<Kind>> each(List<Kind> kinds) {
        return kinds.stream().map(List::of).toList();
    }

    /** One design, six that lie all but in one place, and two of which one is the best at five things; quiet enough or all too loud. */
    @ParameterizedTest
    @MethodSource("cases")
    void theTradeOffIsLegible(Cost cost, double level, List<List<Kind>> kinds) {
        List<Design> prepared = new PreparedFinds(level).designs();
        List<Design> designs = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            Design like = prepared.get(i % 2);
            designs.add(new Design(kinds.get(i), like.box(), like.result(), 2.98 + 0.01 * i));
        }
        SizingModel.Finder finder = (project, path, keep, progress, watch) -> new PathDesigns(
                path, designs, new Tally(5, 4, 0, 0, 3, 2, 2, 2), null, false, PathDesigns.Shortfall.NONE, List.of());
        Designer designer = TestDesigner.of(
                TaskRunner.ON_THIS_THREAD, TaskRunner.ON_THIS_THREAD, finder, folder.resolve("unnamed.json"));
        designer.sizing().start();
        assertThat(designer.sizing().designsProperty().get()).hasSize(kinds.size());
        for (double[] size : SIZES) {
            PageSource chart = new TradeOff(designer.sizing(), cost, designer.measure());
            Page page = chart.page(size[0], size[1]);
            check(page, designer.measure());
            assertThat(words(page)).contains("target", "too loud");
            assertThat(words(page).stream().filter(w -> w.contains(", "))).hasSizeGreaterThanOrEqualTo(kinds.size());
        }
    }

    private static List<String> words(Page page) {
        return page.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(shape -> ((Shape.Text) shape).text())
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Swept.class)
    void theCurvesOfOneNumberStayOnThePage(Swept number) {
        Designer designer = TestDesigner.of(
                TaskRunner.ON_THIS_THREAD, TaskRunner.ON_THIS_THREAD, Sizing::ofPath, folder.resolve("unnamed.json"));
        designer.files().newFrom(number == Swept.TURN_GAP ? "drama-corner" : "trio-cellar");
        designer.whatIf().numberProperty().set(number);
        designer.whatIf().start();
        Course course = designer.whatIf().courseProperty().get();
        assertThat(course.points()).isNotEmpty();
        for (UnitSystem units : UnitSystem.values()) {
            for (double[] size : new double[][] {{132, 80}, {132, 115}, {280, 200}}) {
                Page page = new WhatIfChart(course, units, designer.measure()).page(size[0], size[1]);
                check(page, designer.measure());
                assertThat(words(page)).contains("as it is", "target", "most it may be");
            }
        }
    }

    @Test
    void onePointAloneIsDrawnToo() {
        Designer designer = TestDesigner.of(
                TaskRunner.ON_THIS_THREAD, TaskRunner.ON_THIS_THREAD, Sizing::ofPath, folder.resolve("unnamed.json"));
        designer.files().newFrom("trio-cellar");
        designer.whatIf().numberProperty().set(Swept.FLOW);
        designer.whatIf().start();
        Course all = designer.whatIf().courseProperty().get();
        Course one = new Course(
                all.number(),
                all.path(),
                all.asked(),
                all.now(),
                all.range(),
                all.points().subList(0, 1),
                List.of());
        check(new WhatIfChart(one, UnitSystem.METRIC, designer.measure()).page(132, 100), designer.measure());
    }
}
