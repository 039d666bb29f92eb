package hushmaze.app.entry;

import hushmaze.app.model.EditModel;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * Something typed. It is taken with Enter or on leaving the field; Escape brings back what was there. A refused text
 * stays, with its message, until it is mended or the value changes from elsewhere.
 */
final class TypedEntry implements Entry {
    private final TextField field = new TextField();
    private final EditModel edit;
    private final EntryRow row;
    private final Supplier<String> shown;
    private final BooleanSupplier there;
    private final Function<String, Optional<String>> take;
    private String last = "";

    /**
     * @param edit for undo and redo
     * @param key of its texts
     * @param wide whether it takes the whole width
     * @param shown what the project has
     * @param there whether the project has a place for it at all
     * @param take gives the text to the project, and gives back why it was refused
     */
    TypedEntry(
            EditModel edit,
            String key,
            boolean wide,
            Supplier<String> shown,
            BooleanSupplier there,
            Function<String, Optional<String>> take) {
        this.edit = edit;
        this.row = new EntryRow(key, field, wide);
        this.shown = shown;
        this.there = there;
        this.take = take;
        field.setOnAction(e -> commit());
        field.focusedProperty().addListener((p, before, now) -> {
            if (!now) {
                commit();
            }
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                show();
                e.consume();
            } else if (e.isShortcutDown() && (e.getCode() == KeyCode.Z || e.getCode() == KeyCode.Y)) {
                step(e.getCode() == KeyCode.Z && !e.isShiftDown());
                e.consume();
            }
        });
        refresh();
    }

    @Override
    public Node node() {
        return row.node();
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
            row.say(Optional.empty());
            return;
        }
        Optional<String> problem = take.apply(field.getText());
        row.say(problem);
        if (problem.isEmpty()) {
            show();
        }
    }

    private void show() {
        last = shown.get();
        field.setText(last);
        row.say(Optional.empty());
    }

    @Override
    public void refresh() {
        field.setDisable(!there.getAsBoolean());
        String now = shown.get();
        boolean typing = field.isFocused() && isTouched();
        if (!now.equals(last) || !(row.isWrong() || typing)) {
            show();
        }
    }
}
