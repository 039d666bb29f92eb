package hushmaze.app.guide;

import hushmaze.app.entry.Entry;
import hushmaze.app.entry.GuideEntries;
import hushmaze.app.model.Designer;
import hushmaze.app.model.GuideModel;
import hushmaze.app.model.Question;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PageCanvas;
import hushmaze.app.verdict.KeyedButton;
import hushmaze.app.verdict.WrappedWords;
import hushmaze.drawing.TextMeasure;
import hushmaze.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Asks for a first box, one step at a time, over the window until it is answered or put away. */
public final class GuidePane extends BorderPane {
    private static final PseudoClass NOW = PseudoClass.getPseudoClass("now");

    private final GuideModel guide;
    private final TextMeasure widths;
    private final List<Button> steps = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private final Label question = WrappedWords.of("", "guide-question");
    private final Label why = WrappedWords.of("", "guide-words");
    private final VBox rows = new VBox();
    private final Label follows = WrappedWords.of("", "guide-follows");
    private final PageCanvas picture = new PageCanvas();
    private final Button back;
    private final Button next;

    public GuidePane(Designer designer) {
        this.guide = designer.guide();
        this.widths = designer.measure();
        this.back = KeyedButton.of("guide.back", guide::back);
        this.next = KeyedButton.of("guide.next", guide::next);
        getStyleClass().add("guide");
        setId("guide");
        setLeft(stepList());
        setCenter(page());
        setBottom(new StackPane(foot(), search()));
        visibleProperty().bind(guide.openProperty());
        managedProperty().bind(guide.openProperty());
        guide.stepProperty().addListener((p, before, after) -> showStep());
        guide.boxProperty().addListener((p, before, after) -> refresh());
        guide.lookedProperty().addListener((p, before, after) -> draw());
        guide.openProperty().addListener((p, before, now) -> {
            if (now) {
                showStep();
            }
        });
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                guide.leave();
                e.consume();
            }
        });
        sceneProperty().addListener((p, before, scene) -> {
            if (scene != null) {
                scene.focusOwnerProperty().addListener((q, old, owner) -> look(owner));
                Platform.runLater(this::focusFirst);
            }
        });
        showStep();
    }

    private Node stepList() {
        VBox list = new VBox(WrappedWords.of(Texts.of("guide.heading"), "column-heading"));
        list.getStyleClass().add("guide-steps");
        for (Question.Step step : Question.Step.values()) {
            Button button = new Button(Texts.of("guide.step." + step));
            button.setId("guide-step-" + step.name().toLowerCase(Locale.ROOT));
            button.setMnemonicParsing(true);
            button.setMaxWidth(Double.MAX_VALUE);
            button.setAlignment(Pos.CENTER_LEFT);
            button.getStyleClass().add("guide-step");
            button.setOnAction(e -> guide.go(step));
            steps.add(button);
            list.getChildren().add(button);
        }
        Region gap = new Region();
        VBox.setVgrow(gap, Priority.ALWAYS);
        list.getChildren().addAll(gap, units());
        return list;
    }

    private Node units() {
        ToggleGroup group = new ToggleGroup();
        VBox box = new VBox();
        box.getStyleClass().add("guide-units");
        for (UnitSystem system : UnitSystem.values()) {
            RadioButton button = new RadioButton(Texts.of("guide.units." + system));
            button.setId("guide-units-" + system.name().toLowerCase(Locale.ROOT));
            button.setMnemonicParsing(true);
            button.setToggleGroup(group);
            button.setOnAction(e -> guide.setUnits(system));
            guide.boxProperty().addListener((p, before, after) -> button.setSelected(after.units() == system));
            button.setSelected(guide.box().units() == system);
            box.getChildren().add(button);
        }
        return box;
    }

    private Node page() {
        question.setId("guide-question");
        follows.setId("guide-follows");
        rows.getStyleClass().add("guide-rows");
        VBox words = new VBox(question, why, rows, follows);
        words.getStyleClass().add("guide-page");
        ScrollPane scroll = new ScrollPane(words);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("guide-scroll");
        picture.setMinWidth(0);
        picture.getStyleClass().add("guide-picture");
        picture.setId("guide-picture");
        HBox.setHgrow(picture, Priority.ALWAYS);
        words.disableProperty().bind(guide.searchingProperty());
        HBox page = new HBox(scroll, picture);
        page.getStyleClass().add("guide-middle");
        return page;
    }

    private Node foot() {
        Button leave = KeyedButton.of("guide.leave", guide::leave);
        next.getStyleClass().add("accent");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox foot = new HBox(leave, gap, back, next);
        foot.visibleProperty().bind(guide.searchingProperty().not());
        foot.getStyleClass().add("guide-foot");
        foot.setAlignment(Pos.CENTER_LEFT);
        return foot;
    }

    /** In place of the foot while boxes are looked for. */
    private Node search() {
        ProgressBar bar = new ProgressBar();
        bar.progressProperty().bind(guide.fractionProperty());
        bar.setAccessibleText(Texts.of("guide.searching"));
        bar.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(bar, Priority.ALWAYS);
        Label words = new Label();
        words.setId("guide-searching");
        words.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> Texts.of(
                                "guide.searching.done",
                                String.valueOf(Math.round(
                                        100 * guide.fractionProperty().get())),
                                guide.doingProperty().get()),
                        guide.fractionProperty(),
                        guide.doingProperty()));
        words.setMinWidth(Region.USE_PREF_SIZE);
        Button stop = KeyedButton.of("guide.stop", guide::stop);
        HBox line = new HBox(words, bar, stop);
        line.getStyleClass().add("guide-foot");
        line.setAlignment(Pos.CENTER_LEFT);
        line.visibleProperty().bind(guide.searchingProperty());
        return line;
    }

    private void showStep() {
        Question.Step step = guide.stepProperty().get();
        question.setText(Texts.of("guide.question." + step));
        why.setText(Texts.of("guide.why." + step));
        entries.clear();
        rows.getChildren().clear();
        GuideEntries make = new GuideEntries(guide);
        for (Question one : step.questions()) {
            Entry entry = make.of(one);
            entries.add(entry);
            rows.getChildren().add(entry.node());
        }
        for (int i = 0; i < steps.size(); i++) {
            steps.get(i).pseudoClassStateChanged(NOW, i == step.ordinal());
        }
        back.setDisable(guide.isFirst());
        next.setText(Texts.of(guide.isLast() ? "guide.finish" : "guide.next"));
        refresh();
        if (isVisible() && getScene() != null) {
            focusFirst();
        }
    }

    /** The first entry has the focus, so that one can type at once. */
    private void focusFirst() {
        List<Node> controls = new ArrayList<>(rows.getChildren().get(0).lookupAll(".text-field"));
        controls.addAll(rows.getChildren().get(0).lookupAll(".combo-box"));
        if (!controls.isEmpty()) {
            controls.get(0).requestFocus();
        }
    }

    /** The question that has the focus is the one looked at; cells of lists take themselves for focused too. */
    private void look(Node owner) {
        List<Question> questions = guide.stepProperty().get().questions();
        for (Node at = owner; at != null; at = at.getParent()) {
            int number = rows.getChildren().indexOf(at);
            if (number >= 0) {
                guide.lookedProperty().set(questions.get(number));
                return;
            }
        }
    }

    private void refresh() {
        entries.forEach(Entry::refresh);
        follows.setText(guide.follows());
        draw();
    }

    private void draw() {
        if (!guide.openProperty().get()) {
            return;
        }
        Question.Step step = guide.stepProperty().get();
        picture.setSource(
                new GuidePicture(guide.box(), step, guide.lookedProperty().get(), widths));
        picture.setAccessibleText(Texts.of("guide.picture", Texts.of("guide.step." + step)));
    }
}
