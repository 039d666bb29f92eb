package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.document.FontMeasure;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Page;
import hushmaze.drawing.Paper;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.Shape;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Change;
import hushmaze.size.Sensitivity;
import hushmaze.size.Unable;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Property: the page of changes says every change with its figures, and there are words for whatever may come out. */
class SensitivityPagesTest {
    private static final FontMeasure MEASURE = new FontMeasure();

    private static String text(Assessment assessment, int path, UnitSystem units) {
        PathResult result = assessment.paths().get(path);
        List<Page> pages = new PathDrawing(assessment, result, Paper.A4, units, MEASURE)
                .draw()
                .pages();
        return pages.stream()
                .filter(page -> page.title().startsWith(Labels.of("change.title")))
                .flatMap(page -> page.shapes().stream())
                .filter(Shape.Text.class::isInstance)
                .map(shape -> ((Shape.Text) shape).text())
                .collect(Collectors.joining("\n"));
    }

    @Test
    void everyRowStandsOnThePage() {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.METRIC);
        for (int path = 0; path < 2; path++) {
            String text = text(assessment, path, UnitSystem.METRIC);
            assertThat(text).contains("Passes 5 mm wider", "Liner 10 mm thinner", "slit of 1 mm", "One more pass");
            for (Sensitivity.Row row : Sensitivity.of(assessment, path).rows()) {
                if (row.margin() != null) {
                    assertThat(text.lines())
                            .contains(figure(row.margin()), figure(row.likely()), figure(row.pressureDrop()));
                }
            }
        }
    }

    /** To a tenth, with a sign unless it is nothing. */
    private static String figure(double value) {
        String text = String.format(Locale.ROOT, "%+.1f", value).replace('-', '−');
        return text.endsWith("0.0") && text.length() == 4 ? "0.0" : text;
    }

    @Test
    void inInchesTheStepsAreStillThoseInMillimetres() {
        Assessment assessment = SampleAssessment.twoPaths(UnitSystem.INCH);
        assertThat(text(assessment, 0, UnitSystem.INCH).replace('\n', ' ').replace('\u00a0', ' '))
                .contains("5 mm (about 3/16 in) wider");
    }

    @ParameterizedTest
    @EnumSource(Change.class)
    void everyChangeHasWords(Change change) {
        assertThat(Labels.of("change." + change, "X")).isNotBlank().doesNotContain("{");
        if (change.isError()) {
            assertThat(Labels.of("change.worst." + change, "X")).contains("X").endsWith(".");
        }
    }

    @ParameterizedTest
    @EnumSource(Unable.class)
    void everyReasonHasWords(Unable unable) {
        assertThat(Labels.of("unable." + unable)).startsWith("not ");
    }
}
