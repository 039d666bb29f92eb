package hushmaze.size;

import hushmaze.quantity.UnitSystem;

/**
 * Rounds clear sizes to what is easy to mark out: whole multiples of 5 mm, or of 1/8 in.
 *
 * @param units of the project
 */
public record Steps(UnitSystem units) {
    private static final double METRIC = 0.005;
    private static final double INCH = 0.0254 / 8;
    /** Share of a step that is rounding. */
    private static final double SLACK = 1e-6;

    /** One step, m. */
    public double size() {
        return units == UnitSystem.INCH ? INCH : METRIC;
    }

    double up(double metres) {
        return length(Math.ceil(metres / size() - SLACK));
    }

    double down(double metres) {
        return length(Math.floor(metres / size() + SLACK));
    }

    /** The nearest whole number of steps, m. */
    public double nearest(double metres) {
        return length(Math.rint(metres / size()));
    }

    /** A number of steps as a length; whole millimetres come out as the nearest double to their decimal form. */
    private double length(double count) {
        return units == UnitSystem.INCH ? count * INCH : Math.rint(count) * 5 / 1000;
    }
}
