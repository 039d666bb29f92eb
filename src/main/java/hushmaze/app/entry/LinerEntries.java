package hushmaze.app.entry;

import hushmaze.app.model.Designer;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.Field;
import hushmaze.app.model.Texts;
import hushmaze.material.Facing;
import hushmaze.material.Liner;
import hushmaze.store.Presets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;

/** What a path is lined with, and what lies over it. */
final class LinerEntries {
    private static final String LINER = "path.brief.construction.liner";
    private static final String FACING = LINER + ".facing";

    private final Entries make;
    private final EditModel edit;
    private final Presets presets;
    private final Field field = Field.of(LINER);

    LinerEntries(Designer designer, Entries make) {
        this.make = make;
        this.edit = designer.edit();
        this.presets = designer.presets();
    }

    /** The liner; what lies over it stays. */
    Entry liner() {
        ComboBox<Liner> box = new ComboBox<>();
        return new ChoiceEntry<>(
                new EntryRow(LINER, box, true),
                box,
                presets.liners(),
                this::name,
                () -> there() ? now().faced(null) : null,
                this::there,
                liner -> set(LINER, liner.faced(now().facing())));
    }

    /** With a word where its figures are the user's own. */
    private String name(Liner liner) {
        boolean own = presets.liners().stream()
                .anyMatch(l -> l.name().equals(liner.name()) && !l.faced(null).equals(liner.faced(null)));
        return own ? Texts.of("entry.ownFigures", liner.name()) : liner.name();
    }

    /** Nothing, a cloth or a film. */
    Entry facing() {
        ComboBox<Optional<Facing>> box = new ComboBox<>();
        List<Optional<Facing>> options = Stream.concat(
                        Stream.of(Optional.<Facing>empty()),
                        presets.facings().stream().map(Optional::of))
                .toList();
        return new ChoiceEntry<>(
                new EntryRow(FACING, box, true),
                box,
                options,
                facing -> facing.map(Facing::name).orElse(Texts.of("facing.none")),
                () -> there() ? Optional.ofNullable(now().facing()) : null,
                this::there,
                facing -> set(FACING, now().faced(facing.orElse(null))));
    }

    /** Its mass and flow resistance, where there is one. */
    Entry figures() {
        return new Shown(
                () -> there() && now().facing() != null, List.of(figure("massPerArea"), figure("flowResistance")));
    }

    private Entry figure(String name) {
        return make.figure(FACING, name, FACING + "." + name, Texts.of("source.facing"));
    }

    private Optional<String> set(String label, Liner liner) {
        return edit.set(field, Texts.of("entry." + label), liner);
    }

    private boolean there() {
        return field.isThere(edit.project(), edit.path());
    }

    private Liner now() {
        return (Liner) field.get(edit.project(), edit.path());
    }
}
