package hushmaze.build;

import hushmaze.material.Sheet;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Checks a layout without using anything of the code that made it: from the rectangles alone, by looking for cuts that
 * separate them, and by a replay of the cuts of its own.
 */
final class LayoutCheck {
    private static final double SLACK = 2e-9;

    private record Todo(CutNode node, double x, double y, double length, double width) {}

    private LayoutCheck() {}

    /** What is wrong with a layout; empty if nothing is. */
    static List<String> faults(SheetLayout layout, NestJob job) {
        List<String> faults = new ArrayList<>();
        Map<String, Integer> missing = new HashMap<>();
        Map<String, NestPart> parts = new HashMap<>();
        for (NestPart part : job.parts()) {
            missing.put(part.mark(), part.quantity());
            parts.put(part.mark(), part);
        }
        layout.unplaced().forEach(mark -> missing.merge(mark, -1, Integer::sum));
        for (SheetPlan plan : layout.sheets()) {
            plan.panels().forEach(panel -> missing.merge(panel.mark(), -1, Integer::sum));
            plan.panels().forEach(panel -> checkPanel(panel, parts.get(panel.mark()), plan, job, faults));
            if (!separable(plan.panels(), job.kerf())) {
                faults.add("no cut from edge to edge with kerf separates " + plan.panels());
            }
            checkCuts(plan, job, faults);
        }
        missing.forEach((mark, count) -> {
            if (count != 0) {
                faults.add(mark + " is missing " + count + " times");
            }
        });
        checkStock(layout, job, faults);
        return faults;
    }

    private static void checkPanel(
            SheetPlan.Placed panel, NestPart part, SheetPlan plan, NestJob job, List<String> faults) {
        double length = panel.rotated() ? part.width() : part.length();
        double width = panel.rotated() ? part.length() : part.width();
        if (Math.abs(length - panel.length()) > SLACK || Math.abs(width - panel.width()) > SLACK) {
            faults.add("size of " + panel + " is not that of " + part);
        }
        if (part.grain() && panel.rotated()) {
            faults.add("turned against the grain: " + panel);
        }
        double trim = job.trim();
        if (panel.x() < trim - SLACK
                || panel.y() < trim - SLACK
                || panel.x() + panel.length() > plan.sheet().length() - trim + SLACK
                || panel.y() + panel.width() > plan.sheet().width() - trim + SLACK) {
            faults.add("outside the trimmed sheet: " + panel);
        }
    }

    /** Whether rectangles can be told apart by straight cuts of the given width from edge to edge, again and again. */
    static boolean separable(List<SheetPlan.Placed> panels, double kerf) {
        if (panels.size() <= 1) {
            return true;
        }
        return split(panels, kerf, SheetPlan.Placed::x, SheetPlan.Placed::length)
                || split(panels, kerf, SheetPlan.Placed::y, SheetPlan.Placed::width);
    }

    private static boolean split(
            List<SheetPlan.Placed> panels,
            double kerf,
            ToDoubleFunction<SheetPlan.Placed> start,
            ToDoubleFunction<SheetPlan.Placed> size) {
        List<SheetPlan.Placed> sorted = new ArrayList<>(panels);
        sorted.sort(Comparator.comparingDouble(start));
        double end = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < sorted.size(); i++) {
            double low = start.applyAsDouble(sorted.get(i));
            if (i > 0 && low >= end + kerf - SLACK) {
                return separable(sorted.subList(0, i), kerf) && separable(sorted.subList(i, sorted.size()), kerf);
            }
            end = Math.max(end, low + size.applyAsDouble(sorted.get(i)));
        }
        return false;
    }

    private static void checkCuts(SheetPlan plan, NestJob job, List<String> faults) {
        List<SheetPlan.Placed> open = new ArrayList<>(plan.panels());
        Deque<Todo> todo = new ArrayDeque<>();
        double trim = job.trim();
        todo.push(new Todo(
                plan.cuts(),
                trim,
                trim,
                plan.sheet().length() - 2 * trim,
                plan.sheet().width() - 2 * trim));
        while (!todo.isEmpty()) {
            Todo t = todo.pop();
            if (t.node() instanceof CutNode.Cut cut) {
                cut(t, cut, job.kerf(), todo, faults);
            } else if (t.node() instanceof CutNode.Leaf leaf) {
                boolean known = leaf.mark() == null || open.removeIf(panel -> lies(panel, leaf, t));
                if (!known
                        || Math.abs(leaf.length() - t.length()) > SLACK
                        || Math.abs(leaf.width() - t.width()) > SLACK) {
                    faults.add("the cuts give " + t + ", which is not placed so");
                }
            }
        }
        if (!open.isEmpty()) {
            faults.add("no cut gives " + open);
        }
    }

    private static void cut(Todo t, CutNode.Cut cut, double kerf, Deque<Todo> todo, List<String> faults) {
        boolean rip = cut.along() == CutNode.Along.LENGTH;
        double size = rip ? t.width() : t.length();
        if (!(cut.at() > 0 && cut.at() < size)) {
            faults.add("a cut outside its piece: " + cut.at() + " of " + size);
        }
        double beyond = cut.at() + kerf;
        double rest = Math.max(0, size - beyond);
        if (rip) {
            todo.push(new Todo(cut.first(), t.x(), t.y(), t.length(), cut.at()));
            todo.push(new Todo(cut.second(), t.x(), t.y() + Math.min(beyond, size), t.length(), rest));
        } else {
            todo.push(new Todo(cut.first(), t.x(), t.y(), cut.at(), t.width()));
            todo.push(new Todo(cut.second(), t.x() + Math.min(beyond, size), t.y(), rest, t.width()));
        }
    }

    private static boolean lies(SheetPlan.Placed panel, CutNode.Leaf leaf, Todo t) {
        return panel.mark().equals(leaf.mark())
                && Math.abs(panel.x() - t.x()) <= SLACK
                && Math.abs(panel.y() - t.y()) <= SLACK
                && Math.abs(panel.length() - t.length()) <= SLACK
                && Math.abs(panel.width() - t.width()) <= SLACK;
    }

    private static void checkStock(SheetLayout layout, NestJob job, List<String> faults) {
        for (Sheet sheet : job.sheets()) {
            long used = layout.sheets().stream()
                    .filter(plan -> plan.sheet().equals(sheet))
                    .count();
            if (sheet.stock() != null && used > sheet.stock()) {
                faults.add(used + " sheets used of " + sheet);
            }
        }
        if (layout.unplaced().isEmpty() && layout.sheets().size() < layout.lowerBound()) {
            faults.add("fewer sheets than the lower bound " + layout.lowerBound());
        }
    }
}
