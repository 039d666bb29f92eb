package hushmaze.quantity;

/**
 * Sums and differences of levels by energy: the one place where decibels are turned into energy and back.
 *
 * <p>Levels in dB; "no sound at all" is negative infinity and is allowed everywhere a level is.
 */
public final class Energy {
    private Energy() {}

    /** Ratio of energies for a difference of levels: 10^(dB/10). */
    public static double ratio(double db) {
        return Math.pow(10, db / 10);
    }

    /** Level of a ratio of energies: 10 lg(ratio), dB; a ratio of zero gives negative infinity. */
    public static double db(double ratio) {
        if (ratio < 0 || Double.isNaN(ratio)) {
            throw new IllegalArgumentException("an energy ratio cannot be " + ratio);
        }
        return 10 * Math.log10(ratio);
    }

    /** Level of all sources together, dB. No levels at all give negative infinity. */
    public static double sum(double... levels) {
        double top = Double.NEGATIVE_INFINITY;
        for (double level : levels) {
            requireNumber(level);
            top = Math.max(top, level);
        }
        if (top == Double.NEGATIVE_INFINITY || top == Double.POSITIVE_INFINITY) {
            return top;
        }
        double total = 0;
        for (double level : levels) {
            total += ratio(level - top);
        }
        return top + db(total);
    }

    /**
     * What is left of a total level when a part is taken away by energy, dB; negative infinity when nothing is left.
     */
    public static double minus(double total, double part) {
        requireNumber(total);
        requireNumber(part);
        if (part >= total) {
            return Double.NEGATIVE_INFINITY;
        }
        if (part == Double.NEGATIVE_INFINITY) {
            return total;
        }
        return total + db(1 - ratio(part - total));
    }

    /** Level of the mean energy, dB. */
    public static double mean(double... levels) {
        if (levels.length == 0) {
            throw new IllegalArgumentException("no levels to average");
        }
        return sum(levels) - db(levels.length);
    }

    /**
     * Loss of several routes side by side, dB: each route lets through 10^(-loss/10) of the same incident energy.
     *
     * @param losses loss of each route, dB; positive infinity for a route that lets nothing through
     */
    public static double parallelLoss(double... losses) {
        double[] through = new double[losses.length];
        for (int i = 0; i < losses.length; i++) {
            through[i] = -losses[i];
        }
        return -sum(through);
    }

    /** Loss over several bands of equal incident energy, dB: the mean energy let through. */
    public static double meanLoss(double... losses) {
        if (losses.length == 0) {
            throw new IllegalArgumentException("no losses to average");
        }
        return parallelLoss(losses) + db(losses.length);
    }

    private static void requireNumber(double level) {
        if (Double.isNaN(level)) {
            throw new IllegalArgumentException("a level is not a number");
        }
    }
}
