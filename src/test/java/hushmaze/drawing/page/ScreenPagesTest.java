package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.document.FontMeasure;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Page;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.Shape;
import hushmaze.drawing.TextMeasure;
import hushmaze.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Property tests: whatever the room on the screen, each drawing lies within its page, and pages keep their shape. */
class ScreenPagesTest {
    private static final TextMeasure MEASURE = new FontMeasure();

    @ParameterizedTest
    @CsvSource({"130, 150", "60, 60", "300, 200", "90, 240", "420, 110"})
    void everythingIsOnThePage(double width, double height) {
        for (UnitSystem units : UnitSystem.values()) {
            Assessment assessment = SampleAssessment.twoPaths(units);
            for (PathResult result : assessment.paths()) {
                ScreenPages pages = new ScreenPages(assessment, result, units, MEASURE);
                for (Page page : List.of(
                        pages.plan(width, height),
                        pages.section(width, height),
                        pages.faces(width, height),
                        pages.airWay(width, height))) {
                    assertThat(page.width() / page.height()).isCloseTo(width / height, within(1e-9));
                    Bounds sheet = new Bounds(0, 0, page.width(), page.height());
                    assertThat(page.shapes()).isNotEmpty();
                    assertThat(page.shapes())
                            .allSatisfy(s -> assertThat(sheet.contains(s.bounds(MEASURE)))
                                    .isTrue());
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"130, 150", "300, 200"})
    void theChartsFillTheirPage(double width, double height) {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.METRIC);
        ScreenPages pages = new ScreenPages(assessment, assessment.paths().get(0), UnitSystem.METRIC, MEASURE);
        for (Page page :
                List.of(pages.spectra(width, height), pages.octaves(width, height), pages.methods(width, height))) {
            Bounds all = page.shapes().stream()
                    .map(s -> s.bounds(MEASURE))
                    .reduce(Bounds::union)
                    .orElseThrow();
            assertThat(new Bounds(0, 0, width, height).contains(all)).isTrue();
            assertThat(all.height()).isGreaterThan(0.85 * height);
            assertThat(all.width()).isGreaterThan(0.85 * width);
        }
    }

    /** Places on the page and places on the box are the same, there and back; the box's walls are drawn where they are said to be. */
    @ParameterizedTest
    @CsvSource({"130, 150", "60, 60", "300, 200", "420, 110"})
    void placesOnThePlanAreThoseOfTheBox(double width, double height) {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.METRIC);
        for (PathResult result : assessment.paths()) {
            PlacedPlan plan = new ScreenPages(assessment, result, UnitSystem.METRIC, MEASURE).placedPlan(width, height);
            var outer = result.solid().outer();
            assertThat(plan.alongAt(plan.x(0.37))).isCloseTo(0.37, within(1e-12));
            assertThat(plan.acrossAt(plan.y(0.21))).isCloseTo(0.21, within(1e-12));
            for (double[] corner : new double[][] {{outer.x0(), outer.y0()}, {outer.x1(), outer.y1()}}) {
                double x = plan.x(corner[0]);
                double y = plan.y(corner[1]);
                assertThat(plan.page().shapes())
                        .filteredOn(s -> s instanceof Shape.Path)
                        .flatExtracting(s -> ((Shape.Path) s).points())
                        .anyMatch(p -> Math.abs(p.x() - x) < 1e-6 && Math.abs(p.y() - y) < 1e-6);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"130, 150", "60, 60", "300, 200", "90, 240"})
    void theBoxPulledApartIsOnThePage(double width, double height) {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.METRIC);
        for (PathResult result : assessment.paths()) {
            Page page = new ScreenPages(assessment, result, UnitSystem.METRIC, MEASURE).exploded(width, height);
            assertThat(page.width() / page.height()).isCloseTo(width / height, within(1e-9));
            Bounds sheet = new Bounds(0, 0, page.width(), page.height());
            Bounds all = page.shapes().stream()
                    .map(s -> s.bounds(MEASURE))
                    .reduce(Bounds::union)
                    .orElseThrow();
            assertThat(sheet.contains(all)).isTrue();
            assertThat(Math.max(all.width() / sheet.width(), all.height() / sheet.height()))
                    .isGreaterThan(0.75);
        }
    }
}
