package hushmaze.app.verdict;

import java.util.function.Supplier;
import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/**
 * Hints that appear beside what they explain when the mouse rests there. Each is made when the mouse first comes, since a hint
 * has a window of its own, which costs more than what it explains.
 */
public final class Tip {
    private Tip() {}

    /** Explains something. */
    public static void on(Node node, String words) {
        node.setAccessibleHelp(words);
        on(node, () -> words);
    }

    /** Explains something in words that may change; asked for whenever the mouse comes. No words for no hint. */
    public static void on(Node node, Supplier<String> words) {
        node.addEventHandler(MouseEvent.MOUSE_ENTERED, new Made(node, words));
    }

    private static final class Made implements EventHandler<MouseEvent> {
        private final Node node;
        private final Supplier<String> words;
        private Tooltip tooltip;

        Made(Node node, Supplier<String> words) {
            this.node = node;
            this.words = words;
        }

        @Override
        public void handle(MouseEvent e) {
            String now = words.get();
            if (tooltip == null && !now.isEmpty()) {
                tooltip = new Tooltip(now);
                Tooltip.install(node, tooltip);
            } else if (tooltip != null && now.isEmpty()) {
                Tooltip.uninstall(node, tooltip);
                tooltip = null;
            } else if (tooltip != null) {
                tooltip.setText(now);
            }
        }
    }
}
