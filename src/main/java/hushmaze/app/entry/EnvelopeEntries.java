package hushmaze.app.entry;

import hushmaze.app.model.Designer;
import hushmaze.app.model.ExtrasModel;
import hushmaze.project.EnvelopeElement;
import java.util.Optional;
import javafx.scene.Node;

/** The list of walls, doors, windows and gaps: one card each, and a list to take more from. */
final class EnvelopeEntries implements Entry {
    private final CardList<EnvelopeElement, ElementCard.Shape> list;

    EnvelopeEntries(Designer designer, Entries make) {
        ExtrasModel extras = designer.extras();
        list = new CardList<>(
                "element",
                extras::elements,
                ElementCard.Shape::of,
                (number, shape) ->
                        new ElementCard(designer.edit(), make, number, shape, () -> say(extras.removeElement(number))));
        list.with(AddChoice.of(
                "element",
                designer.presets().elements(),
                EnvelopeElement::name,
                chosen -> say(extras.addElement(chosen))));
    }

    private void say(Optional<String> problem) {
        list.say(problem);
    }

    @Override
    public Node node() {
        return list.node();
    }

    @Override
    public void refresh() {
        list.refresh();
    }
}
