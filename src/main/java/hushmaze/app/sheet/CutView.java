package hushmaze.app.sheet;

import hushmaze.app.model.Designer;
import hushmaze.app.sheet.DrawingChoice.Kind;
import hushmaze.drawing.page.PlacedPlan;
import hushmaze.drawing.page.ScreenPages;
import java.util.List;
import javafx.scene.layout.StackPane;

/** The dimensioned drawings of the box: plan with its grips, cross section, faces with openings. */
public final class CutView extends StackPane {
    private final PlanGrips grips;
    private PlacedPlan plan;

    public CutView(Designer designer) {
        grips = new PlanGrips(designer);
        DrawingChoice choice = new DrawingChoice(
                designer,
                List.of(
                        new Kind("cut.plan", this::plan),
                        new Kind("cut.section", pages -> pages::section),
                        new Kind("cut.faces", pages -> pages::faces)),
                () -> plan = null);
        choice.view()
                .canvas()
                .whenPlaced((page, scale, left, top) ->
                        grips.place(page == null ? null : plan, new PlanGrips.OnScreen(scale, left, top)));
        choice.view().getChildren().add(grips);
        getChildren().add(choice);
    }

    /** The plan; where its places are is kept for the grips. */
    private PageSource plan(ScreenPages pages) {
        return (width, height) -> {
            plan = pages.placedPlan(width, height);
            return plan.page();
        };
    }
}
