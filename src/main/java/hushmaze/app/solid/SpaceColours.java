package hushmaze.app.solid;

import java.util.List;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;

/** A pane that has the colours of things in space from the style sheet, and materials that follow them. */
class SpaceColours extends StackPane {
    private static final StyleablePropertyFactory<SpaceColours> STYLES =
            new StyleablePropertyFactory<>(StackPane.getClassCssMetaData());

    private final StyleableProperty<Color> wall = colour("wall", s -> s.wall());
    private final StyleableProperty<Color> baffle = colour("baffle", s -> s.baffle());
    private final StyleableProperty<Color> liner = colour("liner", s -> s.liner());
    private final StyleableProperty<Color> edge = colour("edge", s -> s.edge());
    private final StyleableProperty<Color> cut = colour("cut", s -> s.cut());
    private final StyleableProperty<Color> chosen = colour("chosen", s -> s.chosen());
    private final StyleableProperty<Color> air = colour("air", s -> s.air());
    private final StyleableProperty<Color> light = colour("light", s -> s.light());
    private final StyleableProperty<Color> shade = colour("shade", s -> s.shade());

    private StyleableProperty<Color> colour(String name, Function<SpaceColours, StyleableProperty<Color>> get) {
        return STYLES.createStyleableColorProperty(this, name, "-space-" + name, get, Color.GRAY);
    }

    final StyleableProperty<Color> wall() {
        return wall;
    }

    final StyleableProperty<Color> baffle() {
        return baffle;
    }

    final StyleableProperty<Color> liner() {
        return liner;
    }

    final StyleableProperty<Color> edge() {
        return edge;
    }

    /** Where boards are cut open. */
    final StyleableProperty<Color> cut() {
        return cut;
    }

    /** Outline of a chosen part. */
    final StyleableProperty<Color> chosen() {
        return chosen;
    }

    final StyleableProperty<Color> air() {
        return air;
    }

    final StyleableProperty<Color> light() {
        return light;
    }

    final StyleableProperty<Color> shade() {
        return shade;
    }

    @SuppressWarnings("unchecked")
    static ObservableValue<Color> observed(StyleableProperty<Color> colour) {
        return (ObservableValue<Color>) colour;
    }

    /** A dull material in one of the colours. */
    static PhongMaterial material(StyleableProperty<Color> colour) {
        PhongMaterial material = new PhongMaterial();
        material.diffuseColorProperty().bind(observed(colour));
        return material;
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return STYLES.getCssMetaData();
    }
}
