package hushmaze.app.entry;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;

/** Yes or no. */
final class SwitchEntry implements Entry {
    private final CheckBox box = new CheckBox();
    private final EntryRow row;
    private final Supplier<Boolean> shown;

    SwitchEntry(String key, Supplier<Boolean> shown, Function<Boolean, Optional<String>> take) {
        this.row = EntryRow.ofSwitch(key, box);
        this.shown = shown;
        box.setOnAction(e -> {
            Optional<String> problem = take.apply(box.isSelected());
            refresh();
            row.say(problem);
        });
        refresh();
    }

    /** What is said to those who cannot see what it stands below. */
    SwitchEntry said(String words) {
        box.setAccessibleText(words);
        return this;
    }

    @Override
    public Node node() {
        return row.node();
    }

    @Override
    public void refresh() {
        box.setSelected(Boolean.TRUE.equals(shown.get()));
        row.say(Optional.empty());
    }
}
