package hushmaze.app.window;

import hushmaze.app.field.FieldView;
import hushmaze.app.found.FoundPane;
import hushmaze.app.kept.KeptView;
import hushmaze.app.measured.MeasuredView;
import hushmaze.app.measured.ReadingFiles;
import hushmaze.app.model.Designer;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.CutView;
import hushmaze.app.sheet.DrawingChoice;
import hushmaze.app.sheet.PagesView;
import hushmaze.app.solid.SolidPane;
import hushmaze.app.verdict.Tip;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The same result seen in several ways, one at a time. */
final class Views extends VBox {
    /** Keys of the views' texts, in their order. */
    static final List<String> NAMES =
            List.of("sections", "space", "spectra", "field", "air", "pages", "found", "kept", "measured");

    private final ToggleGroup choice = new ToggleGroup();
    private final StackPane stage = new StackPane();
    /** How each view is made when it is first looked at: those nobody looks at would only make the start slower. */
    private final List<Supplier<Node>> makers;

    private final Map<Integer, Node> views = new HashMap<>();

    Views(Designer designer, ReadingFiles files) {
        getStyleClass().add("views");
        makers = List.of(
                () -> new CutView(designer),
                () -> new SolidPane(designer),
                () -> DrawingChoice.spectra(designer),
                () -> new FieldView(designer),
                () -> DrawingChoice.air(designer),
                () -> new PagesView(designer),
                () -> new FoundPane(designer),
                () -> new KeptView(designer),
                () -> new MeasuredView(designer, files));
        FlowPane buttons = new FlowPane();
        buttons.getStyleClass().add("view-choice");
        for (int i = 0; i < NAMES.size(); i++) {
            ToggleButton button = new ToggleButton(Texts.of("view." + NAMES.get(i)));
            button.setMnemonicParsing(true);
            button.setId("view-" + NAMES.get(i));
            Tip.on(button, Texts.of("view." + NAMES.get(i) + ".tip"));
            button.setToggleGroup(choice);
            button.setMinWidth(Region.USE_PREF_SIZE);
            buttons.getChildren().add(button);
        }
        stage.getStyleClass().add("view-stage");
        stage.setMinSize(0, 0);
        VBox.setVgrow(stage, Priority.ALWAYS);
        getChildren().addAll(buttons, stage);
        choice.selectedToggleProperty().addListener((p, before, after) -> {
            if (after == null) {
                before.setSelected(true);
                return;
            }
            int number = choice.getToggles().indexOf(after);
            designer.compared().watchedProperty().set(NAMES.get(number).equals("measured"));
            make(number);
            views.forEach((other, view) -> view.setVisible(other == number));
            designer.pages().watchedProperty().set(NAMES.get(number).equals("pages"));
            designer.kept().watchedProperty().set(NAMES.get(number).equals("kept"));
        });
        designer.pages().soughtProperty().addListener((p, before, mark) -> {
            if (!mark.isEmpty()) {
                show("pages");
            }
        });
        show(0);
    }

    private void make(int number) {
        if (!views.containsKey(number)) {
            Node view = makers.get(number).get();
            views.put(number, view);
            stage.getChildren().add(view);
        }
    }

    /** Shows a view by its name. */
    void show(String name) {
        show(NAMES.indexOf(name));
    }

    void show(int number) {
        choice.getToggles().get(number).setSelected(true);
    }
}
