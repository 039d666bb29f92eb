package hushmaze.build;

import java.util.function.LongSupplier;

/**
 * How long a search may go on. A search bounded by rounds gives the same answer every time and is what documents use; one
 * bounded by time is for a person who waits.
 */
@FunctionalInterface
public interface Effort {
    /** Enough for the sheets of a box, and always the same answer. */
    Effort DOCUMENT = rounds(6_000);

    /**
     * Share of the budget that is used up.
     *
     * @param round rounds done so far
     * @return 0 at the start, 1 or more when the search must end
     */
    double spent(int round);

    /** A fixed number of rounds. */
    static Effort rounds(int limit) {
        return round -> limit == 0 ? 1 : round / (double) limit;
    }

    /**
     * A span of time from now on.
     *
     * @param seconds s
     * @param nanoClock gives a running time in nanoseconds; the caller's, because the core has no clock
     */
    static Effort seconds(double seconds, LongSupplier nanoClock) {
        long start = nanoClock.getAsLong();
        return round -> (nanoClock.getAsLong() - start) / (seconds * 1e9);
    }
}
