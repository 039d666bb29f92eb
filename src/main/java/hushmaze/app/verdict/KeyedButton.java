package hushmaze.app.verdict;

import hushmaze.app.model.Texts;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;

/** Buttons whose words, hint and id come from one key of the texts. */
public final class KeyedButton {
    private KeyedButton() {}

    /** @param key of its words; {@code key.tip} is its hint, if there is one, and the id has dashes for dots */
    public static Button of(String key, Runnable action) {
        Button button = new Button(Texts.of(key));
        button.setId(key.replace('.', '-'));
        button.setMinWidth(Region.USE_PREF_SIZE);
        Texts.find(key + ".tip").ifPresent(tip -> Tip.on(button, tip));
        button.setOnAction(e -> action.run());
        return button;
    }
}
