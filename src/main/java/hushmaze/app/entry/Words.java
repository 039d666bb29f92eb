package hushmaze.app.entry;

import hushmaze.app.model.Texts;
import hushmaze.wording.Unbroken;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** Words between the entries. */
final class Words implements Entry {
    private final Label label = new Label();
    private final Supplier<String> text;

    private Words(Supplier<String> text, String style) {
        this.text = text;
        label.setWrapText(true);
        label.getStyleClass().add(style);
        refresh();
    }

    /** A heading of a few entries. */
    static Entry heading(String key) {
        return new Words(() -> Texts.of(key), "small-heading");
    }

    /** A word of explanation. */
    static Entry quiet(String key) {
        return quiet(() -> Texts.of(key));
    }

    /** A word of explanation that depends on the project. */
    static Entry quiet(Supplier<String> text) {
        return new Words(text, "quiet-words");
    }

    @Override
    public Node node() {
        return label;
    }

    @Override
    public void refresh() {
        label.setText(Unbroken.of(text.get()));
    }
}
