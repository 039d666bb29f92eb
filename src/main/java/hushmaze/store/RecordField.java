package hushmaze.store;

import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.List;

/**
 * One component of a record as a field of a file.
 *
 * @param component of the record
 * @param jsonName its name with the unit's suffix
 * @param type of the component, or of the elements if it is a list
 * @param list whether it is a list
 * @param unit in which a file has it; {@link Unit#NUMBER} if it is a plain number, or no number at all
 * @param optional whether it may be left out
 */
record RecordField(
        RecordComponent component, String jsonName, Class<?> type, boolean list, Unit unit, boolean optional) {

    static RecordField of(RecordComponent component) {
        Measured measured = component.getAnnotation(Measured.class);
        Unit unit = measured == null ? Unit.NUMBER : measured.value();
        boolean list = component.getType() == List.class;
        return new RecordField(
                component,
                component.getName() + unit.suffix(),
                list ? elementType(component) : component.getType(),
                list,
                unit,
                component.isAnnotationPresent(MayBeAbsent.class));
    }

    String name() {
        return component.getName();
    }

    /** The component's value in a record. */
    Object of(Record owner) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + name() + " of " + owner.getClass(), e);
        }
    }

    private static Class<?> elementType(RecordComponent component) {
        return (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
    }
}
