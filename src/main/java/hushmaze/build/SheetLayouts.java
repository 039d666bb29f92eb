package hushmaze.build;

import hushmaze.material.Sheet;
import hushmaze.project.Stock;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.stream.Stream;

/** Lays a whole cut list out: one layout for every board and one for every liner, by material and thickness. */
public final class SheetLayouts {
    private record Material(String name, double thickness) {}

    private SheetLayouts() {}

    /** Layouts for documents: bounded by rounds, so that the same list gives the same layouts. */
    public static List<SheetLayout> of(CutList list, Stock stock) {
        return of(list, Supply.of(stock), Effort.DOCUMENT, Progress.NONE);
    }

    /**
     * Layouts of boards, cut with the saw, then of liners, cut with a knife: no kerf and no trim. What one material takes of
     * the sheets there are only so many of is gone for the next; offcuts other boxes leave are cut up before a sheet is begun.
     *
     * @param effort for each of the layouts
     */
    public static List<SheetLayout> of(CutList list, Supply supply, Effort effort, Progress progress) {
        List<SheetLayout> layouts = new ArrayList<>();
        Stock stock = supply.stock();
        double kerf = stock.saw().kerf();
        List<NestJob> boards =
                jobs(list.boards(), stock.boardSheets(), kerf, stock.saw().trim());
        List<NestJob> liners = jobs(list.liners(), stock.linerSheets(), 0, 0);
        Supply left = supply;
        for (NestJob job : Stream.concat(boards.stream(), liners.stream()).toList()) {
            SheetLayout layout = nest(job, left, effort, progress);
            layouts.add(layout);
            left = left.without(layout);
        }
        return List.copyOf(layouts);
    }

    private static SheetLayout nest(NestJob job, Supply left, Effort effort, Progress progress) {
        Supply.Offer offer = left.left(job);
        return offer.named(GuillotineNester.nest(offer.whole(), effort, progress));
    }

    /** Those of all layouts of a list that are of its boards; the others are of liner. */
    public static List<SheetLayout> ofBoards(CutList list, List<SheetLayout> layouts) {
        long boards = list.boards().stream()
                .map(item -> new Material(item.material(), item.thickness()))
                .distinct()
                .count();
        return layouts.subList(0, (int) boards);
    }

    /**
     * Whether a part that could not be placed would fit on some sheet if there were enough of them.
     *
     * @param mark on the list
     * @throws NoSuchElementException if the mark is not on the list
     */
    public static boolean fitsSomeSheet(CutList list, Stock stock, String mark) {
        boolean board = list.boards().stream().anyMatch(item -> item.mark().equals(mark));
        List<NestJob> jobs = board
                ? jobs(
                        list.boards(),
                        stock.boardSheets(),
                        stock.saw().kerf(),
                        stock.saw().trim())
                : jobs(list.liners(), stock.linerSheets(), 0, 0);
        for (NestJob job : jobs) {
            for (NestPart part : job.parts()) {
                if (part.mark().equals(mark)) {
                    return job.fits(part);
                }
            }
        }
        throw new NoSuchElementException("not on the cut list: " + mark);
    }

    private static List<NestJob> jobs(List<CutItem> items, List<Sheet> sheets, double kerf, double trim) {
        Map<Material, List<NestPart>> parts = new LinkedHashMap<>();
        for (CutItem item : items) {
            Material material = new Material(item.material(), item.thickness());
            parts.computeIfAbsent(material, m -> new ArrayList<>())
                    .add(new NestPart(item.mark(), item.quantity(), item.length(), item.width(), item.grain()));
        }
        return parts.entrySet().stream()
                .map(e -> new NestJob(
                        e.getKey().name(), e.getKey().thickness(), e.getValue(), of(e.getKey(), sheets), kerf, trim))
                .toList();
    }

    /** The sheets a material can be had in; where there are none, all of them, and none is there. */
    private static List<Sheet> of(Material material, List<Sheet> sheets) {
        List<Sheet> of =
                sheets.stream().filter(sheet -> sheet.isOf(material.name())).toList();
        return of.isEmpty() ? sheets.stream().map(sheet -> sheet.having(0)).toList() : of;
    }
}
