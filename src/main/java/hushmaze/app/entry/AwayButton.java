package hushmaze.app.entry;

import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;

/** Takes one card out of a list. */
final class AwayButton {
    private AwayButton() {}

    /**
     * @param key of its texts: {@code KEY.away} names it, {@code KEY.away.tip} explains it
     * @param number of the card, from zero
     */
    static Button of(String key, int number, Runnable remove) {
        Button away = new Button("✕");
        away.setId(key + "-" + number + "-away");
        away.setAccessibleText(Texts.of(key + ".away"));
        Tip.on(away, Texts.of(key + ".away.tip"));
        away.setMinWidth(Region.USE_PREF_SIZE);
        away.setOnAction(e -> remove.run());
        return away;
    }
}
