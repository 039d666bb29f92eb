package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * Makes records from JSON, driven by the records' components: the field's name is the component's name with the suffix
 * of its unit, a number is in that unit, a text with a unit is understood too. Everything is required unless the
 * component may be absent, and nothing else is allowed. The record's own check comes last.
 *
 * <p>Every problem is noted with its place in the file; reading goes on, so that several are found at once.
 */
final class RecordReader {
    private final Problems problems;
    private final ScalarReader scalars;
    private final SpectrumJson spectra;

    RecordReader(Problems problems) {
        this.problems = problems;
        this.scalars = new ScalarReader(problems);
        this.spectra = new SpectrumJson(problems, scalars);
    }

    /**
     * The record in an object of a file.
     *
     * @param path of the object in the file; empty for the whole file
     * @return the record, or null with the problems noted
     */
    <T extends Record> T read(JsonNode node, Class<T> type, String path) {
        RecordShape<T> shape = RecordShape.of(type);
        if (!node.isObject()) {
            problems.refuse(path, node, "an object with the fields " + String.join(", ", shape.jsonNames()));
            return null;
        }
        refuseUnknown(problems, node, shape.jsonNames(), path);
        int before = problems.count();
        Object[] values = new Object[shape.fields().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = component(node, shape.fields().get(i), path);
        }
        return problems.count() == before ? create(shape, values, node, path) : null;
    }

    /** Notes every field that is not known, with the known one that is nearest. */
    static void refuseUnknown(Problems problems, JsonNode node, List<String> known, String path) {
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!known.contains(name)) {
                problems.add(
                        join(path, name),
                        "this field is not known here; the nearest known field is " + NearestName.of(name, known));
            }
        }
    }

    private Object component(JsonNode owner, RecordField field, String parent) {
        String path = join(parent, field.jsonName());
        JsonNode node = owner.path(field.jsonName());
        boolean nothing = node.isMissingNode() || node.isNull();
        if (nothing && !field.optional()) {
            problems.add(path, (node.isNull() ? "null" : "missing") + "; it must be " + wanted(field));
        }
        if (nothing) {
            return null;
        }
        return field.list() ? list(node, field, path) : value(node, field.type(), field.unit(), path);
    }

    private List<Object> list(JsonNode node, RecordField field, String path) {
        if (!node.isArray()) {
            problems.refuse(path, node, wanted(field));
            return null;
        }
        List<Object> values = new ArrayList<>();
        for (JsonNode element : node) {
            values.add(value(element, field.type(), field.unit(), path + "[" + values.size() + "]"));
        }
        return values;
    }

    private Object value(JsonNode node, Class<?> type, Unit unit, String path) {
        if (type.isRecord()) {
            return read(node, type.asSubclass(Record.class), path);
        }
        if (type == BandLevels.class) {
            return spectra.readLevels(node, path);
        }
        return type == Spectrum.class ? spectra.read(node, path) : scalars.read(node, type, unit, path);
    }

    private <T extends Record> T create(RecordShape<T> shape, Object[] values, JsonNode node, String path) {
        try {
            return shape.create(values);
        } catch (InvalidValue e) {
            String name = shape.jsonPath(e.field());
            problems.refuse(join(path, name), given(node.path(name), e), e.limit(), e.unit());
        } catch (IllegalArgumentException e) {
            problems.add(path, e.getMessage());
        }
        return null;
    }

    /** The refused value; what was typed with a unit of its own stands before it. */
    private static String given(JsonNode node, InvalidValue refused) {
        boolean typed = node.isTextual() && !refused.unit().isEmpty();
        return typed ? Problems.shown(node) + ", that is " + refused.given() : refused.given();
    }

    private static String wanted(RecordField field) {
        if (field.list()) {
            return "a list"
                    + (field.unit().symbol().isEmpty()
                            ? ""
                            : " of numbers in " + field.unit().symbol());
        }
        if (field.type().isRecord()) {
            RecordShape<?> shape = RecordShape.of(field.type().asSubclass(Record.class));
            return "an object with the fields " + String.join(", ", shape.jsonNames());
        }
        boolean spectrum = field.type() == Spectrum.class || field.type() == BandLevels.class;
        return spectrum ? SpectrumJson.WANTED : ScalarReader.wanted(field.type(), field.unit());
    }

    private static String join(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
