package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.BandsText;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.Field;
import hushmaze.app.model.NumbersText;
import hushmaze.app.model.Octaves;
import hushmaze.app.model.PointsText;
import hushmaze.app.model.Texts;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.ComboBox;

/** Makes the entries of fields. */
final class Entries {
    private final EditModel edit;

    Entries(EditModel edit) {
        this.edit = edit;
    }

    /** A number in any unit. */
    Entry typed(String name) {
        return typed(name, name, Size.BESIDE);
    }

    /** A text. */
    Entry text(String name) {
        return typed(name, name, Size.WIDE);
    }

    /** A text that may go over several lines. */
    Entry longText(String name) {
        return typed(name, name, Size.LONG);
    }

    /** A number or text whose words stand under another key than its name. */
    Entry typed(String name, String key, Size size) {
        return typed(name, key, name, size);
    }

    /** A number or text whose id is another one than its name too. */
    Entry typed(String name, String key, String id, Size size) {
        Field field = Field.of(name);
        String label = Texts.of("entry." + key);
        return new TypedEntry(
                edit,
                key,
                id,
                size,
                () -> edit.shown(field),
                () -> isThere(field),
                text -> edit.enter(field, label, text));
    }

    /**
     * A number in any unit that the program may have filled in.
     *
     * @param source field that says where it is from
     */
    Entry typedFrom(String name, String source) {
        Field field = Field.of(name);
        Field from = Field.of(source);
        String label = Texts.of("entry." + name);
        return beside(name, field, text -> edit.enter(field, from, label, text)).from(() -> edit.shown(from));
    }

    /** A number that goes into the project in a way of its own. */
    Entry typed(String name, Function<String, Optional<String>> take) {
        return beside(name, Field.of(name), take);
    }

    private TypedEntry beside(String name, Field field, Function<String, Optional<String>> take) {
        return new TypedEntry(edit, name, name, Size.BESIDE, () -> edit.shown(field), () -> isThere(field), take);
    }

    /** The measured thickness of a board. */
    Entry thickness(String board) {
        return thickness(board, board + ".thickness");
    }

    /** The same, its words under another key than its name. */
    Entry thickness(String board, String key) {
        return figure(board, "thickness", key, Texts.of("source.thickness"));
    }

    /**
     * A figure of a material, of which the source says when it was typed.
     *
     * @param more what the source says then
     */
    Entry figure(String material, String figure, String key, String more) {
        return figure(material + "." + figure, material + ".source", key, Size.BESIDE, more);
    }

    /**
     * A number of which a source says when it was typed.
     *
     * @param source field that says where it is from
     * @param more what the source says then
     */
    Entry figure(String name, String source, String key, Size size, String more) {
        Field field = Field.of(name);
        Field from = Field.of(source);
        String label = Texts.of("entry." + key);
        return new TypedEntry(
                        edit,
                        key,
                        name,
                        size,
                        () -> edit.shown(field),
                        () -> isThere(field),
                        text -> edit.enterSaying(field, from, label, text, more))
                .from(() -> edit.shown(from));
    }

    /**
     * Points of a fan's curve.
     *
     * @param points what they are in the project, and how they are typed
     */
    Entry points(String name, PointsText points) {
        String label = Texts.of("entry." + name);
        Field field = Field.of(name);
        return new TypedEntry(
                edit, name, name, Size.LONG, points::shown, () -> isThere(field), text -> points.enter(label, text));
    }

    /** Values of all bands. */
    Entry bands(String name) {
        BandsText bands = new BandsText(edit, Field.of(name));
        String label = Texts.of("entry." + name);
        return new TypedEntry(edit, name, name, Size.WIDE, bands::shown, () -> true, text -> bands.enter(label, text));
    }

    /** Plain numbers, as many as there are. */
    Entry numbers(String name) {
        Field field = Field.of(name);
        NumbersText numbers = new NumbersText(edit, field);
        String label = Texts.of("entry." + name);
        return new TypedEntry(
                edit,
                name,
                name,
                Size.BESIDE,
                numbers::shown,
                () -> isThere(field),
                text -> numbers.enter(label, text));
    }

    /**
     * Values of the octaves in a grid.
     *
     * @param source field that says where the values are from; null for none
     * @param key of its texts
     * @param id of the grid
     * @param loss whether they are losses
     */
    Entry octaves(String name, String source, String key, String id, boolean loss) {
        Field from = source == null ? null : Field.of(source);
        return new OctaveGrid(edit, new Octaves(edit, Field.of(name), from, loss), key, id);
    }

    /** One of the values of an enumeration. */
    Entry choice(String name) {
        return choice(name, name);
    }

    /** One of the values of an enumeration, its words under another key than its name. */
    Entry choice(String name, String key) {
        return choice(name, key, false);
    }

    /** One of the values of an enumeration with long words. */
    Entry wideChoice(String name) {
        return choice(name, name, true);
    }

    private Entry choice(String name, String key, boolean wide) {
        Field field = Field.of(name);
        String label = Texts.of("entry." + key);
        List<Enum<?>> options = Arrays.stream(field.type().getEnumConstants())
                .<Enum<?>>map(v -> (Enum<?>) v)
                .toList();
        return chosen(name, key, wide, options, Texts::word, value -> edit.set(field, label, value));
    }

    /** One of the values of an enumeration, where leaving it out means one of them. */
    <T extends Enum<T>> Entry choiceOr(String name, T leftOut) {
        return choiceOr(name, leftOut, false);
    }

    /** One of the values of an enumeration with long words, where leaving it out means one of them. */
    <T extends Enum<T>> Entry wideChoiceOr(String name, T leftOut) {
        return choiceOr(name, leftOut, true);
    }

    private <T extends Enum<T>> Entry choiceOr(String name, T leftOut, boolean wide) {
        Field field = Field.of(name);
        String label = Texts.of("entry." + name);
        ComboBox<T> box = new ComboBox<>();
        return new ChoiceEntry<>(
                new EntryRow(name, name, box, wide),
                box,
                Arrays.asList(leftOut.getDeclaringClass().getEnumConstants()),
                Texts::word,
                () -> field.get(edit.project(), edit.path()) == null
                        ? leftOut
                        : leftOut.getDeclaringClass().cast(field.get(edit.project(), edit.path())),
                () -> isThere(field),
                value -> edit.set(field, label, value));
    }

    /** One of the materials or texts that come with the program. */
    <T> Entry chosen(String name, boolean wide, List<T> options, Function<T, String> words) {
        Field field = Field.of(name);
        String label = Texts.of("entry." + name);
        return chosen(name, name, wide, options, words, value -> edit.set(field, label, value));
    }

    /** One of several, taken into the project in a way of its own. */
    @SuppressWarnings("unchecked")
    <T> Entry chosen(
            String name,
            String key,
            boolean wide,
            List<T> options,
            Function<T, String> words,
            Function<T, Optional<String>> take) {
        Field field = Field.of(name);
        ComboBox<T> box = new ComboBox<>();
        return new ChoiceEntry<>(
                new EntryRow(key, name, box, wide),
                box,
                options,
                words,
                () -> (T) field.get(edit.project(), edit.path()),
                () -> isThere(field),
                take);
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
