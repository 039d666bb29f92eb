package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table to be filled in by hand: some cells are printed, the others are boxes to write in. It stays in one piece. */
public final class FormTable implements Block {
    private static final double SIZE = Lettering.TABLE;
    private static final double LINE = SIZE * 1.28;
    private static final double PADDING = 0.9;
    private static final double BETWEEN = 2.6;

    /**
     * A column.
     *
     * @param head its heading; wraps
     * @param share of the width that columns of printed figures leave; 0 for such a column, which is as wide as its contents
     */
    public record Column(String head, double share) {}

    private final TextMeasure measure;
    private final double leastHeight;
    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    /**
     * @param leastHeight of a row, mm: room for handwriting
     */
    public FormTable(TextMeasure measure, double leastHeight, List<Column> columns) {
        this.measure = measure;
        this.leastHeight = leastHeight;
        this.columns = List.copyOf(columns);
    }

    /** Adds a row; null stands for a box to write in. */
    public FormTable row(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + columns.size() + " columns");
        }
        rows.add(Arrays.asList(cells.clone()));
        return this;
    }

    @Override
    public List<Row> rows(double width) {
        double[] widths = widths(width);
        List<Row> strips = new ArrayList<>();
        strips.add(head(widths, width));
        for (int i = 0; i < rows.size(); i++) {
            strips.add(strip(rows.get(i), widths, width, i < rows.size() - 1));
        }
        return strips;
    }

    private double[] widths(double width) {
        double[] widths = new double[columns.size()];
        double left = width - BETWEEN * (widths.length - 1);
        double shares = 0;
        for (int c = 0; c < widths.length; c++) {
            Column column = columns.get(c);
            shares += column.share();
            if (column.share() == 0) {
                widths[c] = natural(c);
                left -= widths[c];
            }
        }
        for (int c = 0; c < widths.length; c++) {
            if (columns.get(c).share() > 0) {
                widths[c] = left * columns.get(c).share() / shares;
            }
        }
        return widths;
    }

    private double natural(int c) {
        double widest = Arrays.stream(columns.get(c).head().split(" "))
                .mapToDouble(word -> measure.width(word, SIZE, Weight.SEMIBOLD))
                .max()
                .orElse(0);
        for (List<String> row : rows) {
            if (row.get(c) != null) {
                widest = Math.max(widest, measure.width(row.get(c), SIZE, Weight.REGULAR));
            }
        }
        return widest + 1e-6;
    }

    /** Printed figures end at the right of their column, words and what is over boxes begins at its left. */
    private Anchor anchor(int c) {
        return c > 0 && columns.get(c).share() == 0 ? Anchor.END : Anchor.START;
    }

    private Row head(double[] widths, double width) {
        Sketch sketch = new Sketch();
        int most = 1;
        for (int c = 0; c < widths.length; c++) {
            most = Math.max(
                    most,
                    lines(columns.get(c).head(), widths[c], Weight.SEMIBOLD).size());
        }
        double height = most * LINE + 2 * PADDING;
        double x = 0;
        for (int c = 0; c < widths.length; c++) {
            List<String> lines = lines(columns.get(c).head(), widths[c], Weight.SEMIBOLD);
            double first = height - PADDING - lines.size() * LINE;
            words(sketch, lines, x + anchor(c).share() * widths[c], first, Weight.SEMIBOLD, anchor(c));
            x += widths[c] + BETWEEN;
        }
        sketch.line(0, height, width, height, Stroke.THIN);
        return new Row(2, height, true, null, sketch);
    }

    private Row strip(List<String> cells, double[] widths, double width, boolean keep) {
        Sketch sketch = new Sketch();
        double height = leastHeight;
        for (int c = 0; c < widths.length; c++) {
            if (cells.get(c) != null) {
                int lines = lines(cells.get(c), widths[c], Weight.REGULAR).size();
                height = Math.max(height, lines * LINE + 2 * PADDING);
            }
        }
        sketch.line(0, height, width, height, Stroke.RULE);
        double x = 0;
        for (int c = 0; c < widths.length; c++) {
            if (cells.get(c) == null) {
                double left = Math.max(0, x - BETWEEN / 2);
                double right = Math.min(width, x + widths[c] + BETWEEN / 2);
                sketch.rectangle(new Bounds(left, 0, right, height), Stroke.THIN.in(Ink.GREY), Ink.WHITE);
            } else {
                List<String> lines = lines(cells.get(c), widths[c], Weight.REGULAR);
                double first = (height - lines.size() * LINE) / 2;
                words(sketch, lines, x + anchor(c).share() * widths[c], first, Weight.REGULAR, anchor(c));
            }
            x += widths[c] + BETWEEN;
        }
        return new Row(0, height, keep, null, sketch);
    }

    private List<String> lines(String text, double width, Weight weight) {
        return Wrap.lines(text, width + 1e-6, SIZE, weight, measure);
    }

    private static void words(Sketch sketch, List<String> lines, double x, double top, Weight weight, Anchor anchor) {
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isEmpty()) {
                double foot = top + SIZE * 0.92 + i * LINE;
                sketch.text(x, foot, lines.get(i), SIZE, weight, anchor, Ink.BLACK);
            }
        }
    }
}
