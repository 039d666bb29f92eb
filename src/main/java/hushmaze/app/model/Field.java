package hushmaze.app.model;

import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A place in a project, named by record components: {@code room.volume}, or {@code path.brief.flow} for one of its vent
 * paths. A number names one of a list: {@code room.envelope.elements.2.area}. Reading walks down the records; writing
 * builds new ones on the way back, so that every constructor checks.
 */
public final class Field {
    private static final String PATH = "path.";

    private final String name;
    private final boolean ofPath;
    private final List<Step> way;

    private Field(String name) {
        this.name = name;
        this.ofPath = name.startsWith(PATH);
        this.way = way(ofPath ? VentPath.class : Project.class, ofPath ? name.substring(PATH.length()) : name);
    }

    public static Field of(String name) {
        return new Field(name);
    }

    /** One step down: a component of a record, or one of a list (then the component is that of the list). */
    private record Step(RecordComponent component, int index) {
        static final int NO_LIST = -1;

        boolean isInList() {
            return index != NO_LIST;
        }

        Class<?> type() {
            if (isInList()) {
                ParameterizedType list = (ParameterizedType) component.getGenericType();
                return (Class<?>) list.getActualTypeArguments()[0];
            }
            return component.getType();
        }

        /** What is there; null if the list is too short or its record absent. */
        Object read(Object at) {
            if (at == null) {
                return null;
            }
            if (isInList()) {
                List<?> list = (List<?>) at;
                return index < list.size() ? list.get(index) : null;
            }
            return Field.read(component, at);
        }
    }

    private static List<Step> way(Class<?> start, String names) {
        List<Step> way = new ArrayList<>();
        Class<?> type = start;
        for (String part : names.split("\\.", -1)) {
            Step step;
            if (part.matches("\\d+")) {
                step = new Step(way.get(way.size() - 1).component(), Integer.parseInt(part));
            } else {
                step = new Step(component(type, part, names), Step.NO_LIST);
            }
            way.add(step);
            type = step.type();
        }
        return way;
    }

    private static RecordComponent component(Class<?> type, String part, String names) {
        RecordComponent[] all = type.getRecordComponents();
        return Arrays.stream(all == null ? new RecordComponent[0] : all)
                .filter(c -> c.getName().equals(part))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no such field: " + names));
    }

    /** As it was given. */
    public String name() {
        return name;
    }

    /** Type of the value. */
    public Class<?> type() {
        return way.get(way.size() - 1).type();
    }

    /** Unit in files; plain numbers have none. */
    public Unit unit() {
        Measured measured = last().getAnnotation(Measured.class);
        return measured == null ? Unit.NUMBER : measured.value();
    }

    /** Whether there may be no value. */
    public boolean mayBeAbsent() {
        return last().isAnnotationPresent(MayBeAbsent.class);
    }

    /** Whether a project has the record this is a field of. */
    public boolean isThere(Project project, int path) {
        Object at = start(project, path);
        for (Step step : way.subList(0, way.size() - 1)) {
            at = step.read(at);
        }
        return at != null;
    }

    /** The value; null if it or a record above it is absent. */
    public Object get(Project project, int path) {
        Object at = start(project, path);
        for (Step step : way) {
            at = step.read(at);
        }
        return at;
    }

    /**
     * The project with another value here.
     *
     * @throws InvalidValue if a record does not accept it
     */
    public Project with(Project project, int path, Object value) {
        Record changed = (Record) with(start(project, path), 0, value);
        if (!ofPath) {
            return (Project) changed;
        }
        return project.withPath(path, (VentPath) changed);
    }

    private Object start(Project project, int path) {
        return ofPath ? project.paths().get(path) : project;
    }

    private RecordComponent last() {
        return way.get(way.size() - 1).component();
    }

    /** What stands at a depth, with another value at the end of the way. */
    private Object with(Object at, int depth, Object value) {
        if (depth == way.size()) {
            return value;
        }
        Step step = way.get(depth);
        if (step.isInList()) {
            List<Object> list = new ArrayList<>((List<?>) at);
            list.set(step.index(), with(list.get(step.index()), depth + 1, value));
            return list;
        }
        return with((Record) at, step.component(), depth, value);
    }

    private Record with(Record record, RecordComponent changed, int depth, Object value) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = read(components[i], record);
            if (components[i].getName().equals(changed.getName())) {
                values[i] = with(values[i], depth + 1, value);
            }
        }
        return make(record.getClass(), types, values);
    }

    private static Object read(RecordComponent component, Object record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record that cannot be read: " + component, e);
        }
    }

    private static Record make(Class<? extends Record> type, Class<?>[] types, Object[] values) {
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof InvalidValue refused) {
                throw refused;
            }
            throw new IllegalStateException("a record that cannot be made: " + type, e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record that cannot be made: " + type, e);
        }
    }
}
