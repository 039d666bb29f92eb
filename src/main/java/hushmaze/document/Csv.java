package hushmaze.document;

import hushmaze.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** Lines of comma-separated values: full precision, decimal points, fields quoted where they must be. */
final class Csv {
    private Csv() {}

    static String line(List<String> fields) {
        return fields.stream().map(Csv::quoted).collect(Collectors.joining(",")) + "\n";
    }

    /** A number with all its digits; nothing for an absent one, "inf" and "-inf" for the infinite ones. */
    static String number(Double value) {
        if (value == null) {
            return "";
        }
        if (value.isInfinite()) {
            return value > 0 ? "inf" : "-inf";
        }
        return Double.toString(value);
    }

    /** Metres as millimetres to a billionth of one, which drops only what adding up in binary leaves behind. */
    static String millimetres(double metres) {
        return number(BigDecimal.valueOf(Unit.MILLIMETRE.fromSi(metres))
                .setScale(9, RoundingMode.HALF_UP)
                .doubleValue());
    }

    private static String quoted(String field) {
        boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
    }
}
