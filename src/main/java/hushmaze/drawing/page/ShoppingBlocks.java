package hushmaze.drawing.page;

import hushmaze.assess.PathResult;
import hushmaze.build.KeptOffcut;
import hushmaze.build.Quantities;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import hushmaze.build.Supply;
import hushmaze.build.joint.CollarPlan;
import hushmaze.build.joint.FastenerList;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.material.Sheet;
import hushmaze.project.Fitting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** What to buy and what it weighs. */
final class ShoppingBlocks {
    /** Thickness of foam tape over that to which it is pressed (common practice, no source). */
    private static final double PRESSED_BY = 2;

    private final Job job;

    ShoppingBlocks(Job job) {
        this.job = job;
    }

    List<Block> all() {
        PathResult.Buildable build = job.result().buildable();
        List<Block> all = new ArrayList<>();
        all.add(job.blocks().heading(Labels.of("shopping.title")));
        all.add(table());
        kept().forEach(words -> all.add(job.blocks().remark(words)));
        all.add(job.blocks().remark(Labels.of("shopping.remark", job.amounts().mass(build.mass())) + " " + sheets()));
        all.add(small());
        all.add(job.blocks()
                .remark(Labels.of(
                        "shopping.small.remark",
                        job.figures()
                                .area(Quantities.GLUE_COVERS * job.figures().bottle()),
                        Labels.of("shopping.glue." + job.units()))));
        for (SheetLayout layout : job.result().layouts()) {
            if (!layout.unplaced().isEmpty()) {
                String marks = String.join(", ", layout.unplaced());
                all.add(job.blocks().bullet(Labels.of("shopping.unplaced", layout.material(), marks), Ink.ALERT));
            }
        }
        List<String> fixing = job.wording().fixing(job.result());
        if (!fixing.isEmpty()) {
            all.add(job.blocks().heading(Labels.of("shopping.fixing")));
            fixing.forEach(f -> all.add(job.blocks().paragraph(f)));
        }
        return all;
    }

    /** Glue, sealant, gasket, screws, adhesive and paint. */
    private Block small() {
        Quantities q = job.result().quantities();
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("shopping.small")),
                        Column.number(Labels.of("shopping.amount")),
                        Column.words(Labels.of("shopping.for"))));
        for (FastenerList.Counted counted :
                job.result().fasteners(job.assessment().project())) {
            table.row(
                    Labels.of(
                            "shopping.fastener",
                            FastenerNames.kind(counted.fastener()),
                            new FastenerNames(job).size(counted.fastener())),
                    String.valueOf(counted.count()),
                    use(counted.use()));
        }
        collars(table);
        job.result().fixing().hanging().ifPresent(hanging -> new HangingRows(job, hanging.way()).addTo(table));
        smallRow(table, "glue", job.figures().glue(q.glue()));
        smallRow(table, "sealant", job.amounts().distance(q.sealant()));
        boolean baffles = !job.result().solid().baffles().isEmpty();
        table.row(
                gasket(),
                job.amounts().distance(q.gasket()),
                Labels.of(baffles ? "shopping.gasket.baffles.for" : "shopping.gasket.for"));
        if (q.linerAdhesive() > 0) {
            smallRow(table, "adhesive", job.figures().area(q.linerAdhesive()));
        }
        if (q.facing() > 0) {
            table.row(
                    job.result().path().box().liner().facing().name(),
                    job.figures().area(q.facing()),
                    Labels.of("shopping.facing.for"));
        }
        if (q.linerEdges() > 0) {
            smallRow(table, "edges", job.amounts().distance(q.linerEdges()));
        }
        smallRow(table, "paint", job.figures().area(q.paint()));
        return table;
    }

    /** Foam that is pressed to the gasket's thickness; as thick as is usual where a box has none under its cover. */
    private String gasket() {
        double pressed = job.result().path().box().joinery().gasket();
        return pressed > 0
                ? Labels.of("shopping.gasket", job.length(PRESSED_BY * pressed))
                : Labels.of("shopping.gasket.thin");
    }

    private String use(FastenerList.Use use) {
        boolean oneLayer = job.result().path().box().shell().size() == 1;
        String key = "fastener.use." + use.name().toLowerCase(Locale.ROOT);
        return Labels.of(use == FastenerList.Use.JOINTS && oneLayer ? key + ".one" : key);
    }

    private void collars(Table table) {
        for (CollarPlan plan : job.result().collars(job.assessment().project())) {
            String size = plan.diameter() == null
                    ? job.amounts().sizes(plan.width(), plan.height())
                    : Labels.of("shopping.collar.round", job.length(plan.diameter()));
            String port = Labels.of(
                    plan.end() == Fitting.End.AT_OPENING ? "shopping.collar.opening" : "shopping.collar.room");
            table.row(
                    Labels.of("shopping.collar"),
                    size,
                    Labels.of("shopping.collar.for", port, job.length(CollarPlan.FLANGE)));
            String length =
                    plan.screwLength() > 0 ? job.length(plan.screwLength()) : Labels.of("shopping.collar.short");
            table.row(
                    Labels.of("shopping.fastener", Labels.of("fastener.screw"), length),
                    String.valueOf(plan.screws()),
                    Labels.of("shopping.collar.screws"));
        }
    }

    private static void smallRow(Table table, String key, String amount) {
        table.row(Labels.of("shopping." + key), amount, Labels.of("shopping." + key + ".for"));
    }

    /** What of the sheets is worth keeping, what they cost, and whether none could cost less. */
    private String sheets() {
        List<String> words = new ArrayList<>();
        List<SheetLayout> layouts = job.result().layouts();
        boolean priced = layouts.stream().allMatch(l -> l.cost().isPresent());
        if (priced) {
            double cost =
                    layouts.stream().mapToDouble(l -> l.cost().orElseThrow()).sum();
            words.add(Labels.of("shopping.cost", job.figures().fixed(cost, 2)));
        }
        if (layouts.stream().allMatch(SheetLayout::provedBest)) {
            words.add(Labels.of("shopping.proved"));
        }
        List<String> offcuts = layouts.stream()
                .flatMap(l -> l.offcuts().stream()
                        .map(o -> l.material() + " " + job.amounts().sizes(o.length(), o.width())))
                .limit(Supply.MOST_OFFCUTS)
                .toList();
        if (!offcuts.isEmpty()) {
            words.add(Labels.of("shopping.offcuts", String.join("; ", offcuts)));
        }
        return String.join(" ", words);
    }

    /** Which offcuts come from boxes before, and which are kept for boxes after. */
    private List<String> kept() {
        List<String> words = new ArrayList<>();
        cutUp(job.result()).forEach(o -> words.add(words("shopping.kept", o, o.path())));
        String name = job.result().path().name();
        for (PathResult other : job.assessment().paths()) {
            cutUp(other)
                    .filter(o -> o.path().equals(name))
                    .forEach(o ->
                            words.add(words("shopping.keep", o, other.path().name())));
        }
        return words;
    }

    private static Stream<KeptOffcut> cutUp(PathResult result) {
        return result.layouts().stream().flatMap(layout -> layout.keptOffcuts().stream());
    }

    private String words(String key, KeptOffcut o, String path) {
        return Labels.of(
                key, o.material(), job.amounts().sizes(o.length(), o.width()), String.valueOf(o.sheet()), path);
    }

    private Block table() {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.number(Labels.of("shopping.count")),
                        Column.words(Labels.of("shopping.what")),
                        Column.number(Labels.of("shopping.thickness")),
                        Column.number(Labels.of("shopping.size")),
                        Column.number(Labels.of("shopping.waste")),
                        Column.number(Labels.of("shopping.price"))));
        for (SheetLayout layout : job.result().layouts()) {
            Map<Sheet, Integer> counts = new LinkedHashMap<>();
            for (SheetPlan plan : layout.sheets()) {
                counts.merge(plan.sheet(), 1, Integer::sum);
            }
            counts.forEach((sheet, count) -> table.row(
                    String.valueOf(count),
                    layout.material(),
                    job.thickness(layout.thickness()),
                    job.amounts().sizes(sheet.length(), sheet.width()),
                    job.figures().percent(layout.waste()),
                    sheet.price() == null ? "–" : job.figures().fixed(count * sheet.price(), 2)));
        }
        return table;
    }
}
