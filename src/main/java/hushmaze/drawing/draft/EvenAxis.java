package hushmaze.drawing.draft;

import java.util.Locale;

/**
 * A straight axis from zero with grid lines at round values: place = from + (to - from) · value / high.
 *
 * @param high value at the end, in the unit shown
 * @param step distance of two grid lines, in the unit shown: 1, 2, 2.5 or 5 times a power of ten
 * @param from place of zero, mm
 * @param to place of the end, mm
 */
public record EvenAxis(double high, double step, double from, double to) {
    private static final double[] ROUND = {1, 2, 2.5, 5, 10};

    /**
     * An axis that ends at the first grid line not below the largest value.
     *
     * @param largest value to be shown, above zero
     * @param parts most grid lines after the one at zero
     */
    public static EvenAxis upTo(double largest, int parts, double from, double to) {
        if (!(largest > 0) || !Double.isFinite(largest)) {
            throw new IllegalArgumentException("an axis up to " + largest);
        }
        double step = roundStep(largest / parts);
        return new EvenAxis(Math.ceil(largest / step - 1e-9) * step, step, from, to);
    }

    /** An axis that ends at the largest value itself, for one that has a natural end. */
    public static EvenAxis endingAt(double largest, int parts, double from, double to) {
        EvenAxis round = upTo(largest, parts, from, to);
        return new EvenAxis(largest, round.step(), from, to);
    }

    private static double roundStep(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double round : ROUND) {
            if (round * power >= least * (1 - 1e-9)) {
                return round * power;
            }
        }
        return 10 * power;
    }

    /** Place of a value, mm. */
    public double place(double value) {
        return from + (to - from) * value / high;
    }

    /** Number of grid lines after the one at zero. */
    int lines() {
        return (int) Math.floor(high / step + 1e-9);
    }

    /** The figure at a grid line, with no more decimals than the step has. */
    String figure(int line) {
        int decimals = 0;
        double shown = step;
        while (decimals < 6 && Math.abs(shown - Math.rint(shown)) > 1e-6 * shown) {
            shown *= 10;
            decimals++;
        }
        return String.format(Locale.ROOT, "%." + decimals + "f", line * step);
    }
}
