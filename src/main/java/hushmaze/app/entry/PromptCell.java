package hushmaze.app.entry;

import hushmaze.project.EnvelopeElement;
import javafx.scene.control.ListCell;

/** What the list to add from shows while it is closed: always the same words, as choosing adds and keeps nothing. */
final class PromptCell extends ListCell<EnvelopeElement> {
    private final String words;

    PromptCell(String words) {
        this.words = words;
        setText(words);
    }

    @Override
    protected void updateItem(EnvelopeElement item, boolean empty) {
        super.updateItem(item, empty);
        setText(words);
    }
}
