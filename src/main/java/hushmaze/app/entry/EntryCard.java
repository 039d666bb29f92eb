package hushmaze.app.entry;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One of a list in a frame of its own: what it is, with the button beside it that takes the card out, and more below. */
final class EntryCard implements Entry {
    private final VBox box = new VBox();
    private final List<Entry> entries = new ArrayList<>();

    private EntryCard(Node first, Pos place, Button away, List<Entry> more) {
        entries.addAll(more);
        HBox.setHgrow(first, Priority.ALWAYS);
        HBox head = new HBox(first, away);
        head.getStyleClass().add("entry-line");
        head.setAlignment(place);
        box.getStyleClass().add("element-card");
        box.getChildren().add(head);
        more.forEach(entry -> box.getChildren().add(entry.node()));
    }

    /** Of something that an entry names. */
    static EntryCard of(Entry first, Button away, List<Entry> more) {
        EntryCard card = new EntryCard(first.node(), Pos.BOTTOM_LEFT, away, more);
        card.entries.add(first);
        return card;
    }

    /** Under a title. */
    static EntryCard titled(Label title, Button away, List<Entry> more) {
        title.setWrapText(true);
        title.setMaxWidth(Double.MAX_VALUE);
        return new EntryCard(title, Pos.CENTER_LEFT, away, more);
    }

    /**
     * Of something whose name does not change.
     *
     * @param key begins the ids of its controls, and names the texts of the button
     * @param number in the list, from 0
     * @param remove what the button does that takes it out
     */
    static EntryCard named(String key, int number, String name, Runnable remove, List<Entry> more) {
        Label words = new Label(name);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.setId(key + "-" + number + "-name");
        return titled(words, AwayButton.of(key, number, remove), more);
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
