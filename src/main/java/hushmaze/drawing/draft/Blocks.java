package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Makes the blocks of a text page. */
public final class Blocks {
    private static final double BULLET_INDENT = 4.2;
    /** How much lower and higher than it should be a chart may become. */
    private static final double LOWER = 0.85;

    private static final double HIGHER = 2;

    /** Draws something of a width and a height, mm, its upper left corner at the origin. */
    public interface Drawn {
        Sketch draw(double width, double height);
    }

    private final TextMeasure measure;
    private final double textSize;

    public Blocks(TextMeasure measure) {
        this(measure, Lettering.TEXT);
    }

    /**
     * @param textSize of paragraphs and bullets, mm
     */
    public Blocks(TextMeasure measure, double textSize) {
        this.measure = measure;
        this.textSize = textSize;
    }

    /** The page's title. */
    public Block title(String text) {
        return width -> List.of(strip(text, width, Lettering.TITLE, Weight.SEMIBOLD, 9, true));
    }

    /** A heading with a rule under it. */
    public Block heading(String text) {
        return width -> {
            Row words = strip(text, width, Lettering.HEADING, Weight.SEMIBOLD, 4.8, true);
            Sketch ruled = words.content().get();
            ruled.line(0, words.height() + 0.6, width, words.height() + 0.6, Stroke.RULE);
            return List.of(
                    new Row(words.gap(), words.height() + 0.6, true, null, ruled),
                    new Row(0, 2, true, null, new Sketch()));
        };
    }

    /** A paragraph. */
    public Block paragraph(String text) {
        return width -> lines(text, width, 0, textSize, Weight.REGULAR, Ink.BLACK, 2);
    }

    /** A remark in small grey letters. */
    public Block remark(String text) {
        return width -> lines(text, width, 0, Lettering.SMALL, Weight.REGULAR, Ink.GREY, 1.6);
    }

    /** A paragraph that hangs from a dot. */
    public Block bullet(String text) {
        return bullet(text, Ink.BLACK);
    }

    /** A paragraph that hangs from a dot of the given colour. */
    public Block bullet(String text, Ink ink) {
        return width -> {
            List<Row> rows = lines(text, width, BULLET_INDENT, textSize, Weight.REGULAR, Ink.BLACK, 0.9);
            rows.get(0).content().get().dot(1.2, textSize * 0.78, 0.65, ink);
            return rows;
        };
    }

    /** A drawing of fixed height, kept in one piece. */
    public Block figure(double gap, double height, DoubleFunction<Sketch> drawnAtWidth) {
        return width -> List.of(new Row(gap, height, false, null, drawnAtWidth.apply(width)));
    }

    /** A chart, somewhat lower or higher than it should be where that saves or fills a page. */
    public Block chart(double gap, double height, Drawn drawn) {
        return chart(gap, height, drawn, false);
    }

    /** A chart and what is said of it below, in one piece. */
    public Block chart(double gap, double height, Drawn drawn, String remark) {
        Block chart = chart(gap, height, drawn, true);
        return width -> {
            List<Row> rows = new ArrayList<>(chart.rows(width));
            rows.addAll(remark(remark).rows(width));
            return rows;
        };
    }

    private static Block chart(double gap, double height, Drawn drawn, boolean keep) {
        return width -> List.of(new Row(
                gap,
                height,
                keep,
                null,
                () -> drawn.draw(width, height),
                new Stretch(LOWER * height, HIGHER * height, false, other -> drawn.draw(width, other))));
    }

    /** A drawing that takes what is left of its page. */
    public Block filling(double gap, double least, Drawn drawn) {
        return width -> List.of(new Row(
                gap,
                least,
                false,
                null,
                () -> drawn.draw(width, least),
                new Stretch(least, Double.MAX_VALUE, true, other -> drawn.draw(width, other))));
    }

    /** A drawing as high as it comes out, from its origin downwards, kept in one piece. */
    public Block sized(double gap, DoubleFunction<Sketch> drawnAtWidth) {
        return width -> {
            Sketch sketch = drawnAtWidth.apply(width);
            return List.of(new Row(gap, sketch.bounds(measure).y1(), false, null, sketch));
        };
    }

    private List<Row> lines(String text, double width, double indent, double size, Weight weight, Ink ink, double gap) {
        List<String> lines = Wrap.lines(text, width - indent, size, weight, measure);
        List<Row> rows = new ArrayList<>();
        double height = size * Lettering.LEADING;
        for (int i = 0; i < lines.size(); i++) {
            Sketch sketch = new Sketch();
            sketch.text(indent, size, lines.get(i), size, weight, Anchor.START, ink);
            // No line of a short paragraph and neither of the outer lines of a long one stands alone.
            boolean keep = i < lines.size() - 1 && (lines.size() < 4 || i == 0 || i == lines.size() - 2);
            rows.add(new Row(i == 0 ? gap : 0, height, keep, null, sketch));
        }
        return rows;
    }

    private Row strip(String text, double width, double size, Weight weight, double gap, boolean keep) {
        Sketch sketch = new Sketch();
        List<String> lines = Wrap.lines(text, width, size, weight, measure);
        double height = size * Lettering.LEADING;
        for (int i = 0; i < lines.size(); i++) {
            sketch.text(0, size + i * height, lines.get(i), size, weight, Anchor.START, Ink.BLACK);
        }
        return new Row(gap, lines.size() * height, keep, null, sketch);
    }
}
