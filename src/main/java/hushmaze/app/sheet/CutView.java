package hushmaze.app.sheet;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Texts;
import hushmaze.drawing.page.PlacedPlan;
import hushmaze.drawing.page.ScreenPages;
import java.util.List;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;

/** The dimensioned drawings of the box: plan, cross section, faces with openings; one at a time, so that each is large. */
public final class CutView extends BorderPane {
    private record Kind(String key, Function<ScreenPages, PageSource> drawing) {}

    private final PlanGrips grips;
    private PlacedPlan plan;

    public CutView(Designer designer) {
        grips = new PlanGrips(designer);
        List<Kind> kinds = List.of(
                new Kind("cut.plan", this::plan),
                new Kind("cut.section", pages -> pages::section),
                new Kind("cut.faces", pages -> pages::faces));
        DrawingView view =
                new DrawingView(designer, Texts.of("cut.plan"), kinds.get(0).drawing());
        ToggleGroup group = new ToggleGroup();
        FlowPane bar = new FlowPane();
        bar.getStyleClass().add("view-controls");
        bar.setAlignment(Pos.CENTER_LEFT);
        for (Kind kind : kinds) {
            RadioButton button = new RadioButton(Texts.of(kind.key()));
            button.setId(kind.key().replace('.', '-'));
            button.setToggleGroup(group);
            button.setSelected(bar.getChildren().isEmpty());
            button.setUserData(kind);
            bar.getChildren().add(button);
        }
        group.selectedToggleProperty().addListener((p, before, after) -> {
            Kind kind = (Kind) after.getUserData();
            plan = null;
            view.show(Texts.of(kind.key()), kind.drawing());
        });
        view.canvas()
                .whenPlaced((page, scale, left, top) ->
                        grips.place(page == null ? null : plan, new PlanGrips.OnScreen(scale, left, top)));
        view.getChildren().add(grips);
        setCenter(view);
        setBottom(bar);
    }

    /** The plan; where its places are is kept for the grips. */
    private PageSource plan(ScreenPages pages) {
        return (width, height) -> {
            plan = pages.placedPlan(width, height);
            return plan.page();
        };
    }
}
