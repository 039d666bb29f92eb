package hushmaze.app.field;

import hushmaze.sound.section.PathField;
import java.util.Arrays;

/**
 * Even steps of level that all but the rarest places of a field lie between.
 *
 * @param step dB
 * @param lowest multiple of the step that is the lowest limit between two colours
 * @param limits how many limits there are; one more colour than limits
 */
record LevelScale(double step, int lowest, int limits) {
    private static final double[] STEPS = {1, 2, 3, 5, 10, 15, 20, 30};
    /** So many decibels at least go over the whole map, lest small differences look like large ones. */
    private static final double WHOLE_MAP = 12;

    private static final int MOST_LIMITS = 9;
    /** Share of the places below and above the limits. */
    private static final double RARE_BELOW = 0.03;

    /** What lies closer together is one level, dB. */
    private static final double ONE_LEVEL = 0.5;

    private static final double RARE_ABOVE = 0.004;

    static LevelScale of(PathField field) {
        double[] levels = new double[field.columns() * field.rows()];
        int n = 0;
        for (int row = 0; row < field.rows(); row++) {
            for (int column = 0; column < field.columns(); column++) {
                double level = field.level(column, row);
                if (Double.isFinite(level)) {
                    levels[n++] = level;
                }
            }
        }
        Arrays.sort(levels, 0, n);
        double low = levels[(int) (RARE_BELOW * (n - 1))];
        double high = levels[(int) ((1 - RARE_ABOVE) * (n - 1))];
        if (high - low < ONE_LEVEL) {
            // a limit in the midst of it would draw nothing but errors of rounding
            return new LevelScale(STEPS[0], (int) Math.floor(low - STEPS[0] / 2), 1);
        }
        for (double step : STEPS) {
            int lowest = (int) Math.ceil(low / step);
            int limits = (int) Math.floor(high / step) - lowest + 1;
            if (limits <= MOST_LIMITS) {
                return new LevelScale(step, limits > 0 ? lowest : lowest - 1, Math.max(1, limits));
            }
        }
        double last = STEPS[STEPS.length - 1];
        return new LevelScale(last, (int) Math.floor(high / last) - MOST_LIMITS + 1, MOST_LIMITS);
    }

    /** dB. */
    double limit(int number) {
        return (lowest + number) * step;
    }

    /** Steps above the lowest limit; below 0 it has the first colour. */
    double place(double level) {
        return level / step - lowest;
    }

    /** Share of the colour map for a place: the loudest colour is the last, and the first ones are for levels far below it alone. */
    double share(double place) {
        double below = limits - Math.max(0, Math.min(limits, Math.floor(place) + 1));
        return 1 - below / Math.max(limits, WHOLE_MAP / step);
    }
}
