package hushmaze.app.field;

import java.util.List;
import java.util.function.Function;
import javafx.beans.Observable;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/** A region that has the colours of everything around and over a map from the style sheet. */
class FieldColours extends Region {
    private static final StyleablePropertyFactory<FieldColours> STYLES =
            new StyleablePropertyFactory<>(Region.getClassCssMetaData());

    private final StyleableProperty<Color> board = colour("board", s -> s.board);
    private final StyleableProperty<Color> hatch = colour("hatch", s -> s.hatch);
    private final StyleableProperty<Color> line = colour("line", s -> s.line);
    private final StyleableProperty<Color> lining = colour("lining", s -> s.lining);
    private final StyleableProperty<Color> shadow = colour("shadow", s -> s.shadow);
    private final StyleableProperty<Color> words = colour("words", s -> s.words);
    private final StyleableProperty<Color> ground = colour("ground", s -> s.ground);
    private final StyleableProperty<Color> still = colour("still", s -> s.still);

    private StyleableProperty<Color> colour(String name, Function<FieldColours, StyleableProperty<Color>> get) {
        StyleableProperty<Color> property =
                STYLES.createStyleableColorProperty(this, name, "-field-" + name, get, Color.GRAY);
        ((Observable) property).addListener(o -> requestLayout());
        return property;
    }

    /** Of cut boards. */
    final Color board() {
        return board.getValue();
    }

    /** Of the hatching on boards. */
    final Color hatch() {
        return hatch.getValue();
    }

    /** Of the boards' outlines and of arrows. */
    final Color line() {
        return line.getValue();
    }

    /** Of the liner's edges. */
    final Color lining() {
        return lining.getValue();
    }

    final Color words() {
        return words.getValue();
    }

    /** Beside the liner's edges. */
    final Color shadow() {
        return shadow.getValue();
    }

    /** Behind words on the map, and around it. */
    final Color ground() {
        return ground.getValue();
    }

    /** Of air without pressure in it; only its lightness counts. */
    final Color still() {
        return still.getValue();
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return STYLES.getCssMetaData();
    }
}
