package hushmaze.app.entry;

import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A label with its control beside it (or below, for wide ones), and room for a word on what is wrong. */
final class EntryRow {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final String label;
    private final Control control;
    private final Optional<String> tip;
    private Supplier<String> source;
    private final Label wrong = new Label();
    private final VBox box = new VBox();

    /**
     * @param key of the texts: {@code entry.KEY} is the label, {@code entry.KEY.tip} explains it, {@code entry.KEY.prompt}
     *     says what a blank means
     * @param wide whether the control takes the whole width
     */
    EntryRow(String key, Control control, boolean wide) {
        this(key, key, control, wide);
    }

    /** A row of several that share their texts: the control has an id of its own. */
    EntryRow(String key, String id, Control control, boolean wide) {
        this.label = Texts.of("entry." + key);
        this.control = control;
        Label name = new Label(label);
        name.setLabelFor(control);
        name.setWrapText(true);
        name.getStyleClass().add("entry-name");
        control.setId(id.replace('.', '-'));
        control.setAccessibleText(label);
        this.tip = Texts.find("entry." + key + ".tip");
        Tip.on(name, this::hint);
        Tip.on(control, this::hint);
        tip.ifPresent(control::setAccessibleHelp);
        if (control instanceof TextInputControl input) {
            Texts.find("entry." + key + ".prompt").ifPresent(input::setPromptText);
        }
        wrong.setWrapText(true);
        wrong.getStyleClass().add("entry-wrong");
        box.getStyleClass().add("entry-row");
        box.getChildren().addAll(wide ? new VBox(name, control) : beside(name, control), wrong);
        if (wide) {
            control.setMaxWidth(Double.MAX_VALUE);
        }
        say(Optional.empty());
    }

    /** A switch carries its label itself, so that the words can be clicked too. */
    static EntryRow ofSwitch(String key, CheckBox box) {
        EntryRow row = new EntryRow(key, box, true);
        row.box.getChildren().set(0, box);
        box.setText(row.label);
        box.setWrapText(true);
        return row;
    }

    private static Node beside(Label name, Control control) {
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        control.getStyleClass().add("entry-control");
        HBox row = new HBox(name, control);
        row.getStyleClass().add("entry-line");
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** Says in its hint where its number is from, too. */
    void from(Supplier<String> words) {
        source = words;
    }

    private String hint() {
        String words = tip.orElse("");
        return source == null ? words : Texts.of("entry.tip.from", words.isEmpty() ? label : words, source.get());
    }

    String label() {
        return label;
    }

    Node node() {
        return box;
    }

    boolean isWrong() {
        return wrong.isVisible();
    }

    /** Shows what is wrong, or that nothing is. */
    void say(Optional<String> problem) {
        wrong.setText(problem.orElse(""));
        wrong.setVisible(problem.isPresent());
        wrong.setManaged(problem.isPresent());
        control.pseudoClassStateChanged(WRONG, problem.isPresent());
    }
}
