package hushmaze.app.entry;

import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.Button;

/** A button among the entries, as wide as they are; dead while there is nothing to do. */
final class PressEntry implements Entry {
    private final BooleanSupplier may;
    private final Button button;

    /**
     * @param id of the button
     * @param key of its text; its hint is {@code key.tip}
     * @param what it does
     * @param may whether there is something to do
     */
    PressEntry(String id, String key, Runnable what, BooleanSupplier may) {
        this.may = may;
        button = new Button(Texts.of(key));
        button.setId(id);
        Tip.on(button, Texts.of(key + ".tip"));
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(e -> what.run());
        refresh();
    }

    @Override
    public Node node() {
        return button;
    }

    @Override
    public void refresh() {
        button.setDisable(!may.getAsBoolean());
    }
}
