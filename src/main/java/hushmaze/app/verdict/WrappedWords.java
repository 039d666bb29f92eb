package hushmaze.app.verdict;

import hushmaze.wording.Unbroken;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Words on as many lines as they need, none of them cut off and no figure parted from its unit. */
public final class WrappedWords {
    private WrappedWords() {}

    /** @param style class of their looks in the style sheets */
    public static Label of(String text, String style) {
        Label label = new Label(Unbroken.of(text));
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }
}
