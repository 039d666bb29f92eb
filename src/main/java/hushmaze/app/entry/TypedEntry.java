package hushmaze.app.entry;

import hushmaze.app.model.EditModel;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;

/** Something typed, with its label. */
final class TypedEntry implements Entry {
    private final TypedField typed;
    private final EntryRow row;
    private final BooleanSupplier there;

    /**
     * @param edit for undo and redo
     * @param key of its texts
     * @param id of its control
     * @param wide whether it takes the whole width
     * @param shown what the project has
     * @param there whether the project has a place for it at all
     * @param take gives the text to the project, and gives back why it was refused
     */
    TypedEntry(
            EditModel edit,
            String key,
            String id,
            boolean wide,
            Supplier<String> shown,
            BooleanSupplier there,
            Function<String, Optional<String>> take) {
        this.there = there;
        this.typed = new TypedField(edit, shown, take, this::say);
        this.row = new EntryRow(key, id, typed.field(), wide);
        refresh();
    }

    private void say(Optional<String> problem) {
        row.say(problem);
    }

    @Override
    public Node node() {
        return row.node();
    }

    @Override
    public void refresh() {
        typed.field().setDisable(!there.getAsBoolean());
        typed.refresh();
    }
}
