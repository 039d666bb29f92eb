package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.Field;
import hushmaze.app.model.Texts;
import hushmaze.project.EnvelopeElement;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.WeightedReduction;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;

/** One wall, door, window, small thing or gap: its name, how much of it there is, and what it holds back. */
final class ElementCard implements Entry {
    /** What decides which entries a card has. */
    record Shape(EnvelopeElement.Kind kind, boolean perBand) {
        static Shape of(EnvelopeElement element) {
            return new Shape(element.kind(), element.loss() != null);
        }
    }

    private static final String ELEMENTS = "room.envelope.elements.";

    private final EditModel edit;
    private final Entries make;
    private final int number;
    private final EntryCard card;
    private final List<Entry> entries = new ArrayList<>();

    /** @param remove what the button does that takes the element out */
    ElementCard(EditModel edit, Entries make, int number, Shape shape, Runnable remove) {
        this.edit = edit;
        this.make = make;
        this.number = number;
        switch (shape.kind()) {
            case SURFACE -> typed("area", "count");
            case SMALL -> typed("count");
            case GAP -> {
                typed("gapLength", "gapWidth", "gapDepth");
                add(make.choice(name("gapMouth"), "element.gapMouth"));
                typed("count");
            }
        }
        if (shape.kind() != EnvelopeElement.Kind.GAP) {
            loss(shape.perBand());
        }
        card = EntryCard.of(
                make.typed(name("name"), "element.name", Size.LONG), AwayButton.of("element", number, remove), entries);
    }

    private String name(String component) {
        return ELEMENTS + number + "." + component;
    }

    private void typed(String... components) {
        for (String component : components) {
            add(make.typed(name(component), "element." + component, Size.BESIDE));
        }
    }

    private void loss(boolean perBand) {
        Entry values = perBand
                ? make.octaves(name("loss"), name("source"), "element.loss", name("loss"), true)
                : make.typed(name("weighted"), "element.weighted", Size.BESIDE);
        add(new FoldGroup(
                "element", this::rating, List.of(values, make.typed(name("source"), "element.source", Size.LONG))));
    }

    /** What it holds back, as one number. */
    private String rating() {
        if (!(Field.of(ELEMENTS + number).get(edit.project(), 0) instanceof EnvelopeElement element)) {
            return "";
        }
        Spectrum loss = element.loss();
        long rated = loss == null
                ? Math.round(element.weighted())
                : WeightedReduction.of(loss.interpolatedInThirds()).number();
        return Texts.of("element.rating", String.valueOf(rated));
    }

    private void add(Entry entry) {
        entries.add(entry);
    }

    @Override
    public Node node() {
        return card.node();
    }

    @Override
    public void refresh() {
        card.refresh();
    }
}
