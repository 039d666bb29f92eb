package hushmaze.build.split;

import hushmaze.project.Seam;
import hushmaze.quantity.Notice;
import java.util.List;

/**
 * Where a box should be made of more than one piece.
 *
 * @param seams in order from the near end; none if the box needs none
 * @param obstacles what seams cannot mend; the seams mend the rest
 */
public record SeamPlan(List<Seam> seams, List<Obstacle> obstacles) {
    public SeamPlan {
        seams = List.copyOf(seams);
        obstacles = List.copyOf(obstacles);
    }

    /** Where seams are, for those who do not know seams. */
    public static List<Notice.Place> places(List<Seam> seams) {
        return seams.stream()
                .map(seam -> new Notice.Place(seam.comesApart(), seam.position()))
                .toList();
    }

    /** The seams of one kind. */
    public List<Seam> seams(Seam.Kind kind) {
        return seams.stream().filter(s -> s.kind() == kind).toList();
    }
}
