package hushmaze.app.found;

import hushmaze.app.model.Designer;
import hushmaze.app.model.SizingModel.State;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;

/** The best boxes found, or what another value of one number would do to the box there is; a search that begins is shown. */
public final class FoundPane extends BorderPane {
    public FoundPane(Designer designer) {
        List<Node> views = List.of(new FoundView(designer), new WhatIfView(designer));
        List<String> keys = List.of("found.show.boxes", "found.show.whatif");
        StackPane stage = new StackPane();
        stage.getChildren().addAll(views);
        stage.setMinSize(0, 0);
        ToggleGroup group = new ToggleGroup();
        FlowPane choice = new FlowPane();
        choice.getStyleClass().addAll("view-controls", "found-choice");
        choice.setAlignment(Pos.CENTER_LEFT);
        for (int i = 0; i < keys.size(); i++) {
            Node view = views.get(i);
            RadioButton button = new RadioButton(Texts.of(keys.get(i)));
            button.setMnemonicParsing(true);
            button.setId(keys.get(i).replace('.', '-'));
            Tip.on(button, Texts.of(keys.get(i) + ".tip"));
            button.setToggleGroup(group);
            view.visibleProperty().bind(button.selectedProperty());
            button.setSelected(i == 0);
            choice.getChildren().add(button);
        }
        designer.sizing().stateProperty().addListener((p, before, after) -> {
            if (after == State.SEARCHING) {
                group.getToggles().get(0).setSelected(true);
            }
        });
        setCenter(stage);
        setBottom(choice);
    }
}
