package hushmaze.app.solid;

import hushmaze.app.model.Designer;
import hushmaze.app.model.PartsModel;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.DrawingView;
import hushmaze.app.verdict.KeyedButton;
import hushmaze.app.verdict.Tip;
import hushmaze.assess.PathResult;
import hushmaze.project.Box;
import hushmaze.project.Purpose;
import hushmaze.solid.Axis;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The box in space; where the system cannot show that, the box pulled apart as a drawing and a word why. */
public final class SolidPane extends BorderPane {
    /** How much more room the parts take when they are well apart. */
    private static final double SPREAD = 0.45;
    /** Most of the box that may be cut away. */
    private static final double DEEPEST = 0.98;
    /** In the order they are offered in; each takes away from the high end of an axis. */
    private static final List<Axis> CUTS = List.of(Axis.Z, Axis.Y, Axis.X);

    private final Designer designer;
    private final PartsModel parts;
    private final CheckBox cover = new CheckBox(Texts.of("space.cover"));
    private final CheckBox liner = new CheckBox(Texts.of("space.liner"));
    private final CheckBox air = new CheckBox(Texts.of("space.air"));
    private final Slider apart = new Slider(0, 1, 0);
    private final Slider open = new Slider(0, DEEPEST, 0);
    private final ComboBox<String> from = new ComboBox<>();
    private final ComboBox<String> layers = new ComboBox<>();
    /** Of two lines, so that the picture keeps its size. */
    private final Label words = new Label();

    private final Button drawing = new Button(Texts.of("space.part.drawing"));
    private SpaceView view;
    private BoxModel model;

    public SolidPane(Designer designer) {
        this.designer = designer;
        this.parts = designer.parts();
        getStyleClass().add("solid-pane");
        if (!Platform.isSupported(ConditionalFeature.SCENE3D)) {
            Label why = new Label(Texts.of("space.unsupported"));
            why.setWrapText(true);
            why.getStyleClass().add("quiet-words");
            setTop(why);
            setCenter(new DrawingView(designer, Texts.of("space.exploded"), pages -> pages::exploded));
            return;
        }
        view = new SpaceView();
        view.setAccessibleText(Texts.of("space.name"));
        view.setOnPicked(node -> parts.choose(BoxModel.partOf(node).orElse(null)));
        view.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        setCenter(view);
        setBottom(new VBox(partLine(), controls()));
        designer.results().assessmentProperty().addListener((p, before, after) -> build());
        designer.edit().pathProperty().addListener((p, before, after) -> build());
        parts.chosenProperty().addListener((p, before, after) -> tell());
        build();
    }

    private void key(KeyEvent e) {
        if (e.getCode() == KeyCode.PAGE_DOWN || e.getCode() == KeyCode.PAGE_UP) {
            step(e.getCode() == KeyCode.PAGE_DOWN ? 1 : -1);
            e.consume();
        } else if (e.getCode() == KeyCode.ESCAPE) {
            parts.choose(null);
            e.consume();
        }
    }

    private void step(int by) {
        if (model != null) {
            parts.step(model.shown(), by);
        }
    }

    private Node partLine() {
        words.setId("space-part");
        words.getStyleClass().add("part-words");
        words.setWrapText(true);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        Button back = button("space.part.back", () -> step(-1));
        Button next = button("space.part.next", () -> step(1));
        drawing.setId("space-part-drawing");
        drawing.setMinWidth(Region.USE_PREF_SIZE);
        Tip.on(drawing, Texts.of("space.part.drawing.tip"));
        drawing.setOnAction(e -> parts.showDrawing());
        HBox line = new HBox(words, back, next, drawing);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("part-line");
        return line;
    }

    private static Button button(String key, Runnable action) {
        Button button = KeyedButton.of(key, action);
        button.setAccessibleText(Texts.of(key + ".tip"));
        return button;
    }

    private Node controls() {
        liner.setSelected(true);
        air.setSelected(true);
        for (CheckBox box : new CheckBox[] {cover, liner, air}) {
            box.setOnAction(e -> apply());
        }
        Node pulled = slider("space.apart", apart);
        CUTS.forEach(axis -> from.getItems().add(Texts.of("space.open." + axis)));
        from.getSelectionModel().select(0);
        from.setId("space-open-from");
        from.setAccessibleText(Texts.of("space.open.from"));
        Tip.on(from, Texts.of("space.open.from"));
        from.setOnAction(e -> apply());
        open.setId("space-open");
        HBox cut = slider("space.open", open);
        cut.getChildren().add(1, from);
        layers.setId("space-layers");
        layers.setAccessibleText(Texts.of("space.layers.tip"));
        Tip.on(layers, Texts.of("space.layers.tip"));
        layers.setOnAction(e -> apply());
        Button reset = button("space.reset", () -> {
            apart.setValue(0);
            open.setValue(0);
            view.reset();
        });
        FlowPane bar = new FlowPane(cover, liner, air, layers, reset, pulled, cut);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("view-controls");
        return bar;
    }

    private HBox slider(String key, Slider slider) {
        slider.valueProperty().addListener(o -> apply());
        slider.setAccessibleText(Texts.of(key));
        Tip.on(slider, Texts.of(key + ".tip"));
        Label label = new Label(Texts.of(key));
        label.setLabelFor(slider);
        label.setMinWidth(Region.USE_PREF_SIZE);
        HBox both = new HBox(label, slider);
        both.setAlignment(Pos.CENTER_LEFT);
        return both;
    }

    private void build() {
        Optional<PathResult> result = designer.results().pathResult();
        view.setVisible(result.isPresent());
        if (result.isEmpty()) {
            return;
        }
        PathResult path = result.get();
        offerLayers(path.solid().box());
        model = new BoxModel(path.solid(), path.path().purpose() == Purpose.SUPPLY, view);
        view.show(model, model.diagonal());
        apply();
        tell();
    }

    private void offerLayers(Box box) {
        int most = Math.max(box.shell().size(), box.baffleLayers());
        List<String> all = IntStream.rangeClosed(0, most)
                .mapToObj(i -> i == 0
                        ? Texts.of("space.layers.all")
                        : Texts.of(i == 1 ? "space.layers.first" : "space.layers.one", String.valueOf(i)))
                .toList();
        if (!layers.getItems().equals(all)) {
            layers.getItems().setAll(all);
            layers.getSelectionModel().select(0);
        }
        layers.setVisible(most > 1);
        layers.setManaged(most > 1);
    }

    private void tell() {
        words.setText(parts.words());
        drawing.setDisable(parts.chosenProperty().get() == null);
        if (model != null) {
            model.choose(parts.chosenProperty().get());
        }
    }

    private void apply() {
        if (model != null) {
            int layer = layers.getSelectionModel().getSelectedIndex();
            model.show(liner.isSelected(), cover.isSelected(), layer <= 0 ? BoxModel.ALL_LAYERS : layer - 1);
            model.cutOpen(CUTS.get(Math.max(0, from.getSelectionModel().getSelectedIndex())), open.getValue());
            model.showAir(air.isSelected());
            model.pullApart(apart.getValue());
            view.stepBack(1 + SPREAD * apart.getValue());
        }
    }
}
