package hushmaze.app.entry;

import hushmaze.app.model.Designer;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.ExtrasModel;
import hushmaze.app.model.Texts;
import hushmaze.project.EnvelopeElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The list of walls, doors, windows and gaps: one card each, and a list to take more from. */
final class EnvelopeEntries implements Entry {
    private final ExtrasModel extras;
    private final EditModel edit;
    private final Entries make;
    private final VBox box = new VBox();
    private final VBox cards = new VBox();
    private final Label wrong = new Label();
    private final List<Entry> rows = new ArrayList<>();
    private List<ElementCard.Shape> shapes = List.of();

    EnvelopeEntries(Designer designer, Entries make) {
        this.extras = designer.extras();
        this.edit = designer.edit();
        this.make = make;
        box.getStyleClass().add("entry-part");
        cards.getStyleClass().add("entry-part");
        wrong.getStyleClass().add("entry-wrong");
        wrong.setWrapText(true);
        wrong.setId("element-wrong");
        box.getChildren().addAll(cards, wrong, more(designer.presets().elements()));
        say(Optional.empty());
        refresh();
    }

    private ComboBox<EnvelopeElement> more(List<EnvelopeElement> presets) {
        ComboBox<EnvelopeElement> more = new ComboBox<>();
        more.setId("element-add");
        more.setPromptText(Texts.of("element.add"));
        more.setTooltip(new Tooltip(Texts.of("element.add.tip")));
        more.setMaxWidth(Double.MAX_VALUE);
        more.setConverter(new StringConverter<>() {
            @Override
            public String toString(EnvelopeElement element) {
                return element == null ? "" : element.name();
            }

            @Override
            public EnvelopeElement fromString(String text) {
                throw new UnsupportedOperationException("this is chosen, not typed");
            }
        });
        more.setButtonCell(new PromptCell(more.getPromptText()));
        more.getItems().setAll(presets);
        more.setOnAction(e -> {
            EnvelopeElement chosen = more.getValue();
            if (chosen != null) {
                more.setValue(null);
                say(extras.addElement(chosen));
            }
        });
        return more;
    }

    private void say(Optional<String> problem) {
        wrong.setText(problem.orElse(""));
        wrong.setVisible(problem.isPresent());
        wrong.setManaged(problem.isPresent());
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void refresh() {
        List<ElementCard.Shape> now =
                extras.elements().stream().map(ElementCard.Shape::of).toList();
        if (!now.equals(shapes)) {
            shapes = now;
            rows.clear();
            cards.getChildren().clear();
            for (int i = 0; i < now.size(); i++) {
                int number = i;
                ElementCard card =
                        new ElementCard(edit, make, number, now.get(i), () -> say(extras.removeElement(number)));
                rows.add(card);
                cards.getChildren().add(card.node());
            }
        } else {
            rows.forEach(Entry::refresh);
        }
        say(Optional.empty());
    }
}
