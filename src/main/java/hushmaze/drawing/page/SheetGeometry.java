package hushmaze.drawing.page;

import hushmaze.build.CutNode;
import hushmaze.build.SheetPlan;
import java.util.ArrayList;
import java.util.List;

/** Where the cuts and offcuts of a sheet lie, from the sheet's own untrimmed corner. */
final class SheetGeometry {
    /**
     * A cut: the middle of its kerf.
     *
     * @param number in the order of the tree, from 1
     * @param cut itself
     * @param x0 start along the sheet's length, m
     * @param y0 start along its width, m
     * @param x1 end, m
     * @param y1 end, m
     */
    record Line(int number, CutNode.Cut cut, double x0, double y0, double x1, double y1) {}

    /** A piece that is left over, m. */
    record Offcut(double x, double y, double length, double width) {}

    private final SheetPlan plan;
    private final List<Line> lines = new ArrayList<>();
    private final List<Offcut> offcuts = new ArrayList<>();

    SheetGeometry(SheetPlan plan) {
        this.plan = plan;
        double trim = plan.trim();
        walk(
                plan.cuts(),
                trim,
                trim,
                plan.sheet().length() - 2 * trim,
                plan.sheet().width() - 2 * trim);
    }

    List<Line> lines() {
        return List.copyOf(lines);
    }

    List<Offcut> offcuts() {
        return List.copyOf(offcuts);
    }

    private void walk(CutNode node, double x, double y, double length, double width) {
        if (node instanceof CutNode.Leaf leaf) {
            if (leaf.offcut()) {
                offcuts.add(new Offcut(x, y, leaf.length(), leaf.width()));
            }
            return;
        }
        CutNode.Cut cut = (CutNode.Cut) node;
        double kerf = plan.kerf();
        double middle = cut.at() + kerf / 2;
        if (cut.along() == CutNode.Along.LENGTH) {
            lines.add(new Line(lines.size() + 1, cut, x, y + middle, x + length, y + middle));
            walk(cut.first(), x, y, length, cut.at());
            walk(cut.second(), x, y + cut.at() + kerf, length, width - cut.at() - kerf);
        } else {
            lines.add(new Line(lines.size() + 1, cut, x + middle, y, x + middle, y + width));
            walk(cut.first(), x, y, cut.at(), width);
            walk(cut.second(), x + cut.at() + kerf, y, length - cut.at() - kerf, width);
        }
    }
}
