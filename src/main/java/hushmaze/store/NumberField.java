package hushmaze.store;

import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitParser;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * One number of a project, by the name its file has for it: {@code room.volumeM3}, {@code paths[0].brief.flowLps}, {@code
 * room.ownNoise.valuesDb[2]}. It can be given another value, which goes through the same checks as when a file is read.
 */
public final class NumberField {
    private final List<FieldStep> way;
    private final boolean present;

    NumberField(List<FieldStep> way, boolean present) {
        this.way = List.copyOf(way);
        this.present = present;
    }

    /**
     * The number a typed name stands for.
     *
     * @param option the name of what was typed, for the message
     * @param typed its full name, with paths and other named things by number or by name, or as much of its end as no other
     *     number has
     * @throws InvalidValue if there is none of that name, or more than one; it lists those it may be
     */
    public static NumberField find(Project project, String option, String typed) {
        return new NumberNames(project).find(option, typed);
    }

    /** Its full name, things in lists by their number. */
    public String name() {
        return text(0);
    }

    /** The last word of its name, with its unit: {@code clearWidthMm}. */
    public String shortName() {
        return last().text();
    }

    /** The unit a file has it in. */
    public Unit unit() {
        return last().unit();
    }

    /** Whether it takes whole numbers only. */
    public boolean whole() {
        return last().whole();
    }

    /** Whether the project says it; a number that may be left out can be given all the same. */
    boolean present() {
        return present;
    }

    /** Its name from a step on. */
    String text(int from) {
        StringBuilder text = new StringBuilder();
        for (FieldStep step : way.subList(from, way.size())) {
            text.append(text.isEmpty() ? "" : ".").append(step.text());
        }
        return text.toString();
    }

    /** Whether a typed name is this one from a step on. */
    boolean isNamed(int from, String typed) {
        if (from == way.size()) {
            return typed.isEmpty();
        }
        for (String text : way.get(from).texts()) {
            boolean lastStep = from == way.size() - 1;
            if (lastStep ? typed.equals(text) : typed.startsWith(text + ".")) {
                if (lastStep || isNamed(from + 1, typed.substring(text.length() + 1))) {
                    return true;
                }
            }
        }
        return false;
    }

    int steps() {
        return way.size();
    }

    /**
     * A typed value of this field, in its file's unit.
     *
     * @param option the name of what was typed, for the message
     * @param text a number, with a unit or in the file's unit; for a whole number without one
     * @throws InvalidValue if it is none
     */
    public double parse(String option, String text) {
        double value = unit().fromSi(UnitParser.parse(option, text, unit()));
        if (whole() && (value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE)) {
            throw new InvalidValue(option, "\"" + text + "\"", "a whole number for " + name(), "");
        }
        return value;
    }

    /**
     * The project with another value here.
     *
     * @param value in the file's unit
     * @throws InvalidValue if the project may not have it, with the field's name in the file
     */
    public Project in(Project project, double value) {
        return (Project) with(project, 0, value, "");
    }

    private Record with(Record owner, int depth, double value, String parent) {
        FieldStep step = way.get(depth);
        String path = parent.isEmpty() ? step.text() : parent + "." + step.text();
        Object old = step.field().of(owner);
        Object fresh = depth == way.size() - 1
                ? changed(old, step, value)
                : step.in(old, element -> with((Record) element, depth + 1, value, path));
        return made(owner, step.field(), fresh, parent);
    }

    private static Object changed(Object old, FieldStep step, double value) {
        if (step.whole()) {
            return (int) value;
        }
        double si = step.unit().toSi(BigDecimal.valueOf(value));
        if (old instanceof Spectrum spectrum) {
            return Spectrum.of(spectrum.bands(), i -> i == step.index() ? si : spectrum.value(i));
        }
        return step.in(old, number -> si);
    }

    private static <T extends Record> T made(T owner, RecordField changed, Object fresh, String parent) {
        @SuppressWarnings("unchecked")
        RecordShape<T> shape = RecordShape.of((Class<T>) owner.getClass());
        List<Object> values = new ArrayList<>();
        for (RecordField field : shape.fields()) {
            values.add(field.name().equals(changed.name()) ? fresh : field.of(owner));
        }
        try {
            return shape.create(values.toArray());
        } catch (InvalidValue e) {
            String name = shape.jsonPath(e.field());
            throw new InvalidValue(parent.isEmpty() ? name : parent + "." + name, e.given(), e.limit(), e.unit());
        }
    }

    private FieldStep last() {
        return way.get(way.size() - 1);
    }
}
