package hushmaze.app.entry;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A material in a list: its name, what there is to measure of it, and the button that takes it out. */
final class MaterialCard implements Entry {
    private final VBox box = new VBox();
    private final List<Entry> entries;

    /**
     * @param key begins the ids of its controls, and names the texts of the button
     * @param number in the list, from 0
     * @param remove what the button does that takes it out
     */
    MaterialCard(String key, int number, String name, Runnable remove, List<Entry> entries) {
        this.entries = List.copyOf(entries);
        Label words = new Label(name);
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.setMaxWidth(Double.MAX_VALUE);
        words.setId(key + "-" + number + "-name");
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox head = new HBox(words, AwayButton.of(key, number, remove));
        head.getStyleClass().add("entry-line");
        head.setAlignment(Pos.CENTER_LEFT);
        box.getStyleClass().add("element-card");
        box.getChildren().add(head);
        entries.forEach(entry -> box.getChildren().add(entry.node()));
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
