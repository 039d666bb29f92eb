package hushmaze.app.verdict;

import hushmaze.app.model.Texts;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/** Good or not good, told apart by shape first: a tick, or a cross in a box. */
public final class Mark extends Region {
    public Mark(boolean good) {
        getStyleClass().addAll("mark", good ? "good" : "bad");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(Texts.of(good ? "mark.good" : "mark.bad"));
    }
}
