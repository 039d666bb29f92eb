package hushmaze.app.entry;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One of a list in a frame of its own: an entry with the button beside it that takes the card out, and more below. */
final class EntryCard implements Entry {
    private final VBox box = new VBox();
    private final List<Entry> entries = new ArrayList<>();

    EntryCard(Entry first, Button away, List<Entry> more) {
        entries.add(first);
        entries.addAll(more);
        HBox.setHgrow(first.node(), Priority.ALWAYS);
        HBox head = new HBox(first.node(), away);
        head.getStyleClass().add("entry-line");
        head.setAlignment(Pos.BOTTOM_LEFT);
        box.getStyleClass().add("element-card");
        box.getChildren().add(head);
        more.forEach(entry -> box.getChildren().add(entry.node()));
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void refresh() {
        entries.forEach(Entry::refresh);
    }
}
