package hushmaze.app.verdict;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Verdicts under a name. Lines are kept from result to result: making them takes longer than the results. */
final class VerdictBlock extends VBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final Label name = WrappedWords.of("", "block-name");
    private final Map<String, ToldLine> kept = new HashMap<>();
    private final List<Node> shown = new ArrayList<>();

    VerdictBlock() {
        getStyleClass().add("verdict-block");
    }

    /** Begins to tell anew. */
    void begin(String title, boolean chosen) {
        name.setText(title);
        pseudoClassStateChanged(CHOSEN, chosen);
        shown.clear();
        shown.add(name);
    }

    /**
     * Tells a verdict.
     *
     * @param key of the line
     * @param links to the cause, made when the line is
     */
    @SafeVarargs
    final void tell(String key, boolean good, String sentence, boolean full, Supplier<? extends Node>... links) {
        ToldLine line = kept.computeIfAbsent(
                key,
                k -> new ToldLine(List.of(links).stream().map(Supplier::get).toList()));
        line.tell(good, sentence, full);
        shown.add(line);
    }

    /** Shows what was told since the beginning. */
    void end() {
        if (!getChildren().equals(shown)) {
            getChildren().setAll(shown);
        }
    }
}
