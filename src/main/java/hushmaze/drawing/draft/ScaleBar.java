package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import hushmaze.quantity.UnitSystem;

/** A bar of known true length, by which a copy of any size can be read. */
public final class ScaleBar {
    private static final double[] METRIC_MM = {10, 20, 50, 100, 200, 500, 1000, 2000};
    private static final double[] INCHES = {1, 2, 5, 10, 20, 40, 80};
    private static final double MM_PER_INCH = 25.4;
    private static final double HEIGHT = 1.2;

    private ScaleBar() {}

    /** Draws the bar with its upper left end at the origin; the longest of the usual lengths within the width. */
    public static Sketch of(Scale scale, UnitSystem units, double width) {
        double step = units == UnitSystem.INCH ? MM_PER_INCH : 1;
        double[] choices = units == UnitSystem.INCH ? INCHES : METRIC_MM;
        double best = scale.longest(choices, step, width);
        double length = best * step / scale.denominator();
        Sketch sketch = new Sketch();
        double half = length / 2;
        sketch.rectangle(new Bounds(0, 0, half, HEIGHT), Stroke.THIN, Ink.BLACK);
        sketch.rectangle(new Bounds(half, 0, length, HEIGHT), Stroke.THIN, Ink.WHITE);
        String end = String.valueOf((long) best) + (units == UnitSystem.INCH ? " in" : " mm");
        double foot = HEIGHT + Lettering.SMALL;
        sketch.text(0, foot, "0", Lettering.SMALL, Weight.REGULAR, Anchor.START, Ink.GREY);
        sketch.text(length, foot, end, Lettering.SMALL, Weight.REGULAR, Anchor.MIDDLE, Ink.GREY);
        return sketch;
    }
}
