package hushmaze.app.entry;

import hushmaze.app.model.EditModel;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * A field to type in. It is taken with Enter or on leaving the field; Escape brings back what was there. A refused text
 * stays, with its message, until it is mended or the value changes from elsewhere.
 */
final class TypedField {
    private final TextField field = new TextField();
    private final EditModel edit;
    private final Supplier<String> shown;
    private final Function<String, Optional<String>> take;
    private final Consumer<Optional<String>> say;
    private boolean wrong;
    private String last = "";

    /**
     * @param edit for undo and redo
     * @param shown what the project has
     * @param take gives the text to the project, and gives back why it was refused
     * @param say shows why it was refused, or that it was not
     */
    TypedField(
            EditModel edit,
            Supplier<String> shown,
            Function<String, Optional<String>> take,
            Consumer<Optional<String>> say) {
        this.edit = edit;
        this.shown = shown;
        this.take = take;
        this.say = say;
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
    }

    TextField field() {
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
        tell(Optional.empty());
    }

    /** Shows what the project has now, unless something is being typed or waits to be mended. */
    void refresh() {
        boolean typing = field.isFocused() && isTouched();
        if (!shown.get().equals(last) || !(wrong || typing)) {
            show();
        }
    }
}
