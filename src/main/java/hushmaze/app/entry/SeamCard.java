package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One joint across the passes: its kind and its place. */
final class SeamCard implements Entry {
    private final VBox box = new VBox();
    private final List<Entry> entries;

    /** @param remove what the button does that takes it out */
    SeamCard(Entries make, int number, Runnable remove) {
        String name = "path.box.seams." + number + ".";
        Entry kind = make.choice(name + "kind", "seam.kind");
        Entry position = make.typed(name + "position", "seam.position", Size.BESIDE);
        entries = List.of(kind, position);
        HBox.setHgrow(kind.node(), Priority.ALWAYS);
        HBox head = new HBox(kind.node(), AwayButton.of("seam", number, remove));
        head.getStyleClass().add("entry-line");
        head.setAlignment(Pos.CENTER_LEFT);
        box.getStyleClass().add("element-card");
        box.getChildren().addAll(head, position.node());
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
