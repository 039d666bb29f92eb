package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import java.util.ArrayList;
import java.util.List;

/**
 * A row of dimensions along one side of a view.
 *
 * <p>After the practice of ISO 129 (distances and heads as read in textbook accounts): the first dimension line keeps
 * 10 mm from the outline, further ones 8 mm from it; the figures stand above the line and read from below or from the
 * right. Where a stretch is too short for its heads, dots take their place; where it is too short for its figure, the
 * figure is set beyond the line, across it, with a leader.
 */
public final class DimensionChain {
    /** First dimension line from the outline, mm. */
    public static final double FIRST = 10;
    /** Next dimension line from the one before, mm. */
    public static final double NEXT = 8;

    private static final double SIZE = Lettering.DIMENSION;
    private static final double ABOVE = 0.9;
    private static final double GAP = 1;
    private static final double PAST = 1.6;
    private static final double DOT = 0.55;
    private static final double LEADER = 4.5;
    /** Room one figure set across the line needs along it. */
    private static final double PITCH = SIZE * 1.12;

    /** Side of the view the chain is on. */
    public enum Side {
        ABOVE,
        BELOW,
        LEFT,
        RIGHT;

        boolean horizontal() {
            return this == ABOVE || this == BELOW;
        }

        /** Direction away from the view. */
        double outwards() {
            return this == ABOVE || this == LEFT ? -1 : 1;
        }
    }

    private final Side side;
    private final double outline;
    private final double line;
    private final TextMeasure measure;
    private final Sketch sketch;

    /**
     * @param side of the view
     * @param outline where the view ends on that side: a y for chains above and below, else an x, mm
     * @param distance of the dimension line from the outline, mm
     */
    public DimensionChain(Sketch sketch, TextMeasure measure, Side side, double outline, double distance) {
        this.sketch = sketch;
        this.measure = measure;
        this.side = side;
        this.outline = outline;
        this.line = outline + side.outwards() * distance;
    }

    /**
     * Draws the chain.
     *
     * @param places where the stretches begin and end along the chain, ascending, mm on paper
     * @param figures one for each stretch
     * @return how far the next dimension line must keep from the outline, mm
     */
    public double draw(List<Double> places, List<String> figures) {
        if (places.size() != figures.size() + 1) {
            throw new IllegalArgumentException(places.size() + " places for " + figures.size() + " figures");
        }
        for (double place : places) {
            put(place, outline + side.outwards() * GAP, place, line + side.outwards() * PAST);
        }
        put(places.get(0), line, places.get(places.size() - 1), line);
        heads(places);
        List<Integer> outside = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            double room = places.get(i + 1) - places.get(i);
            if (measure.width(figures.get(i), SIZE, Weight.REGULAR) + 1 <= room) {
                inside((places.get(i) + places.get(i + 1)) / 2, figures.get(i));
            } else {
                outside.add(i);
            }
        }
        return Math.abs(line - outline) + outside(places, figures, outside);
    }

    private void heads(List<Double> places) {
        int last = places.size() - 1;
        for (int i = 0; i <= last; i++) {
            boolean before = i > 0 && roomy(places, i - 1);
            boolean after = i < last && roomy(places, i);
            if (before) {
                head(places.get(i), 1);
            }
            if (after) {
                head(places.get(i), -1);
            }
            if (!before && !after) {
                double x = side.horizontal() ? places.get(i) : line;
                double y = side.horizontal() ? line : places.get(i);
                sketch.dot(x, y, DOT, Ink.BLACK);
            }
        }
    }

    private static boolean roomy(List<Double> places, int stretch) {
        return places.get(stretch + 1) - places.get(stretch) >= 2 * Arrow.LENGTH + 1;
    }

    private void head(double place, double direction) {
        if (side.horizontal()) {
            Arrow.head(sketch, place, line, direction, 0, Ink.BLACK);
        } else {
            Arrow.head(sketch, line, place, 0, direction, Ink.BLACK);
        }
    }

    private void inside(double centre, String figure) {
        if (side.horizontal()) {
            sketch.text(centre, line - ABOVE, figure, SIZE, Anchor.MIDDLE);
        } else {
            sketch.textUp(line - ABOVE, centre, figure, SIZE, Anchor.MIDDLE);
        }
    }

    /** Sets figures beyond the line; returns how far the next line must keep from this one. */
    private double outside(List<Double> places, List<String> figures, List<Integer> which) {
        double next = NEXT;
        double[] wished = which.stream()
                .mapToDouble(i -> (places.get(i) + places.get(i + 1)) / 2)
                .toArray();
        // Half a figure's room inside the ends, so that the lines of a further chain pass beside the figures.
        double low = places.get(0) + PITCH / 2;
        double[] set = Spread.apart(wished, PITCH, low, places.get(places.size() - 1) - PITCH / 2);
        double out = side.outwards();
        for (int k = 0; k < set.length; k++) {
            double knee = line + out * LEADER;
            put(wished[k], line, set[k], knee);
            // The middle of the figures' height, not their foot, belongs on the leader.
            double foot = set[k] + SIZE * TextMeasure.CAPITAL / 2;
            String figure = figures.get(which.get(k));
            Anchor anchor = out > 0 == !side.horizontal() ? Anchor.START : Anchor.END;
            if (side.horizontal()) {
                sketch.textUp(foot, knee + out * 0.6, figure, SIZE, anchor);
            } else {
                sketch.text(knee + out * 0.6, foot, figure, SIZE, anchor);
            }
            next = Math.max(next, LEADER + measure.width(figure, SIZE, Weight.REGULAR) + NEXT * 0.75);
        }
        return next;
    }

    /** A thin line between two places, each given along the chain and across it. */
    private void put(double along1, double across1, double along2, double across2) {
        sketch.add(
                side.horizontal()
                        ? new Shape.Line(along1, across1, along2, across2, Stroke.THIN)
                        : new Shape.Line(across1, along1, across2, along2, Stroke.THIN));
    }
}
