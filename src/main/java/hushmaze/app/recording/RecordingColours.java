package hushmaze.app.recording;

import java.util.List;
import java.util.function.Function;
import javafx.beans.Observable;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/** A region that has the colours of everything in and around the picture of a recording from the style sheet. */
class RecordingColours extends Region {
    private static final StyleablePropertyFactory<RecordingColours> STYLES =
            new StyleablePropertyFactory<>(Region.getClassCssMetaData());

    private final StyleableProperty<Color> wave = colour("wave", s -> s.wave);
    private final StyleableProperty<Color> full = colour("full", s -> s.full);
    private final StyleableProperty<Color> line = colour("line", s -> s.line);
    private final StyleableProperty<Color> words = colour("words", s -> s.words);
    private final StyleableProperty<Color> shade = colour("shade", s -> s.shade);
    private final StyleableProperty<Color> edge = colour("edge", s -> s.edge);

    private StyleableProperty<Color> colour(String name, Function<RecordingColours, StyleableProperty<Color>> get) {
        StyleableProperty<Color> property =
                STYLES.createStyleableColorProperty(this, name, "-recording-" + name, get, Color.GRAY);
        ((Observable) property).addListener(o -> requestLayout());
        return property;
    }

    final Color wave() {
        return wave.getValue();
    }

    /** Of the wave where samples were at full scale. */
    final Color full() {
        return full.getValue();
    }

    /** Of frames and ticks. */
    final Color line() {
        return line.getValue();
    }

    final Color words() {
        return words.getValue();
    }

    /** Laid over what is not chosen. */
    final Color shade() {
        return shade.getValue();
    }

    /** Of the lines at both ends of the part that is chosen. */
    final Color edge() {
        return edge.getValue();
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return STYLES.getCssMetaData();
    }
}
