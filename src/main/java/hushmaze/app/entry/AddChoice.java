package hushmaze.app.entry;

import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Named;
import hushmaze.app.verdict.Tip;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.control.ComboBox;

/** A list to add from: choosing adds and keeps nothing chosen. */
final class AddChoice {
    private AddChoice() {}

    /**
     * @param key of its texts: {@code KEY.add} is its prompt, {@code KEY.add.tip} explains it
     * @param options to choose from
     * @param naming of each in words
     * @param take what is done with the chosen one
     */
    static <T> ComboBox<T> of(String key, List<T> options, Function<T, String> naming, Consumer<T> take) {
        return of(key, () -> options, naming, take);
    }

    /** The same with other options every time it opens. */
    static <T> ComboBox<T> of(String key, Supplier<List<T>> options, Function<T, String> naming, Consumer<T> take) {
        ComboBox<T> more = new ComboBox<>();
        more.setId(key + "-add");
        more.setPromptText(Texts.of(key + ".add"));
        Tip.on(more, Texts.of(key + ".add.tip"));
        more.setMaxWidth(Double.MAX_VALUE);
        more.setConverter(Named.by(naming));
        more.setButtonCell(new PromptCell<>(more.getPromptText()));
        more.getItems().setAll(options.get());
        more.setOnShowing(e -> more.getItems().setAll(options.get()));
        more.setOnAction(e -> {
            T chosen = more.getValue();
            if (chosen != null) {
                more.setValue(null);
                take.accept(chosen);
            }
        });
        return more;
    }
}
