package hushmaze.size;

import java.util.Arrays;

/** One margin of a box, known ever better. */
final class Known {
    private final double[] margins = new double[Level.values().length];
    private final Known lead;
    private final Learned learned;
    private int level;

    /**
     * @param estimate by the estimate, dB
     * @param lead the same margin of the box around which it was found; null if there is none
     * @param learned of boxes like it
     */
    Known(double estimate, Known lead, Learned learned) {
        Arrays.fill(margins, Double.NaN);
        margins[0] = estimate;
        this.lead = lead;
        this.learned = learned;
    }

    /** At a level that was reached, dB. */
    double at(Level reached) {
        return margins[reached.ordinal()];
    }

    void raise(Level to, double margin) {
        level = to.ordinal();
        margins[level] = margin;
        learned.learn(level - 1, margin - margins[level - 1]);
    }

    /** What is known, and where it is not yet known by the best methods, what these made of boxes like it, dB. */
    double expected() {
        double margin = margins[level];
        for (int i = level; i < margins.length - 1 && Double.isFinite(margin); i++) {
            margin += step(i);
        }
        return margin;
    }

    private double step(int from) {
        boolean led = lead != null && lead.level > from;
        return led ? lead.margins[from + 1] - lead.margins[from] : learned.step(from);
    }
}
