package hushmaze.store;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A record class as an object of a file.
 *
 * @param type the record
 * @param fields in the record's order
 */
record RecordShape<T extends Record>(Class<T> type, List<RecordField> fields) {

    static <T extends Record> RecordShape<T> of(Class<T> type) {
        return new RecordShape<>(
                type, Stream.of(type.getRecordComponents()).map(RecordField::of).toList());
    }

    List<String> jsonNames() {
        return fields.stream().map(RecordField::jsonName).toList();
    }

    /** The field of one component. */
    Optional<RecordField> field(String component) {
        return fields.stream().filter(field -> field.name().equals(component)).findFirst();
    }

    /**
     * The names a file uses for a component, or for one further down: {@code liner.thickness} gives {@code
     * liner.thicknessMm}; a number in brackets after a list's name stays. What is no component stays as it is.
     */
    String jsonPath(String components) {
        int dot = components.indexOf('.');
        String first = dot < 0 ? components : components.substring(0, dot);
        int bracket = first.indexOf('[');
        String name = bracket < 0 ? first : first.substring(0, bracket);
        String index = bracket < 0 ? "" : first.substring(bracket);
        RecordField field = field(name).orElse(null);
        if (field == null) {
            return components;
        }
        if (dot < 0) {
            return field.jsonName() + index;
        }
        String rest = components.substring(dot + 1);
        return field.jsonName() + index + "."
                + (field.type().isRecord()
                        ? of(field.type().asSubclass(Record.class)).jsonPath(rest)
                        : rest);
    }

    /**
     * The record with these values.
     *
     * @throws IllegalArgumentException as the record's own check threw it
     */
    T create(Object[] values) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<T> constructor = type.getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException refused) {
                throw refused;
            }
            throw new IllegalStateException("the check of " + type.getSimpleName() + " failed", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make a " + type.getSimpleName(), e);
        }
    }
}
