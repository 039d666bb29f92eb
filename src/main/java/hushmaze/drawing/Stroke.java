package hushmaze.drawing;

import java.util.List;

/**
 * How a line is drawn. There are two widths, the thick one twice the thin one, and three patterns, after the practice
 * of ISO 128: continuous, dashed for hidden edges, chain for centre lines. What width a page's thin line has is said by
 * the page.
 *
 * @param thick outline or thin line
 * @param pattern of dashes
 * @param ink colour
 */
public record Stroke(boolean thick, Pattern pattern, Ink ink) {
    /** Patterns of dashes. */
    public enum Pattern {
        CONTINUOUS(List.of()),
        /** Hidden edges. */
        DASHED(List.of(2.4, 0.9)),
        /** Centre lines and lines of symmetry. */
        CHAIN(List.of(5.0, 0.9, 0.5, 0.9)),
        /** A second dashed pattern, for charts. */
        DOTTED(List.of(0.5, 0.9));

        private final List<Double> dashes;

        Pattern(List<Double> dashes) {
            this.dashes = dashes;
        }

        /** Lengths of dash and gap in turn, mm; empty for a continuous line. */
        public List<Double> dashes() {
            return dashes;
        }
    }

    /** Visible outline. */
    public static final Stroke OUTLINE = new Stroke(true, Pattern.CONTINUOUS, Ink.BLACK);
    /** Dimension, extension and leader lines, hatching. */
    public static final Stroke THIN = new Stroke(false, Pattern.CONTINUOUS, Ink.BLACK);
    /** Hidden edge. */
    public static final Stroke HIDDEN = new Stroke(false, Pattern.DASHED, Ink.BLACK);
    /** Centre line. */
    public static final Stroke CENTRE = new Stroke(false, Pattern.CHAIN, Ink.BLACK);
    /** Rule of a table, grid line of a chart. */
    public static final Stroke RULE = new Stroke(false, Pattern.CONTINUOUS, Ink.LIGHT);

    /** The same line in another colour. */
    public Stroke in(Ink other) {
        return new Stroke(thick, pattern, other);
    }

    /** Width in mm on a page whose thin line has the given width. */
    public double width(double thin) {
        return thick ? 2 * thin : thin;
    }
}
