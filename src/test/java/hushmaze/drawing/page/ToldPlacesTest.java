package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.Loss;
import hushmaze.air.PathAir;
import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.BandResult;
import hushmaze.assess.Methods;
import hushmaze.assess.PathFlow.DrivePoint;
import hushmaze.assess.PathResult;
import hushmaze.document.FontMeasure;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.Shape;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Told;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.SampleProjects;
import hushmaze.wording.Amounts;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Property tests of what charts on the screen tell where they are pointed at: every band and flow once, with the figures of the
 * result and a source for each; printed pages have none.
 */
class ToldPlacesTest {
    private static final TextMeasure MEASURE = new FontMeasure();

    private static List<Shape.Hint> hints(Page page) {
        return page.shapes().stream()
                .filter(s -> s instanceof Shape.Hint)
                .map(s -> (Shape.Hint) s)
                .toList();
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyBandTellsItsFigures(UnitSystem units) {
        Assessment assessment = SampleAssessment.twoPaths(units);
        for (PathResult result : assessment.paths()) {
            ScreenPages pages = new ScreenPages(assessment, result, units, MEASURE);
            told(hints(pages.spectra(150, 160)), result.thirds());
            told(hints(pages.octaves(150, 160)), result.octaves());
            List<Shape.Hint> methods = hints(pages.methods(150, 160));
            assertThat(methods).hasSameSizeAs(result.thirds());
            for (int i = 0; i < methods.size(); i++) {
                BandResult band = result.thirds().get(i);
                assertThat(value(methods.get(i).told(), "path alone, handbook")).isEqualTo(db(band.estimate()));
                assertThat(methods.get(i).told().items().stream()
                                .anyMatch(t -> t.name().contains("wave solution")))
                        .isEqualTo(band.wave() != null);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyPlaceOfTheAirTellsItsSpeedAndItsLosses(UnitSystem units) {
        Amounts amounts = new Amounts(units);
        Assessment assessment = SampleAssessment.twoPaths(units);
        for (PathResult result : assessment.paths()) {
            PathAir air = result.pathAir();
            List<Shape.Hint> rows = hints(new ScreenPages(assessment, result, units, MEASURE).airWay(150, 160));
            List<Told.Item> all =
                    rows.stream().flatMap(r -> r.told().items().stream()).toList();
            assertThat(all).hasSize(air.velocities().size() + air.losses().size());
            for (int i = 1; i < rows.size(); i++) {
                // one below the other, without a gap
                assertThat(rows.get(i).area().y0())
                        .isCloseTo(rows.get(i - 1).area().y1(), within(1e-6));
            }
            assertThat(all.stream().filter(t -> t.name().equals("mean speed")).map(Told.Item::value))
                    .containsExactlyElementsOf(air.velocities().stream()
                            .map(v -> amounts.velocity(v.velocity()))
                            .toList());
            assertThat(all.stream().filter(t -> !t.name().equals("mean speed")).map(Told.Item::source))
                    .containsExactlyElementsOf(
                            air.losses().stream().map(Loss::source).toList());
        }
    }

    private static void told(List<Shape.Hint> hints, List<BandResult> bands) {
        assertThat(hints).hasSize(2 * bands.size());
        for (int i = 0; i < bands.size(); i++) {
            BandResult band = bands.get(i);
            Shape.Hint level = hints.get(i);
            Shape.Hint loss = hints.get(bands.size() + i);
            assertThat(level.told().head()).isEqualTo(band.band().label() + " Hz");
            assertThat(value(level.told(), "bare opening")).isEqualTo(db(band.noise()));
            assertThat(value(level.told(), "allowed for this path")).isEqualTo(db(band.allowed()));
            assertThat(value(loss.told(), "box, likely")).isEqualTo(db(band.likely()));
            assertThat(value(loss.told(), "walls and joints alone")).isEqualTo(db(band.walls()));
            assertThat(level.area().x0()).isEqualTo(loss.area().x0());
            assertThat(level.area().y1()).isLessThan(loss.area().y0());
            if (i > 0) {
                // side by side, without a gap
                assertThat(level.area().x0()).isCloseTo(hints.get(i - 1).area().x1(), within(1e-6));
            }
        }
        assertThat(hints)
                .flatExtracting(h -> h.told().items())
                .allSatisfy(item -> assertThat(item.source()).isNotBlank().doesNotContain("''"));
    }

    private static String value(Told told, String name) {
        return told.items().stream()
                .filter(item -> item.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static String db(double value) {
        return String.format(Locale.ROOT, "%.1f dB", value).replace('-', '−').replace("−0.0", "0.0");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void flowsTellTheirPressures(UnitSystem units) {
        Assessment assessment = Assessor.assess(SampleProjects.read("lesson-cabin"), Methods.ESTIMATE, Progress.NONE)
                .in(units);
        for (PathResult result : assessment.paths()) {
            List<Shape.Hint> hints = hints(new ScreenPages(assessment, result, units, MEASURE).air(150, 160));
            List<DrivePoint> curve = result.carried().curve();
            assertThat(hints.size()).isGreaterThan(curve.size() / 2);
            Told told = hints.get(curve.size() / 2).told();
            DrivePoint point = curve.get(curve.size() / 2);
            boolean inch = units == UnitSystem.INCH;
            // 1 inH2O is 249.089 Pa (NIST SP 811, conventional); 1 cfm is 0.028316847 m³ in 60 s
            String pressure = inch
                    ? String.format(Locale.ROOT, "%.3f inH2O", point.likely() / 249.089)
                    : String.format(Locale.ROOT, "%.1f Pa", point.likely()).replace(".0 ", " ");
            assertThat(told.items()).extracting(Told.Item::value).contains(pressure);
            assertThat(told.head()).endsWith(inch ? "cfm" : "L/s");
            assertThat(told.text()).startsWith(told.head() + "\n").contains(pressure + " (");
        }
    }

    /** However little room there is, lines have more of it than the legend. */
    @Test
    void chartsInALowWindowAreNotAllLegend() {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.METRIC);
        ScreenPages pages = new ScreenPages(assessment, assessment.paths().get(0), UnitSystem.METRIC, MEASURE);
        for (Page page : List.of(pages.spectra(78, 86), pages.octaves(78, 86))) {
            assertThat(page.width() / page.height()).isCloseTo(78.0 / 86, within(1e-9));
            assertThat(hints(page))
                    .allSatisfy(hint -> assertThat(hint.area().height()).isGreaterThan(0.15 * page.height()));
        }
    }

    @Test
    void printedPagesHaveNone() {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.METRIC);
        PathResult result = assessment.paths().get(0);
        Drawing drawing = new PathDrawing(assessment, result, Paper.A4, UnitSystem.METRIC, MEASURE).draw();
        List<Shape.Hint> all = new ArrayList<>();
        drawing.pages().forEach(page -> all.addAll(hints(page)));
        assertThat(all).isEmpty();
    }
}
