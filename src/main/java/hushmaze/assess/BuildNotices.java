package hushmaze.assess;

import hushmaze.build.CutItem;
import hushmaze.build.NarrowStrip;
import hushmaze.build.PrintedFit;
import hushmaze.build.SheetLayouts;
import hushmaze.build.split.Obstacle;
import hushmaze.build.split.SeamPlan;
import hushmaze.build.split.SeamPlanner;
import hushmaze.build.split.SheetRoom;
import hushmaze.project.Construction;
import hushmaze.project.Project;
import hushmaze.project.Seam;
import hushmaze.project.Stock;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.solid.Module;
import hushmaze.solid.Panel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What keeps a box from being cut, carried and closed, with the joints that would mend it. */
final class BuildNotices {
    private final PathResult result;
    private final Construction construction;
    private final Stock stock;
    private final SeamPlanner planner;
    private final List<Notice> notices = new ArrayList<>();
    private SeamPlan plan;

    private BuildNotices(PathResult result, Project project) {
        this.result = result;
        this.construction = result.path().brief().construction();
        this.stock = project.stock();
        this.planner = new SeamPlanner(construction, stock, project.units());
    }

    static List<Notice> of(PathResult result, Project project, boolean proved) {
        BuildNotices all = new BuildNotices(result, project);
        if (!proved) {
            all.notices.add(Notice.of(NoticeKind.PARTS_DO_NOT_CLOSE, Severity.STOP, ""));
        }
        all.sheets();
        all.carrying();
        PrintedFit fit = PrintedFit.of(result.solid(), result.cutList(), project.units());
        if (!fit.closes()) {
            all.notices.add(
                    Notice.of(NoticeKind.PRINTED_SIZES_TIGHT, Severity.WARNING, "", fit.tight(), 0, Unit.MILLIMETRE));
        }
        all.strips();
        return all.notices;
    }

    /** Worked out only when something is wrong. */
    private SeamPlan plan() {
        if (plan == null) {
            plan = planner.plan(result.path().box());
        }
        return plan;
    }

    /** What finds no place on the sheets: there are too few, no joint helps, or those that a few joints would make fit. */
    private void sheets() {
        List<CutItem> mendable = new ArrayList<>();
        for (CutItem item : unplaced()) {
            if (SheetLayouts.fitsSomeSheet(result.cutList(), stock, item.mark())) {
                notices.add(Notice.of(NoticeKind.NOT_ENOUGH_SHEETS, Severity.STOP, item.mark()));
            } else if (isHopeless(item)) {
                notices.add(tooLarge(item.mark(), excess(item)));
            } else {
                mendable.add(item);
            }
        }
        if (!mendable.isEmpty()) {
            String marks = mendable.stream().map(CutItem::mark).collect(Collectors.joining(", "));
            SheetRoom.Excess worst = excess(mendable.get(0));
            for (CutItem item : mendable) {
                SheetRoom.Excess each = excess(item);
                worst = each.value() - each.limit() > worst.value() - worst.limit() ? each : worst;
            }
            notices.add(tooLarge(marks, worst).mendedAt(SeamPlan.places(plan().seams())));
        }
    }

    private List<CutItem> unplaced() {
        List<String> marks = result.layouts().stream()
                .flatMap(l -> l.unplaced().stream())
                .distinct()
                .toList();
        return result.cutList()
                .items()
                .filter(item -> marks.contains(item.mark()))
                .toList();
    }

    private static Notice tooLarge(String marks, SheetRoom.Excess excess) {
        return Notice.of(
                NoticeKind.PANEL_LARGER_THAN_SHEET,
                Severity.STOP,
                marks,
                excess.value(),
                excess.limit(),
                Unit.MILLIMETRE);
    }

    private SheetRoom.Excess excess(CutItem item) {
        SheetRoom sheets =
                isBoard(item) ? SheetRoom.ofBoard(stock, item.material()) : SheetRoom.ofLiner(stock, item.material());
        return sheets.excess(item.length(), item.width(), item.grain());
    }

    private static boolean isBoard(CutItem item) {
        return item.parts().get(0) instanceof Panel;
    }

    private boolean isHopeless(CutItem item) {
        Obstacle.Kind kind = isBoard(item) ? Obstacle.Kind.BOARD : Obstacle.Kind.LINER;
        return plan().obstacles().stream()
                .anyMatch(o -> o.kind() == Obstacle.Kind.PIECE_LENGTH
                        || o.kind() == kind && item.parts().stream().anyMatch(p -> p.role() == o.role()));
    }

    private void strips() {
        for (CutItem item : result.cutList().boards()) {
            NarrowStrip.of(item.parts().get(0))
                    .ifPresent(strip -> notices.add(Notice.of(
                            NoticeKind.NARROW_STRIP,
                            Severity.WARNING,
                            item.mark(),
                            strip.width(),
                            strip.limit(),
                            Unit.MILLIMETRE)));
        }
    }

    private void carrying() {
        Carried carried = Carried.of(result.solid(), construction);
        double heaviest = carried.heaviest().mass();
        if (!carried.light()) {
            NoticeKind kind = carried.inOne() ? NoticeKind.HEAVIER_THAN_LIMIT : NoticeKind.PART_HEAVIER_THAN_LIMIT;
            boolean helps = plan().obstacles().stream().noneMatch(o -> o.kind() == Obstacle.Kind.PART_MASS);
            String part = carried.inOne() ? "" : part(carried.heaviest());
            notices.add(Notice.of(kind, Severity.STOP, part, heaviest, construction.maxMass(), Unit.KILOGRAM)
                    .mendedAt(partings(helps)));
        }
        if (carried.stuck() != null) {
            double[] side = carried.inTheWay(construction.doorway());
            boolean helps = plan().obstacles().stream().noneMatch(Obstacle::ofDoor);
            String part = carried.inOne() ? "box" : "part " + part(carried.stuck()) + " of the box";
            notices.add(
                    Notice.of(NoticeKind.DOES_NOT_PASS_DOORWAY, Severity.STOP, part, side[0], side[1], Unit.MILLIMETRE)
                            .mendedAt(partings(helps)));
        }
        if (!carried.inOne() && result.path().box().joinery().gasket() == 0) {
            notices.add(Notice.of(NoticeKind.SEAM_WITHOUT_GASKET, Severity.WARNING, ""));
        }
    }

    /** As the drawings count them, from the near end. */
    private static String part(Module module) {
        return String.valueOf(module.number() + 1);
    }

    private List<Notice.Place> partings(boolean helps) {
        return helps ? SeamPlan.places(plan().seams(Seam.Kind.PARTING)) : List.of();
    }
}
