package hushmaze.build;

import hushmaze.material.Sheet;
import hushmaze.project.Stock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A stock some of whose sheets are taken, with what the boxes that took them leave: sheets there are only so many of serve the
 * material and the path that come first, and the offcuts of a path's sheets serve the paths after it.
 *
 * @param stock as it was
 * @param taken how many of each of its sheets are gone; those bought as needed are not counted
 * @param keptOffcuts offcuts that are still whole
 */
public record Supply(Stock stock, Map<Sheet, Integer> taken, List<KeptOffcut> keptOffcuts) {
    /** No more offcuts of one layout than this are kept for later boxes, the largest. */
    public static final int MOST_OFFCUTS = 6;

    public Supply {
        taken = Map.copyOf(taken);
        keptOffcuts = List.copyOf(keptOffcuts);
    }

    /** A stock of which nothing is taken. */
    public static Supply of(Stock stock) {
        return new Supply(stock, Map.of(), List.of());
    }

    /**
     * What is left once a path's box was cut.
     *
     * @param layouts of the box
     * @param path its name
     */
    public Supply after(List<SheetLayout> layouts, String path) {
        Supply left = this;
        for (SheetLayout layout : layouts) {
            left = left.without(layout);
        }
        List<KeptOffcut> more = new ArrayList<>(left.keptOffcuts);
        for (SheetLayout layout : layouts) {
            layout.offcuts().stream()
                    .limit(MOST_OFFCUTS)
                    .map(o -> new KeptOffcut(
                            path, o.sheet(), layout.material(), layout.thickness(), o.length(), o.width()))
                    .forEach(more::add);
        }
        return new Supply(stock, left.taken, more);
    }

    /** What is left when the sheets and offcuts of a layout are taken too. */
    Supply without(SheetLayout layout) {
        Map<Sheet, Integer> more = new HashMap<>(taken);
        List<KeptOffcut> whole = new ArrayList<>(keptOffcuts);
        for (SheetPlan plan : layout.sheets()) {
            if (plan.from() != null) {
                whole.remove(plan.from());
            } else if (plan.sheet().stock() != null) {
                more.merge(plan.sheet(), 1, Integer::sum);
            }
        }
        return new Supply(stock, more, whole);
    }

    /** Whether there are only so many of some of its sheets. */
    public boolean isLimited() {
        return Stream.concat(stock.boardSheets().stream(), stock.linerSheets().stream())
                .anyMatch(sheet -> sheet.stock() != null);
    }

    /**
     * What a material can be cut from: sheets, of each as many as are left, and offcuts.
     *
     * @param sheets boards' or liners' of the stock
     * @param thickness m
     */
    public List<Sheet> sheets(List<Sheet> sheets, String material, double thickness) {
        List<Sheet> of = sheets.stream().filter(sheet -> sheet.isOf(material)).toList();
        return Stream.concat(left(of).stream(), sheets(keptOffcuts(material, thickness)).stream())
                .toList();
    }

    /**
     * What a job can be cut from now: its sheets, of each as many as are left, and the offcuts of its material that it can be cut
     * from.
     */
    Offer left(NestJob job) {
        List<KeptOffcut> usable = keptOffcuts(job.material(), job.thickness()).stream()
                .filter(o -> Math.min(o.length(), o.width()) > 2 * job.trim() + job.kerf())
                .toList();
        return new Offer(job, job.from(left(job.sheets()), sheets(usable)), usable);
    }

    /** The same sheets, of each as many as are left. */
    private List<Sheet> left(List<Sheet> sheets) {
        Map<Sheet, Integer> gone = new HashMap<>(taken);
        List<Sheet> left = new ArrayList<>();
        for (Sheet sheet : sheets) {
            int from = sheet.stock() == null ? 0 : Math.min(sheet.stock(), gone.getOrDefault(sheet, 0));
            if (from > 0) {
                // the rest is taken from another line of the same sheets
                gone.merge(sheet, -from, Integer::sum);
                left.add(sheet.having(sheet.stock() - from));
            } else {
                left.add(sheet);
            }
        }
        return left;
    }

    /**
     * Sheets and offcuts for one job.
     *
     * @param asked the job as it was
     * @param whole the job with what is left of its sheets, in the same order, and with the offcuts
     * @param keptOffcuts these offcuts, in the same order
     */
    record Offer(NestJob asked, NestJob whole, List<KeptOffcut> keptOffcuts) {
        /** A layout of the job with these, with sheets named as they are in the stock. */
        SheetLayout named(SheetLayout laid) {
            return laid.with(laid.sheets().stream().map(this::named).toList());
        }

        private SheetPlan named(SheetPlan plan) {
            int offcut = whole.offcuts().indexOf(plan.sheet());
            return offcut < 0
                    ? plan.of(asked.sheets().get(whole.sheets().indexOf(plan.sheet())))
                    : plan.of(keptOffcuts.get(offcut));
        }
    }

    /** Offcuts as sheets, numbered. */
    private static List<Sheet> sheets(List<KeptOffcut> offcuts) {
        return IntStream.range(0, offcuts.size())
                .mapToObj(i -> offcuts.get(i).sheet(i + 1))
                .toList();
    }

    private List<KeptOffcut> keptOffcuts(String material, double thickness) {
        return keptOffcuts.stream().filter(o -> o.isOf(material, thickness)).toList();
    }
}
