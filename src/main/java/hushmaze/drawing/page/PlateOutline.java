package hushmaze.drawing.page;

import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.solid.Cutout;
import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a rectangular part with rectangles taken out of it. Where a cut-out reaches the edge, the edge is open.
 * Drawn with its lower left corner at the origin and its second direction upwards.
 */
public final class PlateOutline {
    private static final double SAME = 1e-7;

    private final double length;
    private final double width;
    private final List<Cutout> cutouts;

    /** All in metres. */
    public PlateOutline(double length, double width, List<Cutout> cutouts) {
        this.length = length;
        this.width = width;
        this.cutouts = List.copyOf(cutouts);
    }

    /**
     * Draws it.
     *
     * @param perMetre millimetres on paper for one metre
     */
    public void draw(Sketch sketch, double perMetre, Stroke stroke) {
        List<double[]> low = spans(c -> c.v0() < SAME, true);
        List<double[]> high = spans(c -> c.v1() > width - SAME, true);
        List<double[]> left = spans(c -> c.u0() < SAME, false);
        List<double[]> right = spans(c -> c.u1() > length - SAME, false);
        edge(sketch, perMetre, stroke, low, 0, length, true);
        edge(sketch, perMetre, stroke, high, width, length, true);
        edge(sketch, perMetre, stroke, left, 0, width, false);
        edge(sketch, perMetre, stroke, right, length, width, false);
        for (Cutout c : cutouts) {
            hole(sketch, perMetre, stroke, c);
        }
    }

    private void hole(Sketch sketch, double k, Stroke stroke, Cutout c) {
        if (c.v0() >= SAME) {
            sketch.add(line(k, stroke, c.u0(), c.v0(), c.u1(), c.v0()));
        }
        if (c.v1() <= width - SAME) {
            sketch.add(line(k, stroke, c.u0(), c.v1(), c.u1(), c.v1()));
        }
        if (c.u0() >= SAME) {
            sketch.add(line(k, stroke, c.u0(), c.v0(), c.u0(), c.v1()));
        }
        if (c.u1() <= length - SAME) {
            sketch.add(line(k, stroke, c.u1(), c.v0(), c.u1(), c.v1()));
        }
    }

    private List<double[]> spans(java.util.function.Predicate<Cutout> reaches, boolean alongU) {
        List<double[]> spans = new ArrayList<>();
        cutouts.stream()
                .filter(reaches)
                .map(c -> alongU ? new double[] {c.u0(), c.u1()} : new double[] {c.v0(), c.v1()})
                .sorted((a, b) -> Double.compare(a[0], b[0]))
                .forEach(spans::add);
        return spans;
    }

    private static void edge(
            Sketch sketch, double k, Stroke stroke, List<double[]> open, double at, double end, boolean alongU) {
        double from = 0;
        List<double[]> gaps = new ArrayList<>(open);
        gaps.add(new double[] {end, end});
        for (double[] gap : gaps) {
            if (gap[0] > from + SAME) {
                sketch.add(alongU ? line(k, stroke, from, at, gap[0], at) : line(k, stroke, at, from, at, gap[0]));
            }
            from = Math.max(from, gap[1]);
        }
    }

    private static Shape line(double k, Stroke stroke, double u0, double v0, double u1, double v1) {
        return new Shape.Line(k * u0, -k * v0, k * u1, -k * v1, stroke);
    }
}
