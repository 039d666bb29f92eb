package hushmaze.drawing.page;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.draft.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Sets views on pages, row by row, and spreads them over the room they have. */
final class Shelves {
    private static final double GAP = 9;
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
        return Scale.largest(s -> s.denominator() >= atMost.denominator() && onOnePage(at(views, s)));
    }

    private boolean onOnePage(List<Sketch> views) {
        return views.stream().allMatch(this::fits) && pages(views) == 1;
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

    /** The pages; views keep their order, but for small ones that fill up rows before theirs. */
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

    private List<List<List<View>>> rowsByPage(List<Sketch> views) {
        List<List<List<View>>> pages = new ArrayList<>();
        List<List<View>> rows = new ArrayList<>();
        double y = 0;
        for (List<View> row : rows(views)) {
            double need = height(row) + (rows.isEmpty() ? 0 : GAP);
            if (!rows.isEmpty() && y + need > area.height()) {
                pages.add(rows);
                rows = new ArrayList<>();
                y = 0;
                need = height(row);
            }
            rows.add(row);
            y += need;
        }
        pages.add(rows);
        return pages;
    }

    /** Each view goes into the first row that has the room beside and is no lower; else it starts a row. */
    private List<List<View>> rows(List<Sketch> views) {
        List<List<View>> rows = new ArrayList<>();
        for (int i = 0; i < views.size(); i++) {
            View view = new View(i, views.get(i), views.get(i).bounds(measure));
            List<View> row = rows.stream()
                    .filter(r -> takes(r, view))
                    .findFirst()
                    .orElseGet(() -> {
                        rows.add(new ArrayList<>());
                        return rows.get(rows.size() - 1);
                    });
            row.add(view);
        }
        return rows;
    }

    private boolean takes(List<View> row, View view) {
        double used = row.stream().mapToDouble(v -> v.bounds().width() + GAP).sum();
        boolean last = view.index() == row.get(row.size() - 1).index() + 1;
        return used + view.bounds().width() <= area.width()
                && (last || view.bounds().height() <= height(row));
    }

    private static double height(List<View> row) {
        return row.stream().mapToDouble(v -> v.bounds().height()).max().orElse(0);
    }
}
