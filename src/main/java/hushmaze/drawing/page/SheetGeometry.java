package hushmaze.drawing.page;

import hushmaze.build.CutNode;
import hushmaze.build.CutSequence;
import hushmaze.build.SheetPlan;
import java.util.ArrayList;
import java.util.List;

/** Where the cuts and offcuts of a sheet lie, from the sheet's own untrimmed corner. */
final class SheetGeometry {
    /**
     * A cut: the middle of its kerf.
     *
     * @param step of the cut sequence
     * @param x0 start along the sheet's length, m
     * @param y0 start along its width, m
     * @param x1 end, m
     * @param y1 end, m
     */
    record Line(CutSequence.Step step, double x0, double y0, double x1, double y1) {}

    /** A piece that is left over, m. */
    record Offcut(double x, double y, double length, double width) {}

    private record Spot(CutNode node, double x, double y, double length, double width) {}

    private final double kerf;
    private final List<CutSequence.Step> steps;
    private final List<Line> lines = new ArrayList<>();
    private final List<Offcut> offcuts = new ArrayList<>();

    SheetGeometry(SheetPlan plan) {
        this.kerf = plan.kerf();
        this.steps = CutSequence.of(plan).steps();
        double trim = plan.trim();
        row(new Spot(
                plan.cuts(),
                trim,
                trim,
                plan.sheet().length() - 2 * trim,
                plan.sheet().width() - 2 * trim));
    }

    List<Line> lines() {
        return List.copyOf(lines);
    }

    List<Offcut> offcuts() {
        return List.copyOf(offcuts);
    }

    /** All parallel cuts of a piece, then what came off: the order of the cut sequence. */
    private void row(Spot start) {
        List<Spot> came = new ArrayList<>();
        Spot rest = start;
        while (rest.node() instanceof CutNode.Cut cut
                && start.node() instanceof CutNode.Cut first
                && cut.along() == first.along()) {
            boolean rip = cut.along() == CutNode.Along.LENGTH;
            double middle = cut.at() + kerf / 2;
            double beyond = cut.at() + kerf;
            double x = rest.x();
            double y = rest.y();
            CutSequence.Step step = steps.get(lines.size());
            if (rip) {
                lines.add(new Line(step, x, y + middle, x + rest.length(), y + middle));
                came.add(new Spot(cut.first(), x, y, rest.length(), cut.at()));
                rest = new Spot(cut.second(), x, y + beyond, rest.length(), rest.width() - beyond);
            } else {
                lines.add(new Line(step, x + middle, y, x + middle, y + rest.width()));
                came.add(new Spot(cut.first(), x, y, cut.at(), rest.width()));
                rest = new Spot(cut.second(), x + beyond, y, rest.length() - beyond, rest.width());
            }
        }
        if (came.isEmpty()) {
            leaf((CutNode.Leaf) start.node(), start);
        } else {
            came.add(rest);
            came.forEach(this::row);
        }
    }

    private void leaf(CutNode.Leaf leaf, Spot spot) {
        if (leaf.offcut() && spot.length() > 0 && spot.width() > 0) {
            offcuts.add(new Offcut(spot.x(), spot.y(), spot.length(), spot.width()));
        }
    }
}
