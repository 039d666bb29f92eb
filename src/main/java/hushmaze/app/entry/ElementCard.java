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
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

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
    private final VBox box = new VBox();
    private final List<Entry> entries = new ArrayList<>();

    /** @param remove what the button does that takes the element out */
    ElementCard(EditModel edit, Entries make, int number, Shape shape, Runnable remove) {
        this.edit = edit;
        this.make = make;
        this.number = number;
        box.getStyleClass().add("element-card");
        box.getChildren().add(head(remove));
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
    }

    private String name(String component) {
        return ELEMENTS + number + "." + component;
    }

    private HBox head(Runnable remove) {
        Entry name = make.typed(name("name"), "element.name", Size.LONG);
        entries.add(name);
        HBox.setHgrow(name.node(), Priority.ALWAYS);
        HBox head = new HBox(name.node(), AwayButton.of("element", number, remove));
        head.getStyleClass().add("entry-line");
        head.setAlignment(Pos.BOTTOM_LEFT);
        return head;
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
        box.getChildren().add(entry.node());
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void refresh() {
        entries.forEach(Entry::refresh);
    }
}
