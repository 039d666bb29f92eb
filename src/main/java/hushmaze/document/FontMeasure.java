package hushmaze.document;

import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/** Text widths from the bundled fonts: the sum of the letters' advance widths, as the PDF sets them. */
public final class FontMeasure implements TextMeasure {
    private static final int STAND_IN = '?';

    private final Map<Weight, Map<Integer, Double>> advances = new EnumMap<>(Weight.class);
    private final Map<Weight, CmapLookup> glyphs = new EnumMap<>(Weight.class);
    private final Map<Weight, TrueTypeFont> fonts = new EnumMap<>(Weight.class);

    public FontMeasure() {
        for (Weight weight : Weight.values()) {
            TrueTypeFont font = FontFiles.open(weight);
            fonts.put(weight, font);
            advances.put(weight, new ConcurrentHashMap<>());
            try {
                glyphs.put(weight, font.getUnicodeCmapLookup());
            } catch (IOException e) {
                throw new UncheckedIOException("a font without a character map", e);
            }
        }
    }

    @Override
    public double width(String text, double size, Weight weight) {
        Map<Integer, Double> known = advances.get(weight);
        double total = 0;
        for (int c : printable(text, weight).codePoints().toArray()) {
            total += known.computeIfAbsent(c, k -> advance(k, weight));
        }
        return total * size;
    }

    /** The text with a question mark for every character the font does not have, and blanks for line breaks. */
    String printable(String text, Weight weight) {
        CmapLookup lookup = glyphs.get(weight);
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> Character.isWhitespace(c) ? ' ' : c)
                .map(c -> lookup.getGlyphId(c) == 0 ? STAND_IN : c)
                .forEach(clean::appendCodePoint);
        return clean.toString();
    }

    private double advance(int character, Weight weight) {
        TrueTypeFont font = fonts.get(weight);
        synchronized (font) {
            try {
                return (double) font.getAdvanceWidth(glyphs.get(weight).getGlyphId(character)) / font.getUnitsPerEm();
            } catch (IOException e) {
                throw new UncheckedIOException("a font without advance widths", e);
            }
        }
    }
}
