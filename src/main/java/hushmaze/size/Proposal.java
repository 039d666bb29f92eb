package hushmaze.size;

import hushmaze.project.Box;
import java.util.List;
import java.util.Optional;

/**
 * What a first layout found for a brief.
 *
 * @param box the proposed box; empty when none fits
 * @param quietEnough whether the box meets the target at the pessimistic edge
 * @param tried number of boxes looked at
 * @param relaxations when none fits, each limit that would help and by how much; empty list when no single one does
 */
public record Proposal(Optional<Box> box, boolean quietEnough, int tried, List<Relaxation> relaxations) {
    public Proposal {
        relaxations = List.copyOf(relaxations);
    }
}
