package hushmaze.app.entry;

import hushmaze.app.model.Undoing;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;

/** Something typed, with its label. */
final class TypedEntry implements Entry {
    /** How much room there is to type in. */
    enum Size {
        /** Beside the label. */
        BESIDE,
        /** One line of the whole width. */
        WIDE,
        /** As many lines as the text needs. */
        LONG
    }

    private final TypedField typed;
    private final EntryRow row;
    private final BooleanSupplier there;

    /**
     * @param edit for undo and redo
     * @param key of its texts
     * @param id of its control
     * @param size of its control
     * @param shown what the project has
     * @param there whether the project has a place for it at all
     * @param take gives the text to the project, and gives back why it was refused
     */
    TypedEntry(
            Undoing edit,
            String key,
            String id,
            Size size,
            Supplier<String> shown,
            BooleanSupplier there,
            Function<String, Optional<String>> take) {
        this.there = there;
        this.typed = new TypedField(size == Size.LONG ? area() : new TextField(), edit, shown, take, this::say);
        this.row = new EntryRow(key, id, typed.field(), size != Size.BESIDE);
        refresh();
    }

    /** The same, saying in its hint where its number is from. */
    TypedEntry from(Supplier<String> source) {
        row.from(source);
        return this;
    }

    private static TextArea area() {
        TextArea area = new TextArea();
        area.setWrapText(true);
        return area;
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
