package hushmaze.app.entry;

import hushmaze.app.model.Designer;
import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.wording.Unbroken;
import hushmaze.wording.Wording;
import java.util.List;
import java.util.function.BiFunction;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the last assessment says of the box that is looked at. */
final class ResultWords implements Entry {
    private final Designer designer;
    private final BiFunction<Wording, PathResult, List<String>> words;
    private final VBox box = new VBox();

    /**
     * @param id of the node
     * @param words to show
     */
    ResultWords(Designer designer, String id, BiFunction<Wording, PathResult, List<String>> words) {
        this.designer = designer;
        this.words = words;
        box.getStyleClass().add("entry-part");
        box.setId(id);
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
            Label label = new Label(Unbroken.of(sentence));
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
                : words.apply(new Wording(all.project().units()), all.paths().get(path));
    }
}
