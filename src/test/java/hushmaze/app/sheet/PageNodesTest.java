package hushmaze.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.document.FontMeasure;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Page;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Polyline;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Property: what is printed lies where the page has it, in millimetres. */
@ExtendWith(ApplicationExtension.class)
class PageNodesTest {
    @Start
    void start(Stage stage) {
        ScreenFonts.load();
    }

    @Test
    void everyShapeLiesWhereThePageHasIt() {
        Stroke thin = Stroke.THIN;
        List<Shape> shapes = List.of(
                new Shape.Line(10, 20, 110, 20, thin),
                new Shape.Circle(50, 60, 5, thin, Ink.WHITE),
                new Shape.Text(100, 200, "MMMM", 4, Weight.REGULAR, Anchor.END, false, Ink.BLACK),
                new Shape.Text(30, 100, "MMMM", 4, Weight.REGULAR, Anchor.START, true, Ink.BLACK));
        Group nodes = PageNodes.of(Page.of("page", 210, 297, 0.25, shapes));
        assertThat(nodes.getChildren()).hasSize(4);
        Polyline line = (Polyline) nodes.getChildren().get(0);
        assertThat(line.getPoints()).containsExactly(10.0, 20.0, 110.0, 20.0);
        assertThat(line.getStrokeWidth()).isEqualTo(0.25);
        Bounds circle = bounds(nodes, 1);
        assertThat(circle.getWidth()).isEqualTo(10.25, within(0.01));
        assertThat(circle.getCenterY()).isEqualTo(60, within(0.01));
        Bounds text = bounds(nodes, 2);
        assertThat(text.getMaxX()).isEqualTo(100, within(0.5));
        // By the font's own table, as the PDF sets it; the letters themselves are a little narrower.
        assertThat(text.getWidth()).isEqualTo(new FontMeasure().width("MMMM", 4, Weight.REGULAR), within(0.8));
        assertThat(text.getMinY()).isBetween(195.0, 200.0);
        Bounds upwards = bounds(nodes, 3);
        assertThat(upwards.getMaxY()).isEqualTo(100, within(0.5));
        assertThat(upwards.getHeight()).isGreaterThan(upwards.getWidth());
        assertThat(upwards.getMinX()).isBetween(25.0, 30.0);
    }

    private static Bounds bounds(Group nodes, int number) {
        Node node = nodes.getChildren().get(number);
        return node.getBoundsInParent();
    }
}
