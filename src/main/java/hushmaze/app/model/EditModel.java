package hushmaze.app.model;

import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.SolidBuilder;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleIntegerProperty;

/** The project being edited, which of its vent paths is looked at, and the way back through the edits. */
public final class EditModel implements Undoing {
    private static final Pattern BOARD_THICKNESS = Pattern.compile("board(s\\.\\d+)?\\.thickness$");
    /** Characters a source may have. */
    static final int LONGEST_SOURCE = 400;

    private final ReadOnlyObjectWrapper<Project> project = new ReadOnlyObjectWrapper<>();
    private final IntegerProperty path = new SimpleIntegerProperty();
    private final ReadOnlyStringWrapper undoable = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper redoable = new ReadOnlyStringWrapper("");
    private final List<BiConsumer<Project, Project>> amended = new ArrayList<>();
    private final ObjectProperty<Message> message;
    private final List<Runnable> started = new ArrayList<>();
    private History<Project> history;

    /** @param message what there is to tell; an edit puts it away */
    EditModel(Project start, ObjectProperty<Message> message) {
        this.message = message;
        start(start);
    }

    public ReadOnlyObjectProperty<Project> projectProperty() {
        return project.getReadOnlyProperty();
    }

    public Project project() {
        return project.get();
    }

    /** Number of the path whose entries and drawings are shown. */
    public IntegerProperty pathProperty() {
        return path;
    }

    public int path() {
        return path.get();
    }

    /** What would be undone; empty if nothing. */
    public ReadOnlyStringProperty undoableProperty() {
        return undoable.getReadOnlyProperty();
    }

    /** What would be redone; empty if nothing. */
    public ReadOnlyStringProperty redoableProperty() {
        return redoable.getReadOnlyProperty();
    }

    /** Puts another project on the table; its history begins here. */
    void start(Project first) {
        history = new History<>(first);
        path.set(0);
        started.forEach(Runnable::run);
        show();
    }

    /** Told when another project is put on the table. */
    void whenStarted(Runnable listener) {
        started.add(listener);
    }

    /** Told when a project is replaced by a more complete one without an edit: the one before and the one after. */
    void whenAmended(BiConsumer<Project, Project> listener) {
        amended.add(listener);
    }

    /** Puts a completed project in the place of the one it was completed from, if that is still the present one. */
    void amend(Project before, Project after) {
        if (!before.equals(after) && before.equals(project())) {
            history.amend(after);
            amended.forEach(listener -> listener.accept(before, after));
            show();
        }
    }

    /**
     * Changes the project; one call is one step to undo.
     *
     * @throws InvalidValue if the changed project is not possible; then nothing is changed
     */
    public void edit(String description, UnaryOperator<Project> change) {
        Project before = project();
        Project after = Materials.carried(before, change.apply(before));
        requireBuildable(before, after);
        if (!after.equals(before)) {
            message.set(null);
            history.push(description, after);
            show();
        }
    }

    /**
     * Changes one field.
     *
     * @param label the field's name in the window
     * @return why it was not taken, if so
     */
    public Optional<String> set(Field field, String label, Object value) {
        return change(field, label, label, p -> field.with(p, path(), value));
    }

    /**
     * One step to undo.
     *
     * @param label of the field, for a refusal
     * @param what is done, for undo
     * @return why it was not taken, if so
     */
    Optional<String> change(Field field, String label, String what, UnaryOperator<Project> change) {
        try {
            edit(what, change);
            return Optional.empty();
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, field, label));
        }
    }

    /**
     * Changes a figure of a material to what was measured or is known better; from then on its source says so.
     *
     * @param more what the source says then
     */
    public Optional<String> enterSaying(Field field, Field source, String label, String text, String more) {
        return enter(
                field,
                source,
                label,
                text,
                from -> Summaries.isAssumed(from) ? Texts.of("source.entered") : saying(from, more));
    }

    /** A source that says something more, once, and only where there is room for it. */
    static String saying(String source, String more) {
        boolean said = source.contains(more) || source.equals(Texts.of("source.entered"));
        boolean full = source.length() + more.length() > LONGEST_SOURCE;
        return said || full ? source : source + more;
    }

    /** Changes one field to what was typed, in any unit; a blank takes away a value that may be absent. */
    public Optional<String> enter(Field field, String label, String text) {
        if (!field.isThere(project(), path())) {
            // its card was taken out while something typed was on its way
            return Optional.empty();
        }
        Object value;
        try {
            value = value(field, text);
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, field, label));
        }
        return set(field, label, value);
    }

    /**
     * Changes one field to what was typed. If its source says that the program filled it in, it says from now on that it
     * was typed.
     */
    public Optional<String> enter(Field field, Field source, String label, String text) {
        return enter(field, source, label, text, from -> Summaries.isAssumed(from) ? Texts.of("source.entered") : from);
    }

    private Optional<String> enter(
            Field field, Field source, String label, String text, UnaryOperator<String> sourceAfter) {
        try {
            Object value = value(field, text);
            edit(label, p -> {
                Project changed = field.with(p, path(), value);
                return source.get(p, path()) instanceof String from
                        ? source.with(changed, path(), sourceAfter.apply(from))
                        : changed;
            });
            return Optional.empty();
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, field, label));
        }
    }

    /**
     * What was typed as a value of a field; null for a blank where there may be none.
     *
     * @throws InvalidValue if it cannot be read
     */
    Object value(Field field, String text) {
        if (text.isBlank() && field.mayBeAbsent()) {
            return null;
        }
        String name = field.name();
        if (field.type() == String.class) {
            return text.strip();
        }
        if (field.type() == LocalDate.class) {
            return date(name, text);
        }
        double si = EntryText.parse(name, text, field.unit(), project().units());
        if (field.type() != int.class && field.type() != Integer.class) {
            return si;
        }
        if (si != Math.rint(si) || Math.abs(si) > Integer.MAX_VALUE) {
            throw new InvalidValue(name, "\"" + text.strip() + "\"", Texts.of("entry.wholeNumber"), "");
        }
        return (int) si;
    }

    private static LocalDate date(String name, String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException e) {
            throw new InvalidValue(name, "\"" + text.strip() + "\"", Texts.of("entry.aDate"), "");
        }
    }

    /** A board's thickness in the project's units. */
    public String thickness(double metres) {
        return EntryText.thickness(metres, project().units());
    }

    /** A field as its entry shows it. */
    public String shown(Field field) {
        Object value = field.get(project(), path());
        if (!(value instanceof Number)) {
            return Objects.toString(value, "");
        }
        if (BOARD_THICKNESS.matcher(field.name()).find()) {
            return thickness(((Number) value).doubleValue());
        }
        return EntryText.show(
                ((Number) value).doubleValue(), field.unit(), project().units());
    }

    /** Shows all sizes in other units; an edit like any other. */
    public void setUnits(UnitSystem units) {
        Field field = Field.of("units");
        edit(Texts.of("edit.units"), p -> field.with(p, 0, units));
    }

    @Override
    public void undo() {
        message.set(null);
        history.undo();
        show();
    }

    @Override
    public void redo() {
        message.set(null);
        history.redo();
        show();
    }

    private static void requireBuildable(Project before, Project after) {
        for (int i = 0; i < after.paths().size(); i++) {
            Box box = after.paths().get(i).box();
            Box old = i < before.paths().size() ? before.paths().get(i).box() : null;
            if (box != null && !box.equals(old)) {
                SolidBuilder.build(box);
            }
        }
    }

    private void show() {
        undoable.set(history.undoable().orElse(""));
        redoable.set(history.redoable().orElse(""));
        path.set(Math.min(path.get(), history.value().paths().size() - 1));
        project.set(history.value());
    }
}
