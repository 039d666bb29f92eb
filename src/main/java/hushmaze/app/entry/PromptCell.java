package hushmaze.app.entry;

import javafx.scene.control.ListCell;

/**
 * What the list to add from shows while it is closed: always the same words, as choosing adds and keeps nothing.
 *
 * @param <T> what is chosen from
 */
final class PromptCell<T> extends ListCell<T> {
    private final String words;

    PromptCell(String words) {
        this.words = words;
        setText(words);
    }

    @Override
    protected void updateItem(T item, boolean empty) {
        super.updateItem(item, empty);
        setText(words);
    }
}
