package hushmaze.build;

import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Lays pieces out on sheets with cuts that run from edge to edge.
 *
 * <p>Goals, in this order: as much as possible placed; least cost; as few sheets as possible whose first cut runs
 * across, since a long edge is the safer one to push along a fence (common practice, no source); largest single offcut worth
 * keeping; fewest settings of the fence. No size is used more often than there is stock, and a size without a stock can be had without end. Every cut
 * takes one kerf, except that a piece that fills the rest of its row exactly needs no cut, and a cut that leaves less than a
 * kerf leaves nothing. Pieces with grain keep their length along the sheet's length; all others may be turned by 90 degrees.
 *
 * <p>Cost is the sum of the prices if every size has one; at equal cost fewer sheets win. If some size has no price, prices
 * cannot be compared, and the sum of the areas counts instead, for priced sizes too. A size with the price 0 costs nothing
 * in both cases: it is on hand. So is a size of which there are so many and that has no price, where other sizes can be bought. If its stock is limited it is an offcut to be used up: such sheets are filled before any is
 * bought, and using more of them is no worse than using fewer. Offcuts that other boxes leave are cut up before sheets are
 * bought too, but no more of them than spare a sheet.
 *
 * <p>The answer is a good one, not a proven best, unless its cost equals the lower bound of the cost; the layout says so.
 */
public final class GuillotineNester {
    private GuillotineNester() {}

    /**
     * The layout.
     *
     * @param job what to cut from what
     * @param effort how long to search
     * @param progress told about every round; may cancel
     * @return all sheets; {@code unplaced} lists pieces that fit on no sheet, and pieces for which the stock did not suffice
     */
    public static SheetLayout nest(NestJob job, Effort effort, Progress progress) {
        NestTask task = new NestTask(job);
        int lowerBound = SheetBound.sheets(task);
        double leastCost = SheetBound.cost(task, lowerBound);
        Packing packing = new NestSearch(task, leastCost, effort, progress).run();
        List<String> unplaced = unplaced(task, packing);
        boolean best = unplaced.isEmpty() && packing.cost() <= NestSearch.within(leastCost);
        PlanMaker maker = new PlanMaker(task);
        List<SheetPlan> plans = packing.bins().stream()
                .filter(bin -> !bin.empty())
                .sorted(Comparator.comparingInt((Bin bin) -> bin.kind().number())
                        .thenComparing(Comparator.comparingDouble(Bin::used).reversed()))
                .map(maker::plan)
                .toList();
        return new SheetLayout(job.material(), job.thickness(), plans, lowerBound, unplaced, best, job.leastOffcut());
    }

    private static List<String> unplaced(NestTask task, Packing packing) {
        List<Piece> left = new ArrayList<>(task.tooLarge());
        packing.pool().forEach(index -> left.add(task.pieces().get(index)));
        left.sort(Comparator.comparingInt(Piece::part));
        return left.stream()
                .map(piece -> task.job().parts().get(piece.part()).mark())
                .toList();
    }
}
