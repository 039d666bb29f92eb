package hushmaze.drawing.axon;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Marks beside a picture, left and right of it, each with a leader to its part.
 *
 * <p>The marks stand outside the convex hull of the picture, so that no leader meets a mark of another; those of the left half go
 * to the left. Two leaders that would cross change their places, which makes them shorter together, so that the changing ends.
 */
public final class Marks {
    /** From the hull to the end of a leader, mm. */
    private static final double OFF = 4;
    /** From the end of a leader to its mark, mm. */
    private static final double GAP = 0.9;
    /** Distance of two marks as a share of their size. */
    private static final double PITCH = 1.3;

    private static final double DOT = 0.5;

    /**
     * A mark.
     *
     * @param text what is written
     * @param at point of its part, mm
     */
    public record Mark(String text, Point at) {}

    private final List<Point> hull;
    private final double size;
    private final double low;
    private final double high;

    /**
     * @param around points of the picture, mm
     * @param size of the lettering, mm
     */
    public Marks(List<Point> around, double size) {
        this.hull = hull(around);
        this.size = size;
        this.low = hull.stream().mapToDouble(Point::y).min().orElseThrow();
        this.high = hull.stream().mapToDouble(Point::y).max().orElseThrow();
    }

    /** How far marks stand out beside the picture, mm. */
    public static double room(List<String> texts, double size, TextMeasure measure) {
        double widest = texts.stream()
                .mapToDouble(t -> measure.width(t, size, hushmaze.drawing.Weight.REGULAR))
                .max()
                .orElse(0);
        return OFF + GAP + widest;
    }

    /** Draws the marks. */
    public void draw(Sketch sketch, List<Mark> marks) {
        List<Mark> across = new ArrayList<>(marks);
        across.sort(Comparator.comparingDouble(m -> m.at().x()));
        int half = (across.size() + 1) / 2;
        side(sketch, across.subList(0, half), -1);
        side(sketch, across.subList(half, across.size()), 1);
    }

    private void side(Sketch sketch, List<Mark> marks, int out) {
        List<Mark> down = new ArrayList<>(marks);
        down.sort(Comparator.comparingDouble(m -> m.at().y()));
        List<Point> ends = ends(down, out);
        uncross(down, ends);
        for (int i = 0; i < down.size(); i++) {
            Point at = down.get(i).at();
            Point end = ends.get(i);
            sketch.line(at.x(), at.y(), end.x(), end.y(), Stroke.THIN);
            sketch.dot(at.x(), at.y(), DOT, Ink.BLACK);
            double foot = end.y() + size * TextMeasure.CAPITAL / 2;
            sketch.text(end.x() + out * GAP, foot, down.get(i).text(), size, out < 0 ? Anchor.END : Anchor.START);
        }
    }

    /** Where leaders end, from the top down, as near to the heights of their parts as the pitch allows. */
    private List<Point> ends(List<Mark> down, int out) {
        double pitch = size * PITCH;
        double[] y = new double[down.size()];
        double next = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < y.length; i++) {
            y[i] = Math.max(down.get(i).at().y(), next);
            next = y[i] + pitch;
        }
        // What was pushed beyond the foot goes back up; with too many marks the column sticks out at both ends.
        double over = (y.length - 1) * pitch - (high - low);
        double limit = high + Math.max(0, over / 2);
        for (int i = y.length - 1; i >= 0; i--) {
            y[i] = Math.min(y[i], limit);
            limit = y[i] - pitch;
        }
        List<Point> ends = new ArrayList<>();
        for (double at : y) {
            ends.add(new Point(beside(at, out) + out * OFF, at));
        }
        return ends;
    }

    /** How far the hull reaches to one side in the band of height of a mark, mm. */
    private double beside(double y, int out) {
        double half = size * PITCH / 2;
        double clampedLow = Math.min(Math.max(y - half, low), high);
        double clampedHigh = Math.max(Math.min(y + half, high), low);
        double best = Double.NEGATIVE_INFINITY;
        for (Point p : hull) {
            if (p.y() >= clampedLow && p.y() <= clampedHigh) {
                best = Math.max(best, out * p.x());
            }
            for (Point q : hull) {
                for (double at : new double[] {clampedLow, clampedHigh}) {
                    if (p.y() <= at && q.y() >= at && q.y() > p.y()) {
                        double share = (at - p.y()) / (q.y() - p.y());
                        best = Math.max(best, out * (p.x() + share * (q.x() - p.x())));
                    }
                }
            }
        }
        return out * best;
    }

    private static void uncross(List<Mark> marks, List<Point> ends) {
        boolean changed = true;
        for (int round = 0; changed && round < marks.size() * marks.size(); round++) {
            changed = false;
            for (int i = 0; i < marks.size(); i++) {
                for (int k = 0; k < i; k++) {
                    if (cross(marks.get(i).at(), ends.get(i), marks.get(k).at(), ends.get(k))) {
                        Mark other = marks.get(i);
                        marks.set(i, marks.get(k));
                        marks.set(k, other);
                        changed = true;
                    }
                }
            }
        }
    }

    /** Whether two stretches cross. */
    static boolean cross(Point p, Point q, Point r, Point s) {
        return turn(p, q, r) * turn(p, q, s) < 0 && turn(r, s, p) * turn(r, s, q) < 0;
    }

    private static double turn(Point p, Point q, Point r) {
        return (q.x() - p.x()) * (r.y() - p.y()) - (q.y() - p.y()) * (r.x() - p.x());
    }

    /** The corners of the convex hull of some points, in order. */
    public static List<Point> hull(List<Point> points) {
        List<Point> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
        List<Point> hull = new ArrayList<>(chain(sorted));
        java.util.Collections.reverse(sorted);
        hull.addAll(chain(sorted));
        return hull;
    }

    private static List<Point> chain(List<Point> sorted) {
        List<Point> chain = new ArrayList<>();
        for (Point p : sorted) {
            while (chain.size() > 1 && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), p) <= 1e-9) {
                chain.remove(chain.size() - 1);
            }
            chain.add(p);
        }
        return chain.subList(0, chain.size() - 1);
    }
}
