package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table with ruled rows. Columns are as wide as what is in them; what is missing is taken from, and what is left over
 * given to, the columns that wrap. The head is repeated where the table goes on in the next column or page.
 */
public final class Table implements Block {
    private static final double SIZE = Lettering.TABLE;
    private static final double LINE = SIZE * 1.28;
    private static final double PADDING = 0.75;
    /** Padding of a table of many short rows. */
    private static final double DENSE = 0.3;

    private static final double BETWEEN = 3.2;
    private static final int HALVINGS = 40;

    /**
     * A column.
     *
     * @param head its heading
     * @param anchor START for words, END for numbers
     * @param wraps whether it may be narrower or wider than its longest text
     */
    public record Column(String head, Anchor anchor, boolean wraps) {
        /** Words that may wrap. */
        public static Column words(String head) {
            return new Column(head, Anchor.START, true);
        }

        /** A short name that stays on one line. */
        public static Column name(String head) {
            return new Column(head, Anchor.START, false);
        }

        /** Numbers. */
        public static Column number(String head) {
            return new Column(head, Anchor.END, false);
        }
    }

    private final TextMeasure measure;
    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<Boolean> strong = new ArrayList<>();
    private double padding = PADDING;
    private boolean whole;

    public Table(TextMeasure measure, List<Column> columns) {
        this.measure = measure;
        this.columns = List.copyOf(columns);
    }

    /** Sets the rows closer, so that many go on one page. */
    public Table dense() {
        padding = DENSE;
        return this;
    }

    /** Keeps all rows in one column, if there is one that takes them. */
    public Table whole() {
        whole = true;
        return this;
    }

    /** Adds a row. */
    public Table row(String... cells) {
        return row(false, cells);
    }

    /** Adds a row in semibold, for totals. */
    public Table strong(String... cells) {
        return row(true, cells);
    }

    private Table row(boolean semibold, String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + columns.size() + " columns");
        }
        rows.add(List.of(cells));
        strong.add(semibold);
        return this;
    }

    @Override
    public List<Row> rows(double width) {
        return rows(width, 1);
    }

    @Override
    public List<Row> rows(double width, double air) {
        double padding = Math.max(DENSE, air * this.padding);
        double[] widths = widths(width);
        List<String> heads = columns.stream().map(Column::head).toList();
        Row head = strip(heads, widths, padding, Weight.SEMIBOLD, width, Stroke.THIN, true, null, 2);
        List<Row> strips = new ArrayList<>();
        strips.add(head);
        for (int i = 0; i < rows.size(); i++) {
            Weight weight = strong.get(i) ? Weight.SEMIBOLD : Weight.REGULAR;
            // The first three rows stay together, and the last two, so that none stands alone under a head.
            boolean keep = i < 2 || i == rows.size() - 2 || (whole && i < rows.size() - 1);
            strips.add(strip(rows.get(i), widths, padding, weight, width, Stroke.RULE, keep, head, 0));
        }
        return strips;
    }

    private Row strip(
            List<String> cells,
            double[] widths,
            double padding,
            Weight weight,
            double width,
            Stroke rule,
            boolean keep,
            Row header,
            double gap) {
        Sketch sketch = new Sketch();
        int most = 1;
        double x = 0;
        for (int c = 0; c < widths.length; c++) {
            Column column = columns.get(c);
            List<String> lines = Wrap.lines(cells.get(c), widths[c] + 1e-6, SIZE, weight, measure);
            double at = x + column.anchor().share() * widths[c];
            for (int i = 0; i < lines.size(); i++) {
                if (!lines.get(i).isEmpty()) {
                    double foot = padding + SIZE * 0.92 + i * LINE;
                    sketch.text(at, foot, lines.get(i), SIZE, weight, column.anchor(), Ink.BLACK);
                }
            }
            most = Math.max(most, lines.size());
            x += widths[c] + BETWEEN;
        }
        double height = most * LINE + 2 * padding;
        sketch.line(0, height, width, height, rule);
        return new Row(gap, height, keep, header, sketch);
    }

    private double[] widths(double width) {
        double[] natural = new double[columns.size()];
        double[] least = new double[columns.size()];
        for (int c = 0; c < natural.length; c++) {
            natural[c] = widest(c, false);
            least[c] = columns.get(c).wraps() ? widest(c, true) : natural[c];
        }
        double room = width - BETWEEN * (natural.length - 1);
        double spare = room - Arrays.stream(natural).sum();
        if (spare < 0) {
            return squeezed(natural, least, room);
        }
        boolean anyWraps = columns.stream().anyMatch(Column::wraps);
        long sharing = anyWraps ? columns.stream().filter(Column::wraps).count() : columns.size();
        double[] result = natural.clone();
        for (int c = 0; c < result.length; c++) {
            // A table of numbers alone is spread evenly; the first column takes no share of it.
            if (!anyWraps && c > 0) {
                result[c] += spare / Math.max(1, sharing - 1);
            } else if (anyWraps && columns.get(c).wraps()) {
                result[c] += spare / sharing;
            }
        }
        return result;
    }

    /**
     * Makes the widest columns narrower, all to the same width, until the table fits; none narrower than its longest word
     * unless that is not enough.
     */
    private static double[] squeezed(double[] natural, double[] least, double room) {
        double low = 0;
        double high = Arrays.stream(natural).max().orElse(0);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (Arrays.stream(limited(natural, least, middle)).sum() > room) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double[] result = limited(natural, least, low);
        double sum = Arrays.stream(result).sum();
        return sum <= room
                ? result
                : Arrays.stream(result).map(w -> w * room / sum).toArray();
    }

    private static double[] limited(double[] natural, double[] least, double limit) {
        double[] result = new double[natural.length];
        for (int c = 0; c < result.length; c++) {
            result[c] = Math.max(least[c], Math.min(natural[c], limit));
        }
        return result;
    }

    private double widest(int column, boolean word) {
        double widest = widestOf(columns.get(column).head(), word, Weight.SEMIBOLD);
        for (int i = 0; i < rows.size(); i++) {
            Weight weight = strong.get(i) ? Weight.SEMIBOLD : Weight.REGULAR;
            widest = Math.max(widest, widestOf(rows.get(i).get(column), word, weight));
        }
        return widest;
    }

    private double widestOf(String text, boolean word, Weight weight) {
        if (!word) {
            return measure.width(text, SIZE, weight);
        }
        return Arrays.stream(Wrap.words(text))
                .mapToDouble(w -> measure.width(w, SIZE, weight))
                .max()
                .orElse(0);
    }
}
