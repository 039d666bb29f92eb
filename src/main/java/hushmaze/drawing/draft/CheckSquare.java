package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import hushmaze.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A square of known true size: measured both ways it shows whether a print kept the scale, and kept it alike in height and
 * width.
 */
public final class CheckSquare {
    private static final double[] METRIC_MM = {10, 20, 50, 100, 200, 500, 1000};
    private static final double[] INCHES = {0.5, 1, 2, 5, 10, 20, 50};
    private static final double MM_PER_INCH = 25.4;
    private static final double LINE = Lettering.SMALL * 1.2;
    /** Room for a side on paper, mm. */
    private static final double MOST = 14;

    private CheckSquare() {}

    /** Draws the square with its upper left corner at the origin, its true side and that on paper written below. */
    public static Sketch of(Scale scale, UnitSystem units) {
        boolean inch = units == UnitSystem.INCH;
        double step = inch ? MM_PER_INCH : 1;
        double[] choices = inch ? INCHES : METRIC_MM;
        double real = scale.longest(choices, step, MOST);
        double side = real * step / scale.denominator();
        Sketch sketch = new Sketch();
        sketch.rectangle(new Bounds(0, 0, side, side), Stroke.THIN, null);
        String unit = inch ? " in" : " mm";
        double first = side + Lettering.SMALL * 1.1;
        words(sketch, side / 2, first, plain(real) + unit);
        words(sketch, side / 2, first + LINE, Labels.of("page.onPaper", plain(side / step) + unit));
        return sketch;
    }

    private static void words(Sketch sketch, double x, double y, String words) {
        sketch.text(x, y, words, Lettering.SMALL, Weight.REGULAR, Anchor.MIDDLE, Ink.GREY);
    }

    /** To a hundredth, which is finer than a print can be measured. */
    private static String plain(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
