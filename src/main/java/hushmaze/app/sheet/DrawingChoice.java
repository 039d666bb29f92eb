package hushmaze.app.sheet;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Texts;
import hushmaze.drawing.page.ScreenPages;
import java.util.List;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;

/** One of several drawings of the path looked at, so that each is large. */
public final class DrawingChoice extends BorderPane {
    /**
     * A drawing.
     *
     * @param key of its name
     */
    public record Kind(String key, Function<ScreenPages, PageSource> drawing) {}

    private final DrawingView view;

    /**
     * @param kinds the first is shown first
     * @param changed run when another one is to be shown
     */
    DrawingChoice(Designer designer, List<Kind> kinds, Runnable changed) {
        Kind first = kinds.get(0);
        view = new DrawingView(designer, Texts.of(first.key()), first.drawing());
        ToggleGroup group = new ToggleGroup();
        FlowPane bar = new FlowPane();
        bar.getStyleClass().add("view-controls");
        bar.setAlignment(Pos.CENTER_LEFT);
        for (Kind kind : kinds) {
            RadioButton button = new RadioButton(Texts.of(kind.key()));
            button.setId(kind.key().replace('.', '-'));
            button.setToggleGroup(group);
            button.setSelected(kind.equals(first));
            button.setUserData(kind);
            bar.getChildren().add(button);
        }
        group.selectedToggleProperty().addListener((p, before, after) -> {
            Kind kind = (Kind) after.getUserData();
            changed.run();
            view.show(Texts.of(kind.key()), kind.drawing());
        });
        setCenter(view);
        setBottom(bar);
    }

    /** Noise and reduction: in third octaves, in octaves, method by method. */
    public static DrawingChoice spectra(Designer designer) {
        return new DrawingChoice(
                designer,
                List.of(
                        new Kind("spectra.thirds", pages -> pages::spectra),
                        new Kind("spectra.octaves", pages -> pages::octaves),
                        new Kind("spectra.methods", pages -> pages::methods)),
                () -> {});
    }

    /** The air: path and room at work, and place by place along its way. */
    public static DrawingChoice air(Designer designer) {
        return new DrawingChoice(
                designer,
                List.of(new Kind("air.work", pages -> pages::air), new Kind("air.way", pages -> pages::airWay)),
                () -> {});
    }

    /** What the drawing is on. */
    DrawingView view() {
        return view;
    }
}
