package hushmaze.app.entry;

import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** Entries that fold away; closed, one line says what they hold. */
final class FoldGroup implements Entry {
    private final TitledPane pane = new TitledPane();
    private final Label summary = new Label();
    private final Supplier<String> words;
    private final List<Entry> entries;

    /**
     * @param key of its texts: {@code fold.KEY} is its title, {@code fold.KEY.tip} explains it
     * @param words what it holds, in one line
     */
    FoldGroup(String key, Supplier<String> words, List<Entry> entries) {
        this.words = words;
        this.entries = List.copyOf(entries);
        Label title = new Label(Texts.of("fold." + key));
        title.getStyleClass().add("fold-title");
        summary.getStyleClass().add("fold-summary");
        summary.setId("fold-" + key + "-summary");
        VBox head = new VBox(title, summary);
        Tip.on(head, Texts.of("fold." + key + ".tip"));
        pane.setAccessibleText(title.getText());
        pane.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        pane.setGraphic(head);
        pane.setExpanded(false);
        pane.expandedProperty().addListener((p, before, open) -> {
            if (open && pane.getContent() == null) {
                pane.setContent(content());
            }
        });
        pane.setAnimated(false);
        pane.setId("fold-" + key);
        pane.getStyleClass().add("fold");
        // The title takes the width there is, so that a long summary ends in dots instead of making the pane wider.
        pane.setMinWidth(0);
        head.setMinWidth(0);
        head.prefWidthProperty().bind(pane.widthProperty().subtract(HEAD_MARGIN));
        refresh();
    }

    /** In the window from when it is first unfolded: what nobody looks at need not be styled and laid out. */
    private VBox content() {
        VBox content = new VBox();
        content.getStyleClass().add("fold-content");
        entries.forEach(e -> content.getChildren().add(e.node()));
        return content;
    }

    /** Room for the arrow and the paddings of the title. */
    private static final double HEAD_MARGIN = 44;

    /** Leaves more room to labels than to what is typed. */
    FoldGroup narrow() {
        pane.getStyleClass().add("narrow");
        return this;
    }

    @Override
    public Node node() {
        return pane;
    }

    @Override
    public void refresh() {
        summary.setText(words.get());
        entries.forEach(Entry::refresh);
    }
}
