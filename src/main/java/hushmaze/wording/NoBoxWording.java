package hushmaze.wording;

import hushmaze.size.NoBox;
import java.util.ArrayList;
import java.util.List;

/** Why no box can be laid out, and what would have to give. */
public final class NoBoxWording {
    private NoBoxWording() {}

    /** One line that names the path, then one for each limit that would help. */
    public static List<String> lines(NoBox none) {
        Wording wording = new Wording(none.units());
        List<String> lines = new ArrayList<>();
        lines.add(wording.text("relax.intro", none.path()));
        none.proposal().relaxations().forEach(r -> lines.add(wording.relaxation(r)));
        if (none.proposal().relaxations().isEmpty()) {
            lines.add(wording.text("relax.none"));
        }
        return lines;
    }
}
