package hushmaze.app.verdict;

import hushmaze.wording.Unbroken;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * A verdict: its mark, what it comes to in a few words with a way to the cause beside them, and the rest below. It is made
 * once and told anew with every result.
 */
final class ToldLine extends HBox {
    private static final String LEAD_ENDS = ": ";
    private static final Pattern SENTENCE_ENDS = Pattern.compile("\\. (?=\\p{Lu})");

    private final Label lead = WrappedWords.of("", "verdict-lead");
    private final Label rest = WrappedWords.of("", "sentence");
    private final HBox head;
    private Mark mark = new Mark(true);
    private boolean isGood = true;
    private String all = "";

    /** @param links to the cause; none for none */
    ToldLine(List<? extends Node> links) {
        getStyleClass().add("verdict-line");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        head = new HBox(lead, gap);
        head.getStyleClass().add("verdict-head");
        head.setAlignment(Pos.BASELINE_LEFT);
        head.getChildren().addAll(links);
        VBox words = new VBox(head, rest);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        Tip.on(rest, () -> rest.getText().equals(Unbroken.of(all)) ? "" : all);
        getChildren().addAll(mark, words);
    }

    /**
     * Tells a verdict.
     *
     * @param sentence "Lead: the rest.", or a plain sentence without a lead
     * @param full whether all of it is shown; otherwise its first sentence where it is good
     */
    void tell(boolean good, String sentence, boolean full) {
        if (good != isGood) {
            isGood = good;
            mark = new Mark(good);
            getChildren().set(0, mark);
        }
        int end = sentence.indexOf(LEAD_ENDS);
        lead.setText(end > 0 ? sentence.substring(0, end) : "");
        Presence.set(head, end > 0);
        all = end > 0 ? begun(sentence.substring(end + LEAD_ENDS.length())) : sentence;
        rest.setText(Unbroken.of(full || !good ? all : first(all)));
    }

    private static String first(String words) {
        Matcher end = SENTENCE_ENDS.matcher(words);
        return end.find() ? words.substring(0, end.start() + 1) : words;
    }

    /** With a capital letter, as a sentence begins. */
    private static String begun(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
