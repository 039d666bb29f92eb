package hushmaze.app.model;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Any number of plain numbers in one entry, with blanks between. */
public final class NumbersText {
    private final EditModel edit;
    private final Field field;

    /** @param field a list of plain numbers */
    public NumbersText(EditModel edit, Field field) {
        this.edit = edit;
        this.field = field;
    }

    /** The numbers; nothing for none. */
    public String shown() {
        return field.get(edit.project(), edit.path()) instanceof List<?> numbers
                ? numbers.stream().map(n -> EntryText.brief((Double) n)).collect(Collectors.joining("  "))
                : "";
    }

    /** Takes what was typed; gives back why not, if so. */
    public Optional<String> enter(String label, String text) {
        try {
            List<Double> numbers = Arrays.stream(text.strip().split("[\\s;]+"))
                    .filter(word -> !word.isEmpty())
                    .map(word -> EntryText.parse(
                            field.name(), word, Unit.NUMBER, edit.project().units()))
                    .toList();
            return edit.set(field, label, numbers);
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, field, label));
        }
    }
}
