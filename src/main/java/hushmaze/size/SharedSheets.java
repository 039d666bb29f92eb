package hushmaze.size;

import hushmaze.build.SheetLayout;
import hushmaze.build.Supply;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What boxes of several paths cost together: those of later paths are cut from what the ones before leave, as an assessment
 * does. Layouts are kept, so that combinations that begin alike are laid out once.
 */
final class SharedSheets {
    private final List<Path> paths;
    private final Map<List<Candidate>, Cut> cut = new HashMap<>();

    /**
     * A path.
     *
     * @param name of it
     * @param search of its boxes
     */
    record Path(String name, BoxSearch search) {}

    private record Cut(Supply left, double cost) {}

    /**
     * @param whole what there is before the first is cut
     * @param paths in the order they are cut
     */
    SharedSheets(Supply whole, List<Path> paths) {
        this.paths = paths;
        cut.put(List.of(), new Cut(whole, 0));
    }

    /** Cost of boxes of the first paths, one of each; infinite where there are not enough sheets. */
    double cost(List<Candidate> boxes) {
        return cut(boxes).cost();
    }

    private Cut cut(List<Candidate> boxes) {
        Cut known = cut.get(boxes);
        if (known != null) {
            return known;
        }
        int last = boxes.size() - 1;
        Cut before = cut(List.copyOf(boxes.subList(0, last)));
        Path path = paths.get(last);
        List<SheetLayout> layouts = path.search().appraiser().layouts(boxes.get(last), before.left());
        boolean placed = layouts.stream().allMatch(layout -> layout.unplaced().isEmpty());
        double cost = placed ? path.search().appraiser().cost(layouts) : Double.POSITIVE_INFINITY;
        Cut now = new Cut(before.left().after(layouts, path.name()), before.cost() + cost);
        cut.put(List.copyOf(boxes), now);
        return now;
    }
}
