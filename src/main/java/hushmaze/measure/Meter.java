package hushmaze.measure;

import hushmaze.quantity.BandSet;
import hushmaze.work.Progress;
import java.io.IOException;

/**
 * One pass over a span of a recording, which is parted into columns of equal length but for one sample. The caller's thread reads, weights
 * and looks for the peaks, a second one works out the third octaves; both see the same samples in the same order and cut them at the same
 * places, so that results do not depend on which of them is faster.
 */
final class Meter {
    /** So long before the span the filters are brought into swing, s. */
    private static final double SWING_S = 2;

    private final int rate;
    private final long begin;
    private final long from;
    private final long to;
    private final int columns;
    private final WeightedLevels weighted;
    private final ThirdOctaveBank bank;
    private final double[] least;
    private final double[] greatest;
    private final boolean[] full;
    private final double[] weightedMeans;
    private final double[] bandMeans;
    private int column;
    private int bandColumn;
    private long bandsAt;
    private long overloads;
    private long overloadsSoFar;

    /**
     * @param from first sample of the span
     * @param to the one after the last
     * @param columns at most as many as there are samples
     */
    Meter(int rate, long from, long to, int columns) {
        this.rate = rate;
        this.begin = Math.max(0, from - Math.round(SWING_S * rate));
        this.from = from;
        this.to = to;
        this.columns = columns;
        this.weighted = new WeightedLevels(rate);
        this.bank = new ThirdOctaveBank(rate);
        this.least = new double[columns];
        this.greatest = new double[columns];
        this.full = new boolean[columns];
        this.weightedMeans = new double[columns];
        this.bandMeans = new double[columns * BandSet.THIRD_OCTAVE.size()];
        this.bandsAt = begin;
    }

    /** Goes over the samples, which have not been read so far. */
    void run(WavSamples samples, Progress progress) throws IOException {
        samples.skipTo(begin);
        try (SecondThread second = new SecondThread(this::bands)) {
            long at = begin;
            while (at < to) {
                double[] lot = second.free();
                int filled = 0;
                while (at < to && filled + ThirdOctaveBank.BLOCK <= lot.length) {
                    int n = samples.next(lot, filled, piece(at, column));
                    look(lot, filled, n, at, samples.overloads());
                    filled += n;
                    at += n;
                    progress.check((double) (at - begin) / (to - begin), "reading");
                }
                second.hand(filled);
            }
            second.finish();
        }
    }

    /** Samples from a place to the next one where anything ends, at most a block. */
    private int piece(long at, int now) {
        long end = at < from ? from : columnEnd(now);
        return (int) Math.min(ThirdOctaveBank.BLOCK, end - at);
    }

    private long columnEnd(int number) {
        return from + (to - from) * (number + 1) / columns;
    }

    private void look(double[] lot, int place, int n, long at, long overloadsNow) {
        boolean count = at >= from;
        weighted.run(lot, place, n, count);
        if (count) {
            peaks(lot, place, n);
            full[column] |= overloadsNow > overloadsSoFar;
            overloads += overloadsNow - overloadsSoFar;
            if (at + n == columnEnd(column)) {
                weightedMeans[column++] = weighted.endColumn();
            }
        }
        overloadsSoFar = overloadsNow;
    }

    private void peaks(double[] lot, int place, int n) {
        double low = least[column];
        double high = greatest[column];
        for (int i = place; i < place + n; i++) {
            low = Math.min(low, lot[i]);
            high = Math.max(high, lot[i]);
        }
        least[column] = low;
        greatest[column] = high;
    }

    /** On the second thread. */
    private void bands(double[] lot, int filled) {
        int place = 0;
        while (place < filled) {
            int n = piece(bandsAt, bandColumn);
            boolean count = bandsAt >= from;
            bank.run(lot, place, n, count);
            place += n;
            bandsAt += n;
            if (count && bandsAt == columnEnd(bandColumn)) {
                double[] means = bank.endColumn();
                System.arraycopy(means, 0, bandMeans, bandColumn * means.length, means.length);
                bandColumn++;
            }
        }
    }

    /** Levels of the whole span. */
    Recording recording() {
        return new Recording(
                bank.levels().plus(-Recording.SINE), weighted.levels(), (double) (to - from) / rate, overloads);
    }

    /** Least sample of each column, zero at most. */
    double[] least() {
        return least.clone();
    }

    /** Greatest sample of each column, zero at least. */
    double[] greatest() {
        return greatest.clone();
    }

    /** Whether there were samples at full scale, for each column. */
    boolean[] full() {
        return full.clone();
    }

    /** A-weighted mean square of each column. */
    double[] weightedMeans() {
        return weightedMeans.clone();
    }

    /** Mean square in each band of the first column, then in each band of the second, and so on. */
    double[] bandMeans() {
        return bandMeans.clone();
    }

    /** Whether bands have a level. */
    boolean[] covered() {
        return bank.covered();
    }
}
