package hushmaze.app.entry;

import hushmaze.app.model.Extra;
import hushmaze.app.model.ExtrasModel;
import java.util.List;

/** Switches for what a project may leave out, with the entries that are there while they are on. */
final class Switches {
    private final ExtrasModel extras;

    Switches(ExtrasModel extras) {
        this.extras = extras;
    }

    /** The switch itself. */
    Entry turn(Extra extra) {
        return new SwitchEntry(extra.fieldName(), () -> extras.isOn(extra), on -> extras.turn(extra, on));
    }

    /** Entries while it is on. */
    Entry when(Extra extra, List<Entry> entries) {
        return new Shown(() -> extras.isOn(extra), entries);
    }

    /**
     * A word on values that the program filled in.
     *
     * @param key of it
     */
    Entry assumed(Extra extra, String key) {
        return new Shown(() -> extras.isAssumed(extra), List.of(Words.quiet(key)));
    }
}
