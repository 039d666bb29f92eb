package hushmaze.drawing.page;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.draft.Scale;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Sets views on pages, row by row, and spreads them over the room they have. */
final class Shelves {
    private static final double GAP = 6;
    /** Rows are not pulled further apart than this, mm. */
    private static final double WIDEST = 16;

    private record View(int index, Sketch sketch, Bounds bounds) {}

    private final Bounds area;
    private final TextMeasure measure;

    Shelves(Bounds area, TextMeasure measure) {
        this.area = area;
        this.measure = measure;
    }

    /** How many pages the views take. */
    int pages(List<Sketch> views) {
        return rowsByPage(views).size();
    }

    /** What the views show, as they are shared out to the pages. */
    <T> List<List<T>> groups(List<T> shown, List<Sketch> views) {
        List<List<T>> groups = new ArrayList<>();
        for (List<List<View>> page : rowsByPage(views)) {
            groups.add(page.stream()
                    .flatMap(List::stream)
                    .map(View::index)
                    .sorted()
                    .map(shown::get)
                    .toList());
        }
        return groups;
    }

    /** The largest scale, no larger than a given one, at which views go on one page together. */
    Optional<Scale> scale(List<Function<Scale, Sketch>> views, Scale atMost) {
        return scale(views, atMost, 1);
    }

    /** The largest scale, no larger than a given one, at which views go on so many pages. */
    Optional<Scale> scale(List<Function<Scale, Sketch>> views, Scale atMost, int pages) {
        return Scale.largest(s -> s.denominator() >= atMost.denominator() && on(pages, at(views, s)));
    }

    private boolean on(int pages, List<Sketch> views) {
        return views.stream().allMatch(this::fits) && pages(views) <= pages;
    }

    /** Views at a scale. */
    static List<Sketch> at(List<Function<Scale, Sketch>> views, Scale scale) {
        return views.stream().map(v -> v.apply(scale)).toList();
    }

    /** Whether a view goes on a page. */
    boolean fits(Sketch view) {
        Bounds b = view.bounds(measure);
        return b.width() <= area.width() && b.height() <= area.height();
    }

    /** The pages; views keep their order, but for those that fill up rows or pages before theirs. */
    List<Sketch> set(List<Sketch> views) {
        List<Sketch> pages = new ArrayList<>();
        for (List<List<View>> rows : rowsByPage(views)) {
            double total = rows.stream().mapToDouble(Shelves::height).sum();
            double gap = Math.min(WIDEST, (area.height() - total) / (rows.size() + 1));
            double y = area.y0() + (area.height() - total - gap * (rows.size() - 1)) / 2;
            Sketch page = new Sketch();
            for (List<View> row : rows) {
                setRow(page, row, y);
                y += height(row) + gap;
            }
            pages.add(page);
        }
        return pages;
    }

    private void setRow(Sketch page, List<View> row, double y) {
        double used = row.stream().mapToDouble(v -> v.bounds().width()).sum();
        double gap = (area.width() - used) / (row.size() + 1);
        double x = area.x0() + gap;
        double height = height(row);
        for (View view : row) {
            // Captions are the lowest part of a view: feet stand on one line.
            double drop = height - view.bounds().height();
            page.add(
                    view.sketch(),
                    x - view.bounds().x0(),
                    y + drop / 2 - view.bounds().y0());
            x += view.bounds().width() + gap;
        }
    }

    /**
     * Views in their order; with later rows on earlier pages, or the highest first, where that takes fewer pages. Pages, rows
     * and views then follow their order.
     */
    private List<List<List<View>>> rowsByPage(List<Sketch> sketches) {
        List<View> views = new ArrayList<>();
        for (int i = 0; i < sketches.size(); i++) {
            views.add(new View(i, sketches.get(i), sketches.get(i).bounds(measure)));
        }
        List<View> highestFirst = new ArrayList<>(views);
        highestFirst.sort(
                Comparator.comparingDouble((View v) -> -v.bounds().height()).thenComparing(View::index));
        List<List<List<View>>> pages =
                fewer(fewer(packed(views, true), packed(views, false)), packed(highestFirst, false));
        for (List<List<View>> page : pages) {
            page.forEach(row -> row.sort(Comparator.comparing(View::index)));
            page.sort(Comparator.comparing(row -> row.get(0).index()));
        }
        pages.sort(Comparator.comparing(page -> page.get(0).get(0).index()));
        return pages;
    }

    private static List<List<List<View>>> fewer(List<List<List<View>>> one, List<List<List<View>>> other) {
        return other.size() < one.size() ? other : one;
    }

    /** Each row goes on the first page that has the room below, or the last if it has; else it starts a page. */
    private List<List<List<View>>> packed(List<View> views, boolean lastOnly) {
        List<List<List<View>>> pages = new ArrayList<>();
        pages.add(new ArrayList<>());
        for (List<View> row : rows(views)) {
            List<List<View>> page = pages.stream()
                    .skip(lastOnly ? pages.size() - 1 : 0)
                    .filter(p -> takes(p, row))
                    .findFirst()
                    .orElseGet(() -> {
                        pages.add(new ArrayList<>());
                        return pages.get(pages.size() - 1);
                    });
            page.add(row);
        }
        return pages;
    }

    private boolean takes(List<List<View>> page, List<View> row) {
        double used = page.stream().mapToDouble(r -> height(r) + GAP).sum();
        return page.isEmpty() || used + height(row) <= area.height();
    }

    /** Each view goes into the first row that has the room beside and is no lower; else it starts a row. */
    private List<List<View>> rows(List<View> views) {
        List<List<View>> rows = new ArrayList<>();
        for (View view : views) {
            List<View> row = rows.stream()
                    .filter(r -> fits(r, view))
                    .findFirst()
                    .orElseGet(() -> {
                        rows.add(new ArrayList<>());
                        return rows.get(rows.size() - 1);
                    });
            row.add(view);
        }
        return rows;
    }

    private boolean fits(List<View> row, View view) {
        double used = row.stream().mapToDouble(v -> v.bounds().width() + GAP).sum();
        boolean last = view.index() == row.get(row.size() - 1).index() + 1;
        return used + view.bounds().width() <= area.width()
                && (last || view.bounds().height() <= height(row));
    }

    private static double height(List<View> row) {
        return row.stream().mapToDouble(v -> v.bounds().height()).max().orElse(0);
    }
}
