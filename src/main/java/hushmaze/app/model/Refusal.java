package hushmaze.app.model;

import hushmaze.quantity.InvalidValue;
import java.util.Optional;

/** Why an entry was not taken, in the words of the window: field, value, limit and unit. */
final class Refusal {
    /** How a record says that a value is absent that must be given. */
    private static final String NOTHING = "nothing";

    private Refusal() {}

    /**
     * @param refused what a record said
     * @param field that was entered
     * @param label of that field in the window
     */
    static String sentence(InvalidValue refused, Field field, String label) {
        String own = last(field.name());
        String other = refused.field();
        Optional<String> missing = Texts.find("missing." + field.name());
        if (missing.isPresent() && last(other).equals(own) && refused.given().equals(NOTHING)) {
            return missing.get();
        }
        String name = last(other).equals(own)
                ? label
                : Texts.find("field." + other)
                        .or(() -> Texts.find("field." + last(other)))
                        .orElse(other);
        String unit = refused.unit().isEmpty() ? "" : " " + refused.unit();
        return Texts.of("entry.refused", name, refused.given() + unit, refused.limit() + unit);
    }

    private static String last(String name) {
        return name.substring(name.lastIndexOf('.') + 1);
    }
}
