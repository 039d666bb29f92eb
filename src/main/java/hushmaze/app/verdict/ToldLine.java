package hushmaze.app.verdict;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A verdict: its mark, what it comes to in a few words with a way to the cause beside them, and the rest below. */
final class ToldLine extends HBox {
    private static final String LEAD_ENDS = ": ";
    private static final Pattern SENTENCE_ENDS = Pattern.compile("\\. (?=\\p{Lu})");

    /**
     * @param sentence "Lead: the rest.", or a plain sentence without a lead
     * @param full whether all of it is shown; otherwise its first sentence where it is good
     * @param links to the cause; none for none
     */
    ToldLine(boolean good, String sentence, boolean full, Node... links) {
        getStyleClass().add("verdict-line");
        int end = sentence.indexOf(LEAD_ENDS);
        VBox words = new VBox();
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        if (end > 0) {
            words.getChildren().add(head(sentence.substring(0, end), links));
            String rest = begun(sentence.substring(end + LEAD_ENDS.length()));
            words.getChildren().add(full || !good ? WrappedWords.of(rest, "sentence") : first(rest));
        } else {
            words.getChildren().add(WrappedWords.of(sentence, "sentence"));
        }
        getChildren().addAll(new Mark(good), words);
    }

    /** The first sentence, with all of them in its hint. */
    private static Label first(String rest) {
        Matcher end = SENTENCE_ENDS.matcher(rest);
        if (!end.find()) {
            return WrappedWords.of(rest, "sentence");
        }
        Label label = WrappedWords.of(rest.substring(0, end.start() + 1), "sentence");
        label.setTooltip(new Tooltip(rest));
        return label;
    }

    private static HBox head(String lead, Node... links) {
        Label name = WrappedWords.of(lead, "verdict-lead");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(name, gap);
        head.getStyleClass().add("verdict-head");
        head.setAlignment(Pos.BASELINE_LEFT);
        head.getChildren().addAll(links);
        return head;
    }

    /** With a capital letter, as a sentence begins. */
    private static String begun(String rest) {
        return Character.toUpperCase(rest.charAt(0)) + rest.substring(1);
    }
}
