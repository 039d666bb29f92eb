package hushmaze.size;

/**
 * What better methods made of the margins of boxes that differ in sizes only. Where none of them was judged yet, the best
 * that such methods made of any box: so every kind of box gets its chance.
 */
final class Kin {
    private final Kin all;
    private final double[] sums = new double[Level.values().length - 1];
    private final int[] counts = new int[sums.length];
    private final double[] best = new double[sums.length];
    private double bonus;

    /** @param all kinds together; null for that itself */
    Kin(Kin all) {
        this.all = all;
    }

    /** What is expected of the step from one level to the next, dB. */
    double step(int from) {
        if (counts[from] > 0) {
            return sums[from] / counts[from];
        }
        return all == null ? 0 : all.most(from);
    }

    /** What another share of the target than the one margins were judged at gives, dB. */
    double bonus() {
        return all == null ? bonus : all.bonus;
    }

    void bonus(double decibels) {
        bonus = decibels;
    }

    private double most(int from) {
        return counts[from] == 0 ? 0 : best[from];
    }

    void learn(int from, double difference) {
        if (!Double.isFinite(difference)) {
            return;
        }
        best[from] = counts[from] == 0 ? difference : Math.max(best[from], difference);
        sums[from] += difference;
        counts[from]++;
        if (all != null) {
            all.learn(from, difference);
        }
    }
}
