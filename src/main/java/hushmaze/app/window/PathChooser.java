package hushmaze.app.window;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Mark;
import hushmaze.app.verdict.Tip;
import hushmaze.assess.Assessment;
import hushmaze.project.VentPath;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;

/** Which vent path the entries and drawings are about; each carries the mark of its verdicts. */
final class PathChooser extends FlowPane {
    private final Designer designer;

    PathChooser(Designer designer) {
        this.designer = designer;
        getStyleClass().add("path-chooser");
        setAlignment(Pos.CENTER_LEFT);
        designer.edit().projectProperty().addListener((p, before, after) -> show());
        designer.edit().pathProperty().addListener((p, before, after) -> show());
        designer.results().assessmentProperty().addListener((p, before, after) -> show());
        show();
    }

    private void show() {
        Label label = new Label(Texts.of("paths.label"));
        getChildren().setAll(label);
        List<VentPath> paths = designer.edit().project().paths();
        Assessment known = designer.results().assessmentProperty().get();
        ToggleGroup group = new ToggleGroup();
        for (int i = 0; i < paths.size(); i++) {
            int number = i;
            ToggleButton button = new ToggleButton(paths.get(i).name());
            button.setToggleGroup(group);
            button.setSelected(i == designer.edit().path());
            button.setId("path-" + i);
            Tip.on(button, Texts.word(paths.get(i).purpose()));
            if (known != null && i < known.paths().size()) {
                button.setGraphic(new Mark(known.paths().get(i).ok()));
            }
            button.setOnAction(e -> {
                button.setSelected(true);
                designer.edit().pathProperty().set(number);
            });
            getChildren().add(button);
        }
        getChildren().add(more());
    }

    private Button more() {
        Button more = new Button("+");
        more.setId("path-add");
        more.setAccessibleText(Texts.of("paths.add"));
        Tip.on(more, Texts.of("paths.add.tip"));
        more.setDisable(!designer.paths().mayAdd());
        more.setOnAction(e -> designer.paths().add());
        return more;
    }
}
