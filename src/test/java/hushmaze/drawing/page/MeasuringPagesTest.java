package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.BandResult;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.document.FontMeasure;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.Shape;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.draft.FormTable;
import hushmaze.project.Project;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.FirstLayout;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Validation: corrections for background noise against published values. Property: every band of the project has its row with
 * what was predicted and five boxes to write in; flow, velocity and area on the sheet belong together.
 */
class MeasuringPagesTest {
    private static final TextMeasure MEASURE = new FontMeasure();
    /** Boxes in a row: background, open, box, blocked, open less box. */
    private static final int READINGS = 5;
    /** Boxes of the form for air: nine places without and with the box, and three rows of two. */
    private static final int AIR = 2 * 9 + 3 * 2;

    @Test
    void correctionsAreThePublishedOnes() {
        // Ecma TR/107: 0.46 dB at a difference of 10 dB, 1.26 dB at 6 dB; equal energies differ by 3.01 dB from their
        // sum
        assertThat(MeasuringPages.correction(10)).isCloseTo(0.46, within(0.005));
        assertThat(MeasuringPages.correction(6)).isCloseTo(1.26, within(0.005));
        assertThat(MeasuringPages.correction(10 * Math.log10(2))).isCloseTo(3.01, within(0.005));
    }

    @Test
    void octavesHaveTheirRowsOnOnePage() {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.METRIC);
        for (PathResult result : assessment.paths()) {
            List<Page> sheets = sheets(assessment, result, Paper.A4, UnitSystem.METRIC);
            assertThat(sheets).hasSize(2);
            rows(sheets, result.octaves());
            assertThat(boxes(sheets.get(1))).isEqualTo(READINGS * 8 + AIR);
        }
    }

    @Test
    void thirdsHaveTheirRowsToo() {
        Project cabin = FirstLayout.complete(SampleProjects.read("lesson-cabin"), Progress.NONE);
        Assessment assessment = Assessor.assess(cabin, Methods.ESTIMATE, Progress.NONE);
        PathResult result = assessment.paths().get(0);
        for (Paper paper : Paper.values()) {
            List<Page> sheets = sheets(assessment, result, paper, UnitSystem.METRIC);
            rows(sheets, result.thirds());
            assertThat(sheets.stream().mapToInt(MeasuringPagesTest::boxes).sum())
                    .isEqualTo(READINGS * 24 + AIR);
            for (Page page : sheets) {
                // ISO 5457: 20 mm on the filing side, 10 mm on the others
                assertThat(page.shapes()).allSatisfy(shape -> {
                    assertThat(shape.bounds(MEASURE).x0()).isGreaterThanOrEqualTo(20 - 1e-3);
                    assertThat(shape.bounds(MEASURE).x1()).isLessThanOrEqualTo(page.width() - 10 + 1e-3);
                    assertThat(shape.bounds(MEASURE).y1()).isLessThanOrEqualTo(page.height() - 10 + 1e-3);
                });
            }
        }
    }

    @Test
    void flowIsVelocityTimesArea() {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.METRIC);
        PathResult result = assessment.paths().get(0);
        List<String> words = words(sheets(assessment, result, Paper.A4, UnitSystem.METRIC));
        // The sample asks for 28 L/s; its port in the room is 0.2 m by 0.15 m, its opening 0.2 m by 0.1 m.
        assertThat(words).contains("28 L/s", "0.0300 m²", "0.0200 m²", "0.93 m/s");
        List<String> inches = words(sheets(assessment, result, Paper.LETTER, UnitSystem.INCH));
        // 0.03 m² / 0.3048² m² = 0.3229 ft²; 0.028 m³/s = 59.33 cfm; 59.33 / 0.3229 = 183.7 ft/min
        assertThat(inches).contains("59 cfm", "0.323 ft²", "184 ft/min");
    }

    @Test
    void aRowNeedsACellForEveryColumn() {
        FormTable table = new FormTable(MEASURE, 7, List.of(new FormTable.Column("one", 1)));
        assertThatThrownBy(() -> table.row("a", null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("2 cells for 1 columns");
    }

    private static List<Page> sheets(Assessment assessment, PathResult result, Paper paper, UnitSystem units) {
        return new PathDrawing(assessment, result, paper, units, MEASURE)
                .draw().pages().stream()
                        .filter(page -> page.title().startsWith("Measure before and after"))
                        .toList();
    }

    /** Each band's figures stand in one line with its name. */
    private static void rows(List<Page> sheets, List<BandResult> bands) {
        for (BandResult band : bands) {
            String low = tenths(band.low());
            String high = tenths(band.high());
            assertThat(sheets)
                    .as(band.band().label())
                    .anySatisfy(page -> assertThat(texts(page))
                            .filteredOn(t -> t.text().equals(band.band().label()))
                            .anySatisfy(label -> assertThat(texts(page))
                                    .filteredOn(t -> Math.abs(t.y() - label.y()) < 1e-6 && t.x() > label.x())
                                    .extracting(Shape.Text::text)
                                    .contains(low, high)));
        }
    }

    /** With a true minus sign, and none before zero. */
    private static String tenths(double db) {
        return String.format(Locale.ROOT, "%.1f", db)
                .replaceAll("^-0\\.0$", "0.0")
                .replace('-', '−');
    }

    private static List<String> words(List<Page> sheets) {
        return sheets.stream()
                .flatMap(page -> texts(page).stream())
                .map(Shape.Text::text)
                .toList();
    }

    private static List<Shape.Text> texts(Page page) {
        return page.shapes().stream()
                .flatMap(s -> s instanceof Shape.Text text ? Stream.of(text) : Stream.empty())
                .toList();
    }

    /** White boxes to write in. */
    private static int boxes(Page page) {
        return (int) page.shapes().stream()
                .filter(s -> s instanceof Shape.Path path && path.closed() && path.fill() != null)
                .count();
    }
}
