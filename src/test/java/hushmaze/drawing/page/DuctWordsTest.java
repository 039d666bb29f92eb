package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.document.FontMeasure;
import hushmaze.drawing.Paper;
import hushmaze.drawing.Shape;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.Target;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.FirstLayout;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Property: what is said of a path on a duct, of a weighted target and of liner in two hands is said of such and of no other.
 * Regression: a loudspeaker was asked to stand a metre from the opening in the duct.
 */
class DuctWordsTest {
    @Test
    void wordsFollowThePath() {
        Project corner = FirstLayout.complete(SampleProjects.read("drama-corner"), Progress.NONE);
        Assessment assessment = Assessor.assess(corner, Methods.ESTIMATE, Progress.NONE);
        for (PathResult result : assessment.paths()) {
            String all = words(assessment, result);
            boolean duct = result.path().brief().opening().beyond() == Opening.Beyond.DUCTWORK;
            assertThat(all.contains("nearest other grille"))
                    .as(result.path().name())
                    .isEqualTo(duct);
            assertThat(all.contains("on the other side of the opening")).isEqualTo(!duct);
            assertThat(all).contains("steps of 0.001 inH2O").doesNotContain("tenths of a pascal");
            boolean below = result.octaves().stream().anyMatch(b -> b.margin() < -0.05);
            boolean weighted = corner.room().target().kind() == Target.Kind.DBA;
            assertThat(all.contains("A margin below zero"))
                    .isEqualTo(below && weighted && result.quiet().ok());
        }
    }

    private static String words(Assessment assessment, PathResult result) {
        return new PathDrawing(assessment, result, Paper.LETTER, UnitSystem.INCH, new FontMeasure())
                .draw().pages().stream()
                        .flatMap(page -> page.shapes().stream())
                        .filter(Shape.Text.class::isInstance)
                        .map(shape -> ((Shape.Text) shape).text().replace('\u00a0', ' '))
                        .collect(Collectors.joining(" "));
    }
}
