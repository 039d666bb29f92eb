package hushmaze.app.solid;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.DrawingView;
import hushmaze.assess.PathResult;
import hushmaze.project.Purpose;
import java.util.Optional;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;

/** The box in space; where the system cannot show that, its faces as a drawing and a word why. */
public final class SolidPane extends BorderPane {
    /** How much more room the parts take when they are well apart. */
    private static final double SPREAD = 0.45;

    private final Designer designer;
    private final CheckBox cover = new CheckBox(Texts.of("space.cover"));
    private final CheckBox liner = new CheckBox(Texts.of("space.liner"));
    private final CheckBox air = new CheckBox(Texts.of("space.air"));
    private final Slider apart = new Slider(0, 1, 0);
    private SpaceView view;
    private BoxModel model;

    public SolidPane(Designer designer) {
        this.designer = designer;
        getStyleClass().add("solid-pane");
        if (!Platform.isSupported(ConditionalFeature.SCENE3D)) {
            Label why = new Label(Texts.of("space.unsupported"));
            why.setWrapText(true);
            why.getStyleClass().add("quiet-words");
            setTop(why);
            setCenter(new DrawingView(designer, Texts.of("space.faces"), pages -> pages::faces));
            return;
        }
        view = new SpaceView();
        view.setAccessibleText(Texts.of("space.name"));
        setCenter(view);
        setBottom(controls());
        designer.results().assessmentProperty().addListener((p, before, after) -> build());
        designer.edit().pathProperty().addListener((p, before, after) -> build());
        build();
    }

    private Node controls() {
        liner.setSelected(true);
        air.setSelected(true);
        for (CheckBox box : new CheckBox[] {cover, liner, air}) {
            box.setOnAction(e -> apply());
        }
        apart.valueProperty().addListener(o -> apply());
        apart.setAccessibleText(Texts.of("space.apart"));
        apart.setTooltip(new Tooltip(Texts.of("space.apart.tip")));
        Label label = new Label(Texts.of("space.apart"));
        label.setLabelFor(apart);
        Button reset = new Button(Texts.of("space.reset"));
        reset.setTooltip(new Tooltip(Texts.of("space.reset.tip")));
        reset.setOnAction(e -> view.reset());
        FlowPane bar = new FlowPane(cover, liner, air, new HBox(label, apart), reset);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("view-controls");
        return bar;
    }

    private void build() {
        Optional<PathResult> result = designer.results().pathResult();
        view.setVisible(result.isPresent());
        if (result.isEmpty()) {
            return;
        }
        PathResult path = result.get();
        model = new BoxModel(path.solid(), path.path().purpose() == Purpose.SUPPLY, view);
        view.show(model, model.diagonal());
        apply();
    }

    private void apply() {
        if (model != null) {
            model.show(liner.isSelected(), cover.isSelected());
            model.showAir(air.isSelected());
            model.pullApart(apart.getValue());
            view.stepBack(1 + SPREAD * apart.getValue());
        }
    }
}
