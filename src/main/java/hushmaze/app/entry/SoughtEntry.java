package hushmaze.app.entry;

import hushmaze.app.model.EntryPlace;
import javafx.animation.PauseTransition;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.util.Duration;

/** An entry somebody was sent to: brought into sight, focused and marked for a moment. */
final class SoughtEntry {
    private static final PseudoClass SOUGHT = PseudoClass.getPseudoClass("sought");
    private static final Duration MARKED = Duration.seconds(3);
    /** Part of the visible height that stays above the entry. */
    private static final double ABOVE = 0.3;

    private final TitledPane group;
    private final Node entry;

    /** @param group opened, and what the place is folded into too */
    SoughtEntry(TitledPane group, EntryPlace place) {
        this.group = group;
        this.entry = find(group, place);
    }

    /** The control itself; where it is not there, or not while something is switched off, what it is folded into. */
    private static Node find(TitledPane group, EntryPlace place) {
        Node control = group.lookup("#" + place.id());
        if (control != null && isVisible(control, group)) {
            return control;
        }
        Node first = group.lookup("#" + place.id() + "-0");
        if (first != null && isVisible(first, group)) {
            return first;
        }
        Node fold = place.fold() == null ? null : group.lookup("#fold-" + place.fold());
        return fold == null ? group : fold;
    }

    private static boolean isVisible(Node node, Node within) {
        for (Node at = node; at != within && at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }

    void show() {
        if (group.getContent() instanceof ScrollPane scroll) {
            Bounds content = scroll.getContent().getBoundsInLocal();
            Bounds there = scroll.getContent().sceneToLocal(entry.localToScene(entry.getBoundsInLocal()));
            double height = scroll.getViewportBounds().getHeight();
            double hidden = content.getHeight() - height;
            if (hidden > 0) {
                double top = there.getMinY() - ABOVE * height;
                scroll.setVvalue(Math.max(0, Math.min(1, top / hidden)));
            }
        }
        entry.requestFocus();
        entry.pseudoClassStateChanged(SOUGHT, true);
        PauseTransition wait = new PauseTransition(MARKED);
        wait.setOnFinished(e -> entry.pseudoClassStateChanged(SOUGHT, false));
        wait.play();
    }
}
