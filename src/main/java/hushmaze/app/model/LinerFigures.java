package hushmaze.app.model;

import hushmaze.material.Liner;
import hushmaze.quantity.InvalidValue;
import java.util.Optional;

/** Changes of a liner's figures that take more than one of them along. */
public final class LinerFigures {
    private final EditModel edit;
    private final Field liner;

    /** @param liner where in a project it is */
    public LinerFigures(EditModel edit, Field liner) {
        this.edit = edit;
        this.liner = liner;
    }

    /**
     * Takes a likely flow resistivity as typed; the range it may have is widened where it lies outside. Gives back why not,
     * if so.
     */
    public Optional<String> enterResistivity(Field field, String label, String text) {
        double likely;
        try {
            likely = (double) edit.value(field, text);
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, field, label));
        }
        return edit.change(field, label, label, p -> {
            Liner now = (Liner) liner.get(p, edit.path());
            return liner.with(
                    p,
                    edit.path(),
                    now.resisting(
                            likely,
                            Math.min(likely, now.flowResistivityLow()),
                            Math.max(likely, now.flowResistivityHigh()),
                            EditModel.saying(now.source(), Texts.of("source.figure"))));
        });
    }
}
