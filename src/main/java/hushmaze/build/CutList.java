package hushmaze.build;

import hushmaze.solid.Part;
import java.util.List;
import java.util.NoSuchElementException;

/**
 * Everything to cut for one box, alike parts together.
 *
 * @param boards marked B1, B2, ...
 * @param liners marked L1, L2, ...
 */
public record CutList(List<CutItem> boards, List<CutItem> liners) {
    public CutList {
        boards = List.copyOf(boards);
        liners = List.copyOf(liners);
    }

    /**
     * The mark of a part.
     *
     * @throws NoSuchElementException if the part is not on this list
     */
    public String markOf(Part part) {
        for (List<CutItem> items : List.of(boards, liners)) {
            for (CutItem item : items) {
                if (item.parts().contains(part)) {
                    return item.mark();
                }
            }
        }
        throw new NoSuchElementException("not on the cut list: " + part);
    }
}
