package hushmaze.store;

import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** All numbers of a project by their names in its file; also those that it leaves out but may give. */
final class NumberNames {
    private static final int MOST_LISTED = 20;
    private static final int MOST_NEAREST = 5;
    private static final String NAME = "name";
    /** Not an input. */
    private static final String FORMAT_VERSION = "formatVersion";

    private final List<NumberField> all = new ArrayList<>();

    NumberNames(Project project) {
        collect(project, List.of());
        all.removeIf(field -> field.name().equals(FORMAT_VERSION));
    }

    List<NumberField> all() {
        return List.copyOf(all);
    }

    /**
     * The one number a typed name stands for: its full name first, then the end of one name alone, those that the project says
     * before those it leaves out.
     */
    NumberField find(String option, String typed) {
        String name = typed.strip();
        List<Predicate<NumberField>> tries = List.of(
                field -> field.name().equals(name),
                field -> field.isNamed(0, name),
                field -> field.present() && isEnd(field, name),
                field -> isEnd(field, name));
        for (Predicate<NumberField> one : tries) {
            List<NumberField> found = all.stream().filter(one).toList();
            if (found.size() == 1) {
                return found.get(0);
            }
            if (!found.isEmpty()) {
                throw new InvalidValue(option, quoted(name), "one of " + listed(found), "");
            }
        }
        throw new InvalidValue(
                option, quoted(name), "the name of a number of this project; the nearest are " + nearest(name), "");
    }

    private static boolean isEnd(NumberField field, String name) {
        for (int from = 0; from < field.steps(); from++) {
            if (field.isNamed(from, name)) {
                return true;
            }
        }
        return false;
    }

    private void collect(Record owner, List<FieldStep> way) {
        for (RecordField field : RecordShape.of(owner.getClass()).fields()) {
            Object value = field.of(owner);
            if (field.list() && value != null) {
                list(field, (List<?>) value, way);
            } else if (value instanceof Record inner) {
                collect(inner, further(way, new FieldStep(field, -1, null)));
            } else if (value instanceof Spectrum spectrum) {
                for (int i = 0; i < spectrum.size(); i++) {
                    add(further(way, new FieldStep(field, i, null)), true);
                }
            } else if (isNumber(field) && !field.list()) {
                add(further(way, new FieldStep(field, -1, null)), value != null);
            }
        }
    }

    private void list(RecordField field, List<?> elements, List<FieldStep> way) {
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i) instanceof Record element) {
                collect(element, further(way, new FieldStep(field, i, nameOf(element))));
            } else if (isNumber(field)) {
                add(further(way, new FieldStep(field, i, null)), true);
            }
        }
    }

    private void add(List<FieldStep> way, boolean present) {
        all.add(new NumberField(way, present));
    }

    private static String nameOf(Record element) {
        return RecordShape.of(element.getClass())
                .field(NAME)
                .map(field -> (String) field.of(element))
                .orElse(null);
    }

    private static List<FieldStep> further(List<FieldStep> way, FieldStep step) {
        List<FieldStep> longer = new ArrayList<>(way);
        longer.add(step);
        return longer;
    }

    private static boolean isNumber(RecordField field) {
        return List.of(double.class, Double.class, int.class, Integer.class).contains(field.type());
    }

    private String nearest(String typed) {
        return all.stream()
                .sorted(Comparator.comparingInt(field -> distance(field, typed)))
                .limit(MOST_NEAREST)
                .map(NumberField::name)
                .collect(Collectors.joining(", "));
    }

    /** From the typed name to the nearest end of the field's. */
    private static int distance(NumberField field, String typed) {
        int least = Integer.MAX_VALUE;
        for (int from = 0; from < field.steps(); from++) {
            least = Math.min(least, NearestName.distance(lower(typed), lower(field.text(from))));
        }
        return least;
    }

    private static String lower(String text) {
        return text.substring(0, Math.min(text.length(), 100)).toLowerCase(Locale.ROOT);
    }

    private static String listed(List<NumberField> fields) {
        String names = fields.stream().limit(MOST_LISTED).map(NumberField::name).collect(Collectors.joining(", "));
        return fields.size() <= MOST_LISTED ? names : names + " and " + (fields.size() - MOST_LISTED) + " more";
    }

    private static String quoted(String name) {
        return "\"" + (name.length() > 80 ? name.substring(0, 80) + "..." : name) + "\"";
    }
}
