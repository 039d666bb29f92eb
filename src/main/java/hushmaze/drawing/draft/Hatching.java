package hushmaze.drawing.draft;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;

/** Thin parallel lines at 45 degrees across a cut face, on one raster over the whole view so that neighbours match. */
public enum Hatching {
    /** Board: lines rising to the right. */
    RISING(1.6),
    /** The neighbouring layer of board: lines falling to the right. */
    FALLING(1.6),
    /** Liner: both, wider. */
    CROSSED(2.6);

    private final double spacing;

    Hatching(double spacing) {
        this.spacing = spacing;
    }

    /** Hatches a rectangle. */
    public void fill(Sketch sketch, Bounds area, Stroke stroke) {
        if (this != FALLING) {
            rising(sketch, area, stroke);
        }
        if (this != RISING) {
            falling(sketch, area, stroke);
        }
    }

    /** Lines x + y = k. */
    private void rising(Sketch sketch, Bounds a, Stroke stroke) {
        double step = spacing * Math.sqrt(2);
        for (double k = Math.ceil((a.x0() + a.y0()) / step) * step; k < a.x1() + a.y1(); k += step) {
            double left = Math.max(a.x0(), k - a.y1());
            double right = Math.min(a.x1(), k - a.y0());
            if (right > left) {
                sketch.line(left, k - left, right, k - right, stroke);
            }
        }
    }

    /** Lines x - y = k. */
    private void falling(Sketch sketch, Bounds a, Stroke stroke) {
        double step = spacing * Math.sqrt(2);
        for (double k = Math.ceil((a.x0() - a.y1()) / step) * step; k < a.x1() - a.y0(); k += step) {
            double left = Math.max(a.x0(), k + a.y0());
            double right = Math.min(a.x1(), k + a.y1());
            if (right > left) {
                sketch.line(left, left - k, right, right - k, stroke);
            }
        }
    }
}
