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
    /** The column that is being filled. */
    private final List<Row> open = new ArrayList<>();

    private final double gaps;
    /** Number of a page that is filled less far down than the others, from 0. */
    private final int shorter;
    /** By how much, mm. */
    private final double shorterBy;

    private int column;
    private double y;
    /** By how much more than the page takes the open column may be filled, since its strips can be made lower, mm. */
    private double give;

    private Flow(Bounds area, int columns, double gaps, int shorter, double shorterBy) {
        this.area = area;
        this.columns = columns;
        this.gaps = gaps;
        this.shorter = shorter;
        this.shorterBy = shorterBy;
        this.columnWidth = (area.width() - (columns - 1) * GUTTER) / columns;
        this.column = columns;
    }

    /**
     * The pages' contents. If one page takes it all, its columns are made about equally long. If the last page would be
     * nearly empty, the gaps between blocks are made smaller when that saves it; otherwise it takes over some of the page before.
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
            return shared(flow, blocks).pages;
        }
        return columns > 1 && flow.pages.size() == 1 ? balanced(flow, blocks) : flow.pages;
    }

    /** The same pages with so much more on the last one that it is no longer scant, as far as that can be. */
    private static Flow shared(Flow scant, List<Block> blocks) {
        Flow shared = scant;
        int before = scant.pages.size() - 2;
        for (double by = STEP; by < scant.area.height() / 2 && shared.endsScantily(); by += STEP) {
            Flow next = set(blocks, new Flow(scant.area, scant.columns, 1, before, by));
            if (next.pages.size() > scant.pages.size()) {
                break;
            }
            shared = next;
        }
        return shared;
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
        return set(blocks, new Flow(area, columns, gaps, 0, 0));
    }

    private static Flow set(List<Block> blocks, Flow flow) {
        List<Row> rows = new ArrayList<>();
        for (Block block : blocks) {
            rows.addAll(block.rows(flow.columnWidth, flow.gaps));
        }
        flow.startColumn();
        for (int i = 0; i < rows.size(); i++) {
            flow.place(rows, i);
        }
        flow.draw(true);
        return flow;
    }

    private void place(List<Row> rows, int i) {
        Row row = rows.get(i);
        boolean startsRun = i == 0 || !rows.get(i - 1).keepWithNext();
        if (startsRun) {
            double own = give(rows.subList(i, runEnd(rows, i)));
            give = own > 0 ? own + give(open) : 0;
            if (y > area.y0() && y + run(rows, i) > foot() + give) {
                nextColumn();
                give = own;
            }
        }
        if (y > area.y0() && y + gap(row) + row.height() > foot() + give) {
            nextColumn();
        }
        if (open.isEmpty() && row.header() != null) {
            put(row.header());
        }
        put(row);
    }

    private static double give(List<Row> rows) {
        return rows.stream().mapToDouble(Row::give).sum();
    }

    /** How far down the page may be filled. */
    private double foot() {
        return area.y1() - (pages.size() - 1 == shorter ? shorterBy : 0);
    }

    /** Height of a strip and all that must stay with it; never more than a column, or it would never be placed. */
    private double run(List<Row> rows, int i) {
        double total = 0;
        for (Row row : rows.subList(i, runEnd(rows, i))) {
            total += gap(row) + row.height();
        }
        return total <= area.height() ? total : gap(rows.get(i)) + rows.get(i).height();
    }

    /** Number of the first strip that need not stay with the given one. */
    private static int runEnd(List<Row> rows, int i) {
        int k = i;
        while (k < rows.size() - 1 && rows.get(k).keepWithNext()) {
            k++;
        }
        return k + 1;
    }

    private void put(Row row) {
        y += (open.isEmpty() ? 0 : gap(row)) + row.height();
        open.add(row);
    }

    private double gap(Row row) {
        return gaps * row.gap();
    }

    private void nextColumn() {
        draw(false);
        startColumn();
    }

    private void startColumn() {
        column++;
        if (column >= columns) {
            column = 0;
            pages.add(new Sketch());
        }
        y = area.y0();
    }

    /** Draws the open column, its charts as high as fills it, and closes it. */
    private void draw(boolean last) {
        double[] heights = Heights.of(open, foot() - y, last);
        double x = area.x0() + column * (columnWidth + GUTTER);
        double at = area.y0();
        for (int i = 0; i < heights.length; i++) {
            at += i == 0 ? 0 : gap(open.get(i));
            pages.get(pages.size() - 1).add(open.get(i).at(heights[i]), x, at);
            at += heights[i];
        }
        open.clear();
    }
}
