package hushmaze.app.entry;

import hushmaze.app.model.BandsText;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.Field;
import hushmaze.app.model.Texts;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** Makes the entries of fields. */
final class Entries {
    private final EditModel edit;

    Entries(EditModel edit) {
        this.edit = edit;
    }

    /** A number in any unit. */
    Entry typed(String name) {
        return typed(name, false);
    }

    /** A text. */
    Entry text(String name) {
        return typed(name, true);
    }

    private Entry typed(String name, boolean wide) {
        Field field = Field.of(name);
        String label = Texts.of("entry." + name);
        return new TypedEntry(
                edit,
                name,
                wide,
                () -> edit.shown(field),
                () -> isThere(field),
                text -> edit.enter(field, label, text));
    }

    /** Values of all bands. */
    Entry bands(String name) {
        BandsText bands = new BandsText(edit, Field.of(name));
        String label = Texts.of("entry." + name);
        return new TypedEntry(edit, name, true, bands::shown, () -> true, text -> bands.enter(label, text));
    }

    /** One of the values of an enumeration. */
    Entry choice(String name) {
        Class<?> type = Field.of(name).type();
        List<Enum<?>> options = Arrays.stream(type.getEnumConstants())
                .<Enum<?>>map(v -> (Enum<?>) v)
                .toList();
        return chosen(name, false, options, Texts::word);
    }

    /** One of the materials or texts that come with the program. */
    @SuppressWarnings("unchecked")
    <T> Entry chosen(String name, boolean wide, List<T> options, Function<T, String> words) {
        Field field = Field.of(name);
        String label = Texts.of("entry." + name);
        return new ChoiceEntry<>(
                name,
                wide,
                options,
                words,
                () -> (T) field.get(edit.project(), edit.path()),
                () -> isThere(field),
                value -> edit.set(field, label, value));
    }

    /** Yes or no. */
    Entry yesNo(String name) {
        Field field = Field.of(name);
        String label = Texts.of("entry." + name);
        return new SwitchEntry(
                name, () -> (Boolean) field.get(edit.project(), edit.path()), value -> edit.set(field, label, value));
    }

    private boolean isThere(Field field) {
        return field.isThere(edit.project(), edit.path());
    }
}
