package hushmaze.build;

import hushmaze.solid.Part;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.stream.Stream;

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

    /** Boards, then liner. */
    public Stream<CutItem> items() {
        return Stream.concat(boards.stream(), liners.stream());
    }

    /**
     * The mark of a part.
     *
     * @throws NoSuchElementException if the part is not on this list
     */
    public String markOf(Part part) {
        return items().filter(item -> item.parts().contains(part))
                .map(CutItem::mark)
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("not on the cut list: " + part));
    }
}
