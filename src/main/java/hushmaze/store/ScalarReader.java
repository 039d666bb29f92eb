package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitParser;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Reads single values: numbers with their units, whole numbers, texts, names of a choice, dates, yes or no. What cannot
 * be read is noted as a problem and comes back as null.
 */
final class ScalarReader {
    /** Longest text that is tried as a typed number. */
    private static final int TYPED_LENGTH = 40;

    private final Problems problems;

    ScalarReader(Problems problems) {
        this.problems = problems;
    }

    /** What a value of this type must look like, for messages. */
    static String wanted(Class<?> type, Unit unit) {
        if (isNumber(type)) {
            return unit.symbol().isEmpty()
                    ? "a number"
                    : "a number in " + unit.symbol() + " or a text with a unit, such as \"10 " + unit.symbol() + "\"";
        }
        if (isWhole(type)) {
            return "a whole number";
        }
        if (isYesOrNo(type)) {
            return "true or false";
        }
        if (type.isEnum()) {
            return "one of "
                    + Arrays.stream(type.getEnumConstants())
                            .map(constant -> ((Enum<?>) constant).name())
                            .collect(Collectors.joining(", "));
        }
        return type == LocalDate.class ? "a date such as \"2026-11-25\"" : "a text";
    }

    /** A single value of a component's type; numbers in SI. */
    Object read(JsonNode node, Class<?> type, Unit unit, String path) {
        if (isNumber(type)) {
            return number(node, unit, path);
        }
        if (isWhole(type)) {
            return accept(node.canConvertToInt() && node.isIntegralNumber(), node, type, path) ? node.intValue() : null;
        }
        if (isYesOrNo(type)) {
            return accept(node.isBoolean(), node, type, path) ? node.booleanValue() : null;
        }
        if (!accept(node.isTextual(), node, type, path)) {
            return null;
        }
        if (type.isEnum()) {
            return choice(node, type, path);
        }
        return type == LocalDate.class ? date(node, path) : node.textValue();
    }

    /** A number in a file's unit, or a text with a unit of its own, in SI. */
    Double number(JsonNode node, Unit unit, String path) {
        boolean typed = node.isTextual() && !unit.symbol().isEmpty();
        if (!typed && !node.isNumber()) {
            problems.refuse(path, node, wanted(double.class, unit));
            return null;
        }
        if (typed) {
            return typed(node, unit, path);
        }
        double rough = node.doubleValue();
        // What is no double, too large or too small, is refused before its decimal form is touched.
        if (!Double.isFinite(rough) || (rough == 0 && node.decimalValue().signum() != 0)) {
            problems.refuse(path, node, "a finite number" + (unit.symbol().isEmpty() ? "" : " in " + unit.symbol()));
            return null;
        }
        return unit.toSi(node.decimalValue());
    }

    private Double typed(JsonNode node, Unit unit, String path) {
        if (node.textValue().length() > TYPED_LENGTH) {
            problems.refuse(path, node, wanted(double.class, unit));
            return null;
        }
        try {
            double si = UnitParser.parse(path, node.textValue(), unit);
            if (Double.isFinite(si)) {
                return si;
            }
            problems.refuse(path, node, "a finite number");
        } catch (InvalidValue e) {
            problems.refuse(path, e.given(), e.limit(), e.unit());
        }
        return null;
    }

    private Object choice(JsonNode node, Class<?> type, String path) {
        for (Object constant : type.getEnumConstants()) {
            if (((Enum<?>) constant).name().equals(node.textValue())) {
                return constant;
            }
        }
        problems.refuse(path, node, wanted(type, Unit.NUMBER));
        return null;
    }

    private LocalDate date(JsonNode node, String path) {
        try {
            return LocalDate.parse(node.textValue());
        } catch (DateTimeParseException e) {
            problems.refuse(path, node, wanted(LocalDate.class, Unit.NUMBER));
            return null;
        }
    }

    private boolean accept(boolean right, JsonNode node, Class<?> type, String path) {
        if (!right) {
            problems.refuse(path, node, wanted(type, Unit.NUMBER));
        }
        return right;
    }

    private static boolean isNumber(Class<?> type) {
        return type == double.class || type == Double.class;
    }

    private static boolean isYesOrNo(Class<?> type) {
        return type == boolean.class || type == Boolean.class;
    }

    private static boolean isWhole(Class<?> type) {
        return type == int.class || type == Integer.class;
    }
}
