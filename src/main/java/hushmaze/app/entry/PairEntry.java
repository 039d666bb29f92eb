package hushmaze.app.entry;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Two short entries beside each other, each with its label above it. */
final class PairEntry implements Entry {
    private final HBox box = new HBox();
    private final List<Entry> both;

    PairEntry(Entry first, Entry second) {
        both = List.of(first, second);
        box.getStyleClass().add("entry-line");
        for (Entry entry : both) {
            Region node = (Region) entry.node();
            // both as wide as each other, whatever their labels
            node.setPrefWidth(0);
            HBox.setHgrow(node, Priority.ALWAYS);
            box.getChildren().add(node);
        }
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void refresh() {
        both.forEach(Entry::refresh);
    }
}
