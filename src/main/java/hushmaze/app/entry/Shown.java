package hushmaze.app.entry;

import java.util.List;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Entries that are there only while they mean something. */
final class Shown implements Entry {
    private final VBox box = new VBox();
    private final BooleanSupplier when;
    private final List<Entry> entries;

    Shown(BooleanSupplier when, List<Entry> entries) {
        this.when = when;
        this.entries = List.copyOf(entries);
        box.getStyleClass().add("entry-part");
        entries.forEach(e -> box.getChildren().add(e.node()));
        refresh();
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void refresh() {
        boolean now = when.getAsBoolean();
        box.setVisible(now);
        box.setManaged(now);
        if (now) {
            entries.forEach(Entry::refresh);
        }
    }
}
