package hushmaze.size;

import java.util.List;
import java.util.Optional;

/**
 * What a search found for one path.
 *
 * @param path its number
 * @param designs the recommended one first; they differ in more than a few millimetres; empty if no box keeps every limit
 * @param tally what became of the boxes that were looked at
 * @param held what the recommended box was held against; null if there is no box or the space is too large
 * @param inMoney whether costs are in the user's currency, not in m²
 * @param shortfall by how much the best box misses limits on sound; nothing if one keeps them or there is no box
 * @param relaxations when no box keeps every limit, or none is quiet enough: each limit that would help alone
 */
public record PathDesigns(
        int path,
        List<Design> designs,
        Tally tally,
        HeldAgainst held,
        boolean inMoney,
        Shortfall shortfall,
        List<Relaxation> relaxations) {
    /**
     * By how much a box misses limits on sound, dB.
     *
     * @param target at the microphone; 0 if it is met
     * @param others of what others hear; 0 if it is kept
     */
    public record Shortfall(double target, double others) {
        /** By nothing. */
        public static final Shortfall NONE = new Shortfall(0, 0);

        /** Whether there is any. */
        public boolean isAny() {
            return target > 0 || others > 0;
        }
    }

    public PathDesigns {
        designs = List.copyOf(designs);
        relaxations = List.copyOf(relaxations);
    }

    /** The one to build, if there is one. */
    public Optional<Design> recommended() {
        return designs.stream().findFirst();
    }
}
