package hushmaze.app.model;

import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Why an entry was not taken, in the words of the window: field, value, limit and unit. */
final class Refusal {
    /** How a record says that a value is absent that must be given. */
    private static final String NOTHING = "nothing";

    private static final Pattern OF_PATH = Pattern.compile("paths\\[(\\d+)]\\.");

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
        return sentence(refused, last(other).equals(own) ? label : word(other));
    }

    /** Why there is no result, with the name of the path it is about, if it is about one. */
    static String sentence(InvalidValue refused, Project project) {
        String field = refused.field();
        Matcher path = OF_PATH.matcher(field);
        if (!path.lookingAt()) {
            return sentence(refused, word(field));
        }
        int number = Integer.parseInt(path.group(1));
        return sentence(
                refused,
                Texts.of("entry.ofPath", project.paths().get(number).name(), word(field.substring(path.end()))));
    }

    /** With the name a field has in the window. */
    static String sentence(InvalidValue refused, String name) {
        String unit = refused.unit().isEmpty() ? "" : " " + refused.unit();
        return Texts.of("entry.refused", name, refused.given() + unit, refused.limit() + unit);
    }

    /** The window's words for a field, or else its name. */
    private static String word(String field) {
        return Texts.find("field." + field)
                .or(() -> Texts.find("field." + last(field)))
                .orElse(field);
    }

    private static String last(String name) {
        return name.substring(name.lastIndexOf('.') + 1);
    }
}
