package hushmaze.app.window;

import hushmaze.app.model.Message;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import hushmaze.wording.Unbroken;
import javafx.beans.property.ObjectProperty;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** One message over the work, until it is put away or followed by another. */
final class MessageStrip extends HBox {
    private static final PseudoClass PROBLEM = PseudoClass.getPseudoClass("problem");

    private final Label kind = new Label();
    private final Label words = new Label();

    MessageStrip(ObjectProperty<Message> message) {
        getStyleClass().add("message-strip");
        setAlignment(Pos.TOP_LEFT);
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.setMaxWidth(Double.MAX_VALUE);
        words.setId("message");
        kind.getStyleClass().add("message-kind");
        kind.setMinWidth(Region.USE_PREF_SIZE);
        HBox.setHgrow(words, Priority.ALWAYS);
        Button away = new Button(Texts.of("message.away"));
        away.setMinWidth(Region.USE_PREF_SIZE);
        away.getStyleClass().add("flat");
        Tip.on(away, Texts.of("message.away.tip"));
        away.setOnAction(e -> message.set(null));
        getChildren().addAll(kind, words, away);
        message.addListener((p, before, after) -> show(after));
        show(message.get());
    }

    private void show(Message message) {
        setVisible(message != null);
        setManaged(message != null);
        if (message != null) {
            kind.setText(Texts.of(message.problem() ? "message.problem" : "message.done"));
            words.setText(Unbroken.of(message.text()));
            pseudoClassStateChanged(PROBLEM, message.problem());
        }
    }
}
