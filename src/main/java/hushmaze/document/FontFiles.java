package hushmaze.document;

import hushmaze.drawing.Weight;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The bundled fonts. */
final class FontFiles {
    private static final Map<Weight, String> NAMES = new EnumMap<>(Map.of(
            Weight.REGULAR, "SourceSans3_400Regular.ttf",
            Weight.SEMIBOLD, "SourceSans3_600SemiBold.ttf",
            Weight.ITALIC, "SourceSans3_400Regular_Italic.ttf"));

    private FontFiles() {}

    /** A font, freshly read. */
    static TrueTypeFont open(Weight weight) {
        String name = "/hushmaze/fonts/" + NAMES.get(weight);
        try (InputStream in = FontFiles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program's own font is missing: " + name);
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
            // Ligatures would make a text narrower than it was measured, and looking for them takes most of the time.
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own font cannot be read: " + name, e);
        }
    }
}
