package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/**
 * Makes JSON from records, the other way round from {@link RecordReader}: fields in the record's order, numbers exactly
 * as {@link Unit#decimalFromSi} gives them, absent components left out.
 */
final class RecordWriter {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    /** Whole numbers up to this many digits are written out, without an exponent. */
    private static final int PLAIN_DIGITS = 18;

    private RecordWriter() {}

    static ObjectNode write(Record owner) {
        ObjectNode node = NODES.objectNode();
        for (RecordField field : RecordShape.of(owner.getClass()).fields()) {
            Object value = field.of(owner);
            if (value != null) {
                node.set(field.jsonName(), value(value, field.unit()));
            }
        }
        return node;
    }

    /** A number in SI as a file has it. */
    static JsonNode number(double si, Unit unit) {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("a file holds only finite numbers, not " + si);
        }
        BigDecimal decimal = unit.decimalFromSi(si).stripTrailingZeros();
        boolean plain = decimal.scale() < 0 && decimal.precision() - decimal.scale() <= PLAIN_DIGITS;
        return DecimalNode.valueOf(plain ? decimal.setScale(0) : decimal);
    }

    private static JsonNode value(Object value, Unit unit) {
        if (value instanceof Record owner) {
            return write(owner);
        }
        if (value instanceof Double number) {
            return number(number, unit);
        }
        if (value instanceof Integer whole) {
            return NODES.numberNode(whole);
        }
        if (value instanceof Boolean yes) {
            return NODES.booleanNode(yes);
        }
        if (value instanceof Spectrum spectrum) {
            return SpectrumJson.write(spectrum);
        }
        if (value instanceof BandLevels levels) {
            return SpectrumJson.write(levels);
        }
        if (value instanceof List<?> list) {
            return array(list, unit);
        }
        return NODES.textNode(text(value));
    }

    private static ArrayNode array(List<?> list, Unit unit) {
        ArrayNode array = NODES.arrayNode();
        list.forEach(element -> array.add(value(element, unit)));
        return array;
    }

    private static String text(Object value) {
        if (value instanceof Enum<?> choice) {
            return choice.name();
        }
        if (value instanceof LocalDate || value instanceof String) {
            return value.toString();
        }
        throw new IllegalArgumentException("a file has no form for a " + value.getClass());
    }
}
