package hushmaze.store;

import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One step on the way from a project to a number in it.
 *
 * @param field of a record
 * @param index in a list or a spectrum; -1 for neither
 * @param element name of the thing at that index; null if it has none
 */
record FieldStep(RecordField field, int index, String element) {
    /** As a message has it: {@code paths[0]}. */
    String text() {
        return index < 0 ? word() : word() + "[" + index + "]";
    }

    /** Every way to type it: by number and by name. */
    List<String> texts() {
        return element == null ? List.of(text()) : List.of(text(), word() + "[" + element + "]");
    }

    Unit unit() {
        return isSpectrum() ? Unit.DECIBEL : field.unit();
    }

    boolean whole() {
        return field.type() == int.class || field.type() == Integer.class;
    }

    /** What stands here with one thing changed: the thing itself, or a list with another thing at the index. */
    Object in(Object old, UnaryOperator<Object> change) {
        if (index < 0) {
            return change.apply(old);
        }
        List<Object> list = new ArrayList<>((List<?>) old);
        list.set(index, change.apply(list.get(index)));
        return list;
    }

    private String word() {
        return isSpectrum() ? field.jsonName() + "." + SpectrumJson.VALUES : field.jsonName();
    }

    private boolean isSpectrum() {
        return field.type() == Spectrum.class;
    }
}
