package hushmaze.app.entry;

import hushmaze.app.verdict.Named;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;

/**
 * One of several. What the project has is shown even if it is none of them.
 *
 * @param <T> what is chosen
 */
final class ChoiceEntry<T> implements Entry {
    private final ComboBox<T> box;
    private final EntryRow row;
    private final Supplier<List<T>> options;
    private final Supplier<T> shown;
    private final BooleanSupplier there;
    private boolean refreshing;

    /** With options that never change. */
    ChoiceEntry(
            EntryRow row,
            ComboBox<T> box,
            List<T> options,
            Function<T, String> name,
            Supplier<T> shown,
            BooleanSupplier there,
            Function<T, Optional<String>> take) {
        this(row, box, () -> options, name, shown, there, take);
    }

    /**
     * @param row its label and message
     * @param box the control in that row
     * @param options to choose from, which may change with the project
     * @param name of each in words
     * @param shown what the project has
     * @param there whether the project has a place for it at all
     * @param take gives the choice to the project, and gives back why it was refused
     */
    ChoiceEntry(
            EntryRow row,
            ComboBox<T> box,
            Supplier<List<T>> options,
            Function<T, String> name,
            Supplier<T> shown,
            BooleanSupplier there,
            Function<T, Optional<String>> take) {
        this.row = row;
        this.box = box;
        this.options = options;
        this.shown = shown;
        this.there = there;
        box.setConverter(Named.by(name));
        box.setOnAction(e -> {
            if (!refreshing && box.getValue() != null && !box.getValue().equals(this.shown.get())) {
                Optional<String> problem = take.apply(box.getValue());
                refresh();
                row.say(problem);
            }
        });
        refresh();
    }

    @Override
    public Node node() {
        return row.node();
    }

    @Override
    public void refresh() {
        refreshing = true;
        box.setDisable(!there.getAsBoolean());
        T now = shown.get();
        List<T> all = new ArrayList<>(options.get());
        if (now != null && !all.contains(now)) {
            all.add(0, now);
        }
        if (!all.equals(box.getItems())) {
            box.getItems().setAll(all);
        }
        box.setValue(now);
        row.say(Optional.empty());
        refreshing = false;
    }
}
