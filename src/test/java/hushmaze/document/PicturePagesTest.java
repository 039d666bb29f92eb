package hushmaze.document;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.Assessment;
import hushmaze.build.CutItem;
import hushmaze.drawing.Drawing;
import hushmaze.drawing.Paper;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.Shape;
import hushmaze.drawing.page.PathDrawing;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.RandomBoxes;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: over seeded random boxes the exploded view has every mark of the cut list once, with how many there are. */
class PicturePagesTest {
    private static List<String> texts(Drawing drawing, String page) {
        return drawing.pages().stream()
                .filter(p -> p.title().startsWith(page))
                .flatMap(p -> p.shapes().stream())
                .filter(Shape.Text.class::isInstance)
                .map(s -> ((Shape.Text) s).text())
                .toList();
    }

    @Test
    void everyMarkIsInTheExplodedView() {
        RandomBoxes boxes = new RandomBoxes(6433);
        for (int i = 0; i < 20; i++) {
            Assessment assessment = SampleAssessment.of(UnitSystem.METRIC, boxes.next());
            Drawing drawing = new PathDrawing(
                            assessment,
                            assessment.paths().get(0),
                            Paper.values()[i % 4],
                            UnitSystem.METRIC,
                            new FontMeasure())
                    .draw();
            List<String> texts = texts(drawing, "Exploded view");
            for (CutItem item : assessment.paths().get(0).cutList().items().toList()) {
                String mark = item.quantity() == 1 ? item.mark() : item.mark() + " (" + item.quantity() + " ×)";
                assertThat(texts).as("box %d", i).containsOnlyOnce(mark);
            }
        }
    }

    @Test
    void everyBoardAndLinerIsPutOnInSomeStep() {
        RandomBoxes boxes = new RandomBoxes(6434);
        for (int i = 0; i < 10; i++) {
            Assessment assessment = SampleAssessment.of(UnitSystem.METRIC, boxes.next());
            Drawing drawing = new PathDrawing(
                            assessment, assessment.paths().get(0), Paper.A4, UnitSystem.METRIC, new FontMeasure())
                    .draw();
            String all = String.join(" ", texts(drawing, "Putting it together")).replace(",", " ") + " ";
            for (CutItem item : assessment.paths().get(0).cutList().items().toList()) {
                assertThat(all).as("box %d", i).contains(" " + item.mark() + " ");
            }
        }
    }
}
