package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.build.PrintedSizes;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Drawings of all items of a cut list. The largest item sets the scale; items that would come out very small are drawn
 * on pages of their own, at a larger scale. All views of a page have the same scale.
 */
final class PartPages {
    /** Smallest picture of a part's longer side that is worth having, mm. */
    private static final double LEAST = 18;

    /** The same of a bare rectangle, which its figures say everything of, mm. */
    private static final double LEAST_BARE = 9;

    /** Largest, so that several go on a page even where paper is large, mm. */
    private static final double MOST = 105;

    /** Marks in the title of a page. */
    private static final String BETWEEN = ", ";

    private final Job job;
    private final Shelves shelves;
    private final PrintedSizes printed;

    PartPages(Job job) {
        this.job = job;
        this.shelves = new Shelves(job.drawingSheet().content(), job.measure());
        this.printed = job.printed();
    }

    /** The pages of some items. */
    List<Draft> of(List<CutItem> items, String type) {
        List<Draft> pages = new ArrayList<>();
        List<CutItem> left = items;
        while (!left.isEmpty()) {
            Scale scale = scale(left);
            List<CutItem> now = new ArrayList<>();
            List<CutItem> later = new ArrayList<>();
            for (CutItem item : left) {
                boolean small = PartView.extent(item, scale) < least(item) && scale.denominator() > 1;
                (small ? later : now).add(item);
            }
            pages.addAll(pages(now, scale, type));
            left = later;
        }
        pages.addAll(holes(items, type));
        return pages;
    }

    private static double least(CutItem item) {
        boolean bare = item.cutouts().isEmpty()
                && item.grooves().isEmpty()
                && item.holes().isEmpty();
        return bare ? LEAST_BARE : LEAST;
    }

    /** The holes of items that have too many of them for their pictures. */
    private List<Draft> holes(List<CutItem> items, String type) {
        HoleRows rows = new HoleRows(job);
        List<Block> blocks = new ArrayList<>();
        for (CutItem item : items) {
            if (rows.many(item.holes())) {
                blocks.add(job.blocks().heading(item.mark()));
                rows.words(item.holes()).forEach(row -> blocks.add(job.blocks().bullet(row)));
            }
        }
        if (blocks.isEmpty()) {
            return List.of();
        }
        blocks.add(0, job.blocks().title(Labels.of("holes.title")));
        blocks.add(1, job.blocks().paragraph(Labels.of("holes.explained")));
        return job.textPages(Labels.of("holes.title"), type, blocks);
    }

    /** The marks of the items on a page with a title; none on another's. */
    static List<String> marks(String title) {
        for (String key : List.of("partPages.one", "partPages.several")) {
            String head = Labels.of(key, "");
            if (title.startsWith(head)) {
                return List.of(title.substring(head.length()).split(BETWEEN));
            }
        }
        return List.of();
    }

    private PartView view(CutItem item) {
        return new PartView(job, item, printed.of(item));
    }

    /** The largest picture at which each view goes on a page and leaves room beside it. */
    private Scale scale(List<CutItem> items) {
        double most = Math.min(MOST, job.drawingSheet().content().width() * 0.52);
        Scale wished = Scale.largest(s -> items.stream().allMatch(i -> PartView.extent(i, s) <= most))
                .orElse(Scale.SERIES.get(Scale.SERIES.size() - 1));
        return Scale.largest(s -> s.denominator() >= wished.denominator()
                        && items.stream().allMatch(i -> shelves.fits(view(i).at(s))))
                .orElseThrow(() -> new IllegalArgumentException("a part is too big to be drawn on " + job.paper()));
    }

    private List<Draft> pages(List<CutItem> items, Scale scale, String type) {
        List<Sketch> views = items.stream().map(i -> view(i).at(scale)).toList();
        List<Draft> pages = new ArrayList<>();
        List<List<CutItem>> groups = shelves.groups(items, views);
        List<Sketch> sketches = shelves.set(views);
        for (int i = 0; i < sketches.size(); i++) {
            List<CutItem> group = groups.get(i);
            String marks = group.stream().map(CutItem::mark).collect(Collectors.joining(BETWEEN));
            String title = Labels.of(group.size() == 1 ? "partPages.one" : "partPages.several", marks);
            pages.add(new Draft(title, type, scale, job.drawingSheet(), sketches.get(i)));
        }
        return pages;
    }
}
