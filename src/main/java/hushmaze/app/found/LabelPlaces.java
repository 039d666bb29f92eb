package hushmaze.app.found;

import hushmaze.drawing.Bounds;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds places for the words beside the dots of a chart: never over a dot or over other words, never outside the room there is. A place
 * is beside its dot where that is free, else as near as there is one.
 */
final class LabelPlaces {
    /** Between a dot and its words, mm. */
    static final double GAP = 2.6;

    /** Parts of a row by which words may stand higher or lower. */
    private static final double PARTS = 4;
    /** Parts of the width by which words that are above or below their dot may be moved sideways. */
    private static final int ACROSS = 12;

    private final Bounds room;
    private final double row;
    private final List<Bounds> taken = new ArrayList<>();

    /**
     * @param room for words, mm
     * @param row height of one line of words, mm
     */
    LabelPlaces(Bounds room, double row) {
        this.room = room;
        this.row = row;
    }

    /** Keeps a place free of words. */
    void keepFree(Bounds place) {
        taken.add(place);
    }

    /**
     * The place for words, which is taken from then on.
     *
     * @param x of the dot
     * @param y of the dot
     * @param wide width of the words
     */
    Bounds place(double x, double y, double wide) {
        Bounds best = null;
        double least = Double.POSITIVE_INFINITY;
        int steps = (int) Math.ceil(PARTS * (room.y1() - room.y0()) / row);
        for (int step = -steps; step <= steps; step++) {
            double middle = y + step * row / PARTS;
            for (double left : lefts(x, wide)) {
                Bounds b = new Bounds(left, middle - row / 2, left + wide, middle + row / 2);
                double far = far(b, x, y);
                if (far < least && isFree(b)) {
                    best = b;
                    least = far;
                }
            }
        }
        if (best == null) {
            // more words than the room has places for: the dot's right, kept inside
            double left = Math.max(room.x0(), Math.min(x + GAP, room.x1() - wide));
            best = new Bounds(left, y - row / 2, left + wide, y + row / 2);
        }
        taken.add(best);
        return best;
    }

    private List<Double> lefts(double x, double wide) {
        List<Double> lefts = new ArrayList<>(List.of(x + GAP, x - GAP - wide, x - wide / 2));
        double last = room.x1() - wide;
        for (int i = 0; i <= ACROSS; i++) {
            lefts.add(room.x0() + i * (last - room.x0()) / ACROSS);
        }
        return lefts;
    }

    /** How far the nearest edge of words is from their dot; rows count more, and the right is better than the left. */
    private static double far(Bounds b, double x, double y) {
        double across = Math.max(0, Math.max(b.x0() - x, x - b.x1()));
        return across + 2 * Math.abs(b.centreY() - y) + (b.x0() > x ? 0 : 0.3);
    }

    private boolean isFree(Bounds b) {
        boolean inside = b.x0() >= room.x0() && b.x1() <= room.x1() && b.y0() >= room.y0() && b.y1() <= room.y1();
        return inside && taken.stream().noneMatch(b::overlaps);
    }
}
