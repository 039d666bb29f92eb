package hushmaze.size;

/**
 * What better methods made of one margin of boxes that differ in sizes only.
 *
 * <p>A method more can only take something off, since the least counts. So of the quick wave nothing bad is expected before it
 * was run on a box of the kind, and then a little better than the best it did, ever less the more were tried: every kind of box, and
 * the better ones of it, get their chance. Of other liners what they did on the average is expected, of any box where there was
 * none of the kind. Of the assessment the same, but nothing where there was none of the kind: it moves kinds by unlike amounts.
 */
final class Learned {
    /** By how much a second box of a kind is hoped to come off better than the first, dB; ever less for later ones. */
    private static final double HOPE = 3;

    private final Learned all;
    private final double[] sums = new double[Level.values().length - 1];
    private final int[] counts = new int[sums.length];
    private double best = Double.NEGATIVE_INFINITY;

    /** @param all kinds together; null for that itself */
    Learned(Learned all) {
        this.all = all;
    }

    /** What is expected of the step from one level to the next, dB. */
    double step(int from) {
        if (from == Level.ESTIMATE.ordinal()) {
            return counts[from] > 0 ? Math.min(0, best + HOPE / counts[from]) : 0;
        }
        if (counts[from] > 0) {
            return sums[from] / counts[from];
        }
        return all == null || from == Level.LINERS.ordinal() ? 0 : all.step(from);
    }

    void learn(int from, double difference) {
        if (!Double.isFinite(difference)) {
            return;
        }
        if (from == Level.ESTIMATE.ordinal()) {
            best = Math.max(best, difference);
        }
        sums[from] += difference;
        counts[from]++;
        if (all != null) {
            all.learn(from, difference);
        }
    }
}
