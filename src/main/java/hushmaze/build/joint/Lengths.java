package hushmaze.build.joint;

import hushmaze.quantity.UnitSystem;
import java.util.stream.DoubleStream;

/**
 * Lengths and diameters in which fasteners are sold, metric and in inches; from memory of the trade, common practice, no
 * source.
 */
final class Lengths {
    private static final double MM = 0.001;
    private static final double INCH = 0.0254;
    private static final double SLACK = 1e-9;

    private static final double[] SCREWS_MM = {
        16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120, 140, 160, 180, 200
    };
    private static final double[] SCREWS_INCH = {0.625, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 5, 6, 8};
    private static final double[] BRADS_MM = {15, 20, 25, 30, 35, 40, 45, 50};
    private static final double[] BRADS_INCH = {0.625, 0.75, 1, 1.25, 1.5, 1.75, 2};
    private static final double[] DOWELS_MM = {6, 8, 10, 12};
    private static final double[] DOWELS_INCH = {0.25, 0.375, 0.5};

    private Lengths() {}

    /** The shortest screw at least this long; the longest sold if none is, m. */
    static double screw(double least, UnitSystem units) {
        return DoubleStream.of(units == UnitSystem.INCH ? SCREWS_INCH : SCREWS_MM)
                .map(l -> l * unit(units))
                .filter(l -> l >= least - SLACK)
                .findFirst()
                .orElse(0.2);
    }

    /** The longest screw no longer than this; 0 if there is none, m. */
    static double longestScrew(double most, UnitSystem units) {
        return longest(units == UnitSystem.INCH ? SCREWS_INCH : SCREWS_MM, most, units);
    }

    /** The longest brad no longer than this; 0 if there is none, m. */
    static double brad(double most, UnitSystem units) {
        return longest(units == UnitSystem.INCH ? BRADS_INCH : BRADS_MM, most, units);
    }

    /** The thickest dowel no thicker than this; the thinnest sold if there is none, m. */
    static double dowel(double most, UnitSystem units) {
        double[] sold = units == UnitSystem.INCH ? DOWELS_INCH : DOWELS_MM;
        return Math.max(sold[0] * unit(units), longest(sold, most, units));
    }

    private static double longest(double[] sold, double most, UnitSystem units) {
        return DoubleStream.of(sold)
                .map(l -> l * unit(units))
                .filter(l -> l <= most + SLACK)
                .max()
                .orElse(0);
    }

    private static double unit(UnitSystem units) {
        return units == UnitSystem.INCH ? INCH : MM;
    }
}
