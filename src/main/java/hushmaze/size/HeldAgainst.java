package hushmaze.size;

/**
 * What a recommended box was held against, when it was found.
 *
 * @param step between two clear sizes, m
 * @param boxes all that have room in the space
 * @param judged those that might have been better by the estimate and were judged by the quick wave
 * @param open those that might be better by the estimate and were not judged any further
 */
public record HeldAgainst(double step, long boxes, int judged, int open) {
    /** Whether no box of the steps is better, as far as estimate and quick wave tell. */
    public boolean settled() {
        return open == 0;
    }
}
