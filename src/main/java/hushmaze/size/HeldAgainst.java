package hushmaze.size;

/**
 * What a recommended box was held against, when it was found.
 *
 * @param among which boxes these are
 * @param step between two clear sizes, m
 * @param boxes how many have room in the space
 * @param judged those that might have been better by the estimate and were judged by the quick wave
 * @param open those that might be better by the estimate and were not judged any further
 */
public record HeldAgainst(Among among, double step, long boxes, int judged, int open) {
    /** Boxes of a space. */
    public enum Among {
        /** Every one. */
        ALL,
        /** Those made and lined as the box is, their ports in the same faces. */
        AS_MADE
    }

    /** Whether no box of the steps is better, as far as estimate and quick wave tell. */
    public boolean settled() {
        return open == 0;
    }
}
