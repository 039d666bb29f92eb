package hushmaze.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Puts the regions of a sheet's rows in the order in which they are best cut: as few cuts as possible hold a strip that is
 * too narrow between fence and blade, then as few panels as possible are what a cut leaves, and then the fence is set as
 * seldom as possible. The order within a row changes neither what fits nor what is left over.
 *
 * <p>The count follows {@link CutSequence}: first all cuts of a row, then what came off, one piece after the other. The last
 * region of a row gets no setting of its own: its size is what the sheet, the blade and all settings before leave. So the
 * rest comes last, or a region from which something is cut off later, or a single one that is too narrow to be held.
 */
final class FenceOrder {
    /** Most regions that are visited while the orders of all sheets are improved. */
    private static final int MAX_VISITS = 2_000_000;
    /** A narrow cut counts as many settings. */
    private static final int NARROW = 1_000;
    /** So does a panel whose size is what a cut leaves. */
    private static final int LEFT = 100;

    private final long kerf;
    private final long leastStrip;
    private int settings;
    private int visits;
    private boolean lastRip;
    private long lastAt;

    FenceOrder(NestTask task) {
        kerf = task.kerf();
        leastStrip = NestTask.nanometres(task.job().leastStrip());
    }

    /** Orders all rows by a fixed rule: the widest first, equal ones together. */
    void sort(Region region) {
        if (region.row == null) {
            return;
        }
        Comparator<Region> rest = Comparator.comparingInt(child -> rank(region, child));
        region.row.sort(rest.thenComparing(Comparator.comparingLong((Region child) -> extent(region, child))
                .reversed()));
        region.row.forEach(this::sort);
    }

    /** Whole regions come first, then those to be cut to size later, the rest, what is narrower than can be held. */
    private int rank(Region region, Region child) {
        if (extent(region, child) - kerf < leastStrip) {
            return child.free() ? 4 : 3;
        }
        if (child.free()) {
            return 2;
        }
        return exact(child, region.ripped) ? 0 : 1;
    }

    /** Whether a panel of the region has its whole extent across the cuts of a row. */
    private static boolean exact(Region region, boolean ripped) {
        if (region.row == null) {
            return !region.free();
        }
        if (region.ripped == ripped) {
            Region last = null;
            for (Region child : region.row) {
                if (child.length > 0 && child.width > 0) {
                    last = child;
                }
            }
            return last != null && exact(last, ripped);
        }
        for (Region child : region.row) {
            if (exact(child, ripped)) {
                return true;
            }
        }
        return false;
    }

    /** Settings of the fence in the present order; a piece held that is too narrow and a panel left count as many. */
    int settings(Region root) {
        settings = 0;
        lastAt = -1;
        walk(root);
        return settings;
    }

    private void walk(Region region) {
        visits++;
        if (region.row == null) {
            return;
        }
        Region held = null;
        for (Region child : region.row) {
            if (child.length == 0 || child.width == 0) {
                continue;
            }
            if (held != null) {
                cut(region.ripped, extent(region, held));
            }
            held = child;
        }
        if (held != null && exact(held, region.ripped)) {
            settings += LEFT;
        }
        region.row.forEach(this::walk);
    }

    private void cut(boolean rip, long at) {
        if (lastRip != rip || lastAt != at) {
            settings++;
        }
        if (at - kerf < leastStrip) {
            settings += NARROW;
        }
        lastRip = rip;
        lastAt = at;
    }

    /** Sorts, then moves groups of equal regions within their rows as long as that helps. */
    void improve(Region root) {
        sort(root);
        List<Region> rows = new ArrayList<>();
        rows.add(root);
        root.collect(rows);
        rows.removeIf(region -> region.row == null);
        int best = settings(root);
        for (boolean better = true; better && visits < MAX_VISITS; ) {
            int before = best;
            for (Region region : rows) {
                best = improveRow(root, region, best);
            }
            better = best < before;
        }
    }

    private int improveRow(Region root, Region region, int before) {
        int best = before;
        for (int from = 0; from < region.row.size(); from++) {
            for (int to = 0; to < region.row.size() && visits < MAX_VISITS; to++) {
                List<Region> kept = List.copyOf(region.row);
                move(region, from, to);
                int count = settings(root);
                if (count < best) {
                    best = count;
                } else {
                    Collections.copy(region.row, kept);
                }
            }
        }
        return best;
    }

    /** Moves a region, with those of equal extent that follow it, to another place in its row. */
    private static void move(Region region, int from, int to) {
        List<Region> row = region.row;
        long extent = extent(region, row.get(from));
        int end = from + 1;
        while (end < row.size() && extent(region, row.get(end)) == extent) {
            end++;
        }
        List<Region> group = new ArrayList<>(row.subList(from, end));
        row.subList(from, end).clear();
        row.addAll(Math.min(to, row.size()), group);
    }

    static long extent(Region region, Region child) {
        return region.ripped ? child.width : child.length;
    }
}
