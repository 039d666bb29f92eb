package hushmaze.drawing.draft;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Sketch;
import java.util.ArrayList;
import java.util.List;

/** Sets blocks into columns, and columns onto as many pages as it takes. */
public final class Flow {
    /** Between two columns, mm. */
    private static final double GUTTER = 12;
    /** By how much columns are shortened at a time, mm. */
    private static final double STEP = 5;

    private final Bounds area;
    private final int columns;
    private final double columnWidth;
    private final List<Sketch> pages = new ArrayList<>();
    private int column;
    private double y;

    private Flow(Bounds area, int columns) {
        this.area = area;
        this.columns = columns;
        this.columnWidth = (area.width() - (columns - 1) * GUTTER) / columns;
        this.column = columns;
    }

    /**
     * The pages' contents. If one page takes it all, its columns are made about equally long.
     *
     * @param area of each page that may be filled
     * @param columns side by side
     */
    public static List<Sketch> pages(List<Block> blocks, Bounds area, int columns) {
        List<Sketch> pages = set(blocks, area, columns);
        double height = area.height();
        while (columns > 1 && pages.size() == 1 && height > STEP) {
            height -= STEP;
            List<Sketch> shorter =
                    set(blocks, new Bounds(area.x0(), area.y0(), area.x1(), area.y0() + height), columns);
            if (shorter.size() > 1) {
                break;
            }
            pages = shorter;
        }
        return pages;
    }

    private static List<Sketch> set(List<Block> blocks, Bounds area, int columns) {
        Flow flow = new Flow(area, columns);
        List<Row> rows = new ArrayList<>();
        for (Block block : blocks) {
            rows.addAll(block.rows(flow.columnWidth));
        }
        flow.nextColumn();
        for (int i = 0; i < rows.size(); i++) {
            flow.place(rows, i);
        }
        return flow.pages;
    }

    private void place(List<Row> rows, int i) {
        Row row = rows.get(i);
        boolean startsRun = i == 0 || !rows.get(i - 1).keepWithNext();
        if (y > area.y0() && startsRun && y + run(rows, i) > area.y1()) {
            nextColumn();
        }
        boolean first = y == area.y0();
        if (!first && y + row.gap() + row.height() > area.y1()) {
            nextColumn();
            first = true;
        }
        if (first && row.header() != null) {
            put(row.header(), true);
            first = false;
        }
        put(row, first);
    }

    /** Height of a strip and all that must stay with it; never more than a column, or it would never be placed. */
    private double run(List<Row> rows, int i) {
        double total = 0;
        for (int k = i; k < rows.size(); k++) {
            total += rows.get(k).gap() + rows.get(k).height();
            if (!rows.get(k).keepWithNext()) {
                break;
            }
        }
        return total <= area.height() ? total : rows.get(i).gap() + rows.get(i).height();
    }

    private void put(Row row, boolean first) {
        if (!first) {
            y += row.gap();
        }
        double x = area.x0() + column * (columnWidth + GUTTER);
        pages.get(pages.size() - 1).add(row.content(), x, y);
        y += row.height();
    }

    private void nextColumn() {
        column++;
        if (column >= columns) {
            column = 0;
            pages.add(new Sketch());
        }
        y = area.y0();
    }
}
