package hushmaze.app.sheet;

import hushmaze.drawing.Weight;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.text.Font;

/** The documents' own fonts, for the screen. */
public final class ScreenFonts {
    private static final Map<Weight, String> NAMES = new EnumMap<>(Map.of(
            Weight.REGULAR, load("SourceSans3_400Regular.ttf"),
            Weight.SEMIBOLD, load("SourceSans3_600SemiBold.ttf"),
            Weight.ITALIC, load("SourceSans3_400Regular_Italic.ttf")));

    private ScreenFonts() {}

    /** A font whose em has the given size in pixels. */
    static Font of(Weight weight, double size) {
        return new Font(NAMES.get(weight), size);
    }

    /** Makes the fonts known to style sheets. */
    public static void load() {
        of(Weight.REGULAR, 1);
    }

    private static String load(String file) {
        try (InputStream in = ScreenFonts.class.getResourceAsStream("/hushmaze/fonts/" + file)) {
            Font font = in == null ? null : Font.loadFont(in, 12);
            if (font == null) {
                throw new IllegalStateException("the program's own font is missing: " + file);
            }
            return font.getName();
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own font cannot be read: " + file, e);
        }
    }
}
