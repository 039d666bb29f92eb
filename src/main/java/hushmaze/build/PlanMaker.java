package hushmaze.build;

import hushmaze.build.CutNode.Along;
import hushmaze.build.CutNode.Cut;
import hushmaze.build.CutNode.Leaf;
import java.util.ArrayList;
import java.util.List;

/** Turns a sheet laid out by the search, in nanometres with the kerf added, into cuts and placed panels in metres. */
final class PlanMaker {
    private final NestTask task;
    private final FenceOrder fences;

    PlanMaker(NestTask task) {
        this.task = task;
        fences = new FenceOrder(task);
    }

    SheetPlan plan(Bin bin) {
        NestJob job = task.job();
        bin.root().cutAlongFirst();
        fences.improve(bin.root());
        CutNode cuts = node(bin.root());
        List<SheetPlan.Placed> panels = new ArrayList<>();
        double length = bin.kind().sheet().length();
        double width = bin.kind().sheet().width();
        for (CutReplay.Spot spot : CutReplay.of(cuts, length, width, job.kerf(), job.trim())) {
            if (!spot.offcut()) {
                panels.add(placed(spot));
            }
        }
        return new SheetPlan(bin.kind().sheet(), job.trim(), job.kerf(), job.leastStrip(), cuts, panels);
    }

    private SheetPlan.Placed placed(CutReplay.Spot spot) {
        NestPart part = task.part(spot.mark());
        boolean rotated = Math.abs(spot.length() - part.length()) > 2 * CutReplay.SLACK;
        return new SheetPlan.Placed(spot.mark(), spot.x(), spot.y(), spot.length(), spot.width(), rotated);
    }

    private CutNode node(Region region) {
        if (region.row == null) {
            String mark = region.free()
                    ? null
                    : task.job()
                            .parts()
                            .get(task.pieces().get(region.piece).part())
                            .mark();
            return new Leaf(mark, metres(region.length), metres(region.width));
        }
        List<Region> row = new ArrayList<>(region.row);
        row.removeIf(child -> child.length == 0 || child.width == 0);
        return row(region, row, 0);
    }

    private CutNode row(Region region, List<Region> row, int from) {
        CutNode first = node(row.get(from));
        if (from == row.size() - 1) {
            return first;
        }
        Along along = region.ripped ? Along.LENGTH : Along.WIDTH;
        return new Cut(along, metres(FenceOrder.extent(region, row.get(from))), first, row(region, row, from + 1));
    }

    /** The kerf taken off; what is narrower than it becomes dust. */
    private double metres(long withKerf) {
        return Math.max(0, withKerf - task.kerf()) / NestTask.PER_METRE;
    }
}
