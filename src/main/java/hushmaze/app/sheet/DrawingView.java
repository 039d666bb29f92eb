package hushmaze.app.sheet;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Texts;
import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.drawing.page.ScreenPages;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/** A drawing of the path looked at, made to the room there is; a line of text while there is none. */
public final class DrawingView extends StackPane {
    private final Designer designer;
    private Function<ScreenPages, PageSource> drawing;
    private final PageCanvas canvas = new PageCanvas();
    private final Label nothing = new Label(Texts.of("view.nothingYet"));

    /**
     * @param name said to those who cannot see it
     * @param drawing which of the drawings
     */
    public DrawingView(Designer designer, String name, Function<ScreenPages, PageSource> drawing) {
        this.designer = designer;
        this.drawing = drawing;
        canvas.setAccessibleText(name);
        nothing.getStyleClass().add("quiet-words");
        getStyleClass().add("drawing-view");
        getChildren().addAll(canvas, nothing);
        designer.results().assessmentProperty().addListener((p, before, after) -> show());
        designer.edit().pathProperty().addListener((p, before, after) -> show());
        show();
    }

    /** The drawing is painted on it. */
    PageCanvas canvas() {
        return canvas;
    }

    /** Shows another drawing of the same path. */
    void show(String name, Function<ScreenPages, PageSource> other) {
        canvas.setAccessibleText(name);
        drawing = other;
        show();
    }

    private void show() {
        Optional<PathResult> result = designer.results().pathResult();
        nothing.setVisible(result.isEmpty());
        canvas.setVisible(result.isPresent());
        Assessment all = designer.results().assessmentProperty().get();
        canvas.setSource(result.map(
                        r -> drawing.apply(new ScreenPages(all, r, all.project().units(), designer.measure())))
                .orElse(null));
    }
}
