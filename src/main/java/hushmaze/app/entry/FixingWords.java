package hushmaze.app.entry;

import hushmaze.app.model.Designer;
import hushmaze.assess.Assessment;
import hushmaze.wording.Wording;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the last assessment says of lifting and fixing the box that is looked at. */
final class FixingWords implements Entry {
    private final Designer designer;
    private final VBox box = new VBox();

    FixingWords(Designer designer) {
        this.designer = designer;
        box.getStyleClass().add("entry-part");
        box.setId("fixing-words");
        designer.results().assessmentProperty().addListener((p, before, after) -> refresh());
        refresh();
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void refresh() {
        box.getChildren().clear();
        for (String sentence : sentences()) {
            Label label = new Label(sentence);
            label.setWrapText(true);
            label.getStyleClass().add("quiet-words");
            box.getChildren().add(label);
        }
    }

    private List<String> sentences() {
        Assessment all = designer.results().assessmentProperty().get();
        int path = designer.edit().path();
        return all == null || path >= all.paths().size()
                ? List.of()
                : new Wording(all.project().units()).fixing(all.paths().get(path));
    }
}
