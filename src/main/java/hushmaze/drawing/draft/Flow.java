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
    /** A last page filled less than this, as a share of its height, is not worth its paper. */
    private static final double SCANT = 0.3;
    /** Shares of the gaps between blocks that are tried to save such a page. */
    private static final double[] TIGHTER = {0.85, 0.7, 0.55};

    private final Bounds area;
    private final int columns;
    private final double columnWidth;
    private final List<Sketch> pages = new ArrayList<>();
    private final double gaps;
    private int column;
    private double y;

    private Flow(Bounds area, int columns, double gaps) {
        this.area = area;
        this.columns = columns;
        this.gaps = gaps;
        this.columnWidth = (area.width() - (columns - 1) * GUTTER) / columns;
        this.column = columns;
    }

    /**
     * The pages' contents. If one page takes it all, its columns are made about equally long. If the last page would be
     * nearly empty, the gaps between blocks are made smaller when that saves it.
     *
     * @param area of each page that may be filled
     * @param columns side by side
     */
    public static List<Sketch> pages(List<Block> blocks, Bounds area, int columns) {
        Flow flow = set(blocks, area, columns, 1);
        if (flow.endsScantily()) {
            for (double share : TIGHTER) {
                Flow tighter = set(blocks, area, columns, share);
                if (tighter.pages.size() < flow.pages.size()) {
                    return tighter.pages;
                }
            }
        }
        return columns > 1 && flow.pages.size() == 1 ? balanced(flow, blocks) : flow.pages;
    }

    private static List<Sketch> balanced(Flow onePage, List<Block> blocks) {
        Bounds area = onePage.area;
        List<Sketch> pages = onePage.pages;
        for (double height = area.height() - STEP; height > STEP; height -= STEP) {
            Bounds lower = new Bounds(area.x0(), area.y0(), area.x1(), area.y0() + height);
            List<Sketch> shorter = set(blocks, lower, onePage.columns, 1).pages;
            if (shorter.size() > 1) {
                break;
            }
            pages = shorter;
        }
        return pages;
    }

    private boolean endsScantily() {
        return pages.size() > 1 && column == 0 && y - area.y0() < SCANT * area.height();
    }

    private static Flow set(List<Block> blocks, Bounds area, int columns, double gaps) {
        Flow flow = new Flow(area, columns, gaps);
        List<Row> rows = new ArrayList<>();
        for (Block block : blocks) {
            rows.addAll(block.rows(flow.columnWidth));
        }
        flow.nextColumn();
        for (int i = 0; i < rows.size(); i++) {
            flow.place(rows, i);
        }
        return flow;
    }

    private void place(List<Row> rows, int i) {
        Row row = rows.get(i);
        boolean startsRun = i == 0 || !rows.get(i - 1).keepWithNext();
        if (y > area.y0() && startsRun && y + run(rows, i) > area.y1()) {
            nextColumn();
        }
        boolean first = y == area.y0();
        if (!first && y + gap(row) + row.height() > area.y1()) {
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
            total += gap(rows.get(k)) + rows.get(k).height();
            if (!rows.get(k).keepWithNext()) {
                break;
            }
        }
        return total <= area.height() ? total : gap(rows.get(i)) + rows.get(i).height();
    }

    private void put(Row row, boolean first) {
        if (!first) {
            y += gap(row);
        }
        double x = area.x0() + column * (columnWidth + GUTTER);
        pages.get(pages.size() - 1).add(row.content(), x, y);
        y += row.height();
    }

    private double gap(Row row) {
        return gaps * row.gap();
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
