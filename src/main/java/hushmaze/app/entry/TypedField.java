package hushmaze.app.entry;

import hushmaze.app.model.Undoing;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * A field to type in. It is taken with Enter or on leaving the field; Escape brings back what was there. A refused text
 * stays, with its message, until it is mended or the value changes from elsewhere.
 */
final class TypedField {
    /** Width of a letter in font sizes, a word that does not fit on a line included. */
    private static final double LETTER = 0.53;
    /** What is beside the text in its field, in font sizes. */
    private static final double BESIDE = 1.6;

    private static final int MOST_LINES = 4;

    private final TextInputControl field;
    private final Undoing edit;
    private final Supplier<String> shown;
    private final Function<String, Optional<String>> take;
    private final Consumer<Optional<String>> say;
    private boolean wrong;
    private String last = "";

    /**
     * @param field an empty one; a text area shows as many lines as it needs, but takes no line breaks
     * @param edit for undo and redo
     * @param shown what the project has
     * @param take gives the text to the project, and gives back why it was refused
     * @param say shows why it was refused, or that it was not
     */
    TypedField(
            TextInputControl field,
            Undoing edit,
            Supplier<String> shown,
            Function<String, Optional<String>> take,
            Consumer<Optional<String>> say) {
        this.field = field;
        this.edit = edit;
        this.shown = shown;
        this.take = take;
        this.say = say;
        field.focusedProperty().addListener((p, before, now) -> {
            if (!now) {
                commit();
            }
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        field.widthProperty().addListener((p, before, now) -> stretch());
    }

    private void pressed(KeyEvent e) {
        if (e.getCode() == KeyCode.ENTER) {
            commit();
            e.consume();
        } else if (e.getCode() == KeyCode.ESCAPE) {
            show();
            e.consume();
        } else if (e.isShortcutDown() && (e.getCode() == KeyCode.Z || e.getCode() == KeyCode.Y)) {
            step(e.getCode() == KeyCode.Z && !e.isShiftDown());
            e.consume();
        } else if (e.getCode() == KeyCode.TAB && field instanceof TextArea && !e.isControlDown()) {
            // A text area would take the key as a letter; with Ctrl it goes on to the next field.
            e.consume();
            field.fireEvent(
                    new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, e.isShiftDown(), true, false, false));
        }
    }

    TextInputControl field() {
        return field;
    }

    /** The keys for undo belong to the whole project, once what is being typed was taken back. */
    private void step(boolean back) {
        if (back && isTouched()) {
            show();
        } else if (back) {
            edit.undo();
        } else {
            edit.redo();
        }
    }

    private boolean isTouched() {
        return !field.getText().equals(last);
    }

    private void commit() {
        if (!isTouched()) {
            tell(Optional.empty());
            return;
        }
        Optional<String> problem = take.apply(field.getText());
        tell(problem);
        if (problem.isEmpty()) {
            show();
        }
    }

    private void tell(Optional<String> problem) {
        wrong = problem.isPresent();
        say.accept(problem);
    }

    private void show() {
        last = shown.get();
        field.setText(last);
        stretch();
        tell(Optional.empty());
    }

    /** As many lines as the text needs in the width there is. */
    private void stretch() {
        if (field instanceof TextArea area && area.getWidth() > 0) {
            double size = area.getFont().getSize();
            double letters = (area.getWidth() / size - BESIDE) / LETTER;
            int lines = (int) Math.ceil(last.length() / Math.max(1, letters));
            area.setPrefRowCount(Math.max(1, Math.min(MOST_LINES, lines)));
        }
    }

    /** Shows what the project has now, unless something is being typed or waits to be mended. */
    void refresh() {
        boolean typing = field.isFocused() && isTouched();
        if (!shown.get().equals(last) || !(wrong || typing)) {
            show();
        }
    }
}
