package hushmaze.drawing.page;

import hushmaze.build.CutNode;
import hushmaze.build.CutSequence;
import hushmaze.build.KeptOffcut;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Flow;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.Scale;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.drawing.draft.Wrap;
import java.util.ArrayList;
import java.util.List;

/** One page for each sheet with its cuts, then the cuts in words. */
final class SheetPages {
    private static final double WORDS = 7;
    /** Room of the dimensions along two sides of a sheet. */
    private static final double DIMENSION = 14.5;
    /** Column of the cuts in words, and its distance from the sheet. */
    private static final double BESIDE = 96;

    private static final double BETWEEN = 8;
    private final Job job;

    SheetPages(Job job) {
        this.job = job;
    }

    List<Draft> pages() {
        List<Draft> pages = new ArrayList<>();
        List<Block> sequences = new ArrayList<>();
        for (SheetLayout layout : job.result().layouts()) {
            for (int i = 0; i < layout.sheets().size(); i++) {
                pages.add(page(layout, i, sequences));
            }
        }
        if (!sequences.isEmpty()) {
            List<Block> blocks = new ArrayList<>();
            blocks.add(job.blocks().title(Labels.of("sequence.title")));
            blocks.add(job.blocks().paragraph(Labels.of("sequence.explained")));
            blocks.addAll(sequences);
            pages.addAll(job.textPages(Labels.of("sequence.title"), Labels.of("type.sheet"), blocks));
        }
        return pages;
    }

    /** A sheet with its cuts in words beside it; if it would come out too small so, the words go to a later page. */
    private Draft page(SheetLayout layout, int index, List<Block> sequences) {
        SheetPlan plan = layout.sheets().get(index);
        Bounds area = job.drawingSheet().content();
        List<Block> words = new ArrayList<>();
        words.add(job.blocks().heading(title(layout, index)));
        words.add(job.blocks().paragraph(words(layout, plan)));
        CutSequence cuts = CutSequence.of(plan);
        words.add(table(plan, cuts));
        words.add(job.blocks().remark(Labels.of(saw(plan) ? "sequence.remark" : "sequence.remark.knife")));
        words.addAll(warning(plan, cuts));
        double left = area.width() - BESIDE - BETWEEN;
        List<String> above =
                Wrap.lines(words(layout, plan), area.width(), Lettering.TEXT, Weight.REGULAR, job.measure());
        double top = WORDS + (above.size() - 1) * Lettering.TEXT * Lettering.LEADING;
        Scale alone = scale(plan, area.width(), area.height() - top);
        Scale shared = scale(plan, left, area.height());
        Bounds beside = new Bounds(area.x1() - BESIDE, area.y0(), area.x1(), area.y1());
        List<Sketch> column = Flow.pages(words, beside, 1);
        Sketch page = new Sketch();
        if (column.size() == 1 && (shared.equals(alone) || new SheetView(job, plan, shared).legible())) {
            page.add(column.get(0), 0, 0);
            set(page, plan, shared, new Bounds(area.x0(), area.y0(), area.x0() + left, area.y1()));
            return new Draft(title(layout, index), Labels.of("type.sheet"), shared, job.drawingSheet(), page);
        }
        set(page, plan, alone, new Bounds(area.x0(), area.y0() + top, area.x1(), area.y1()));
        double y = area.y0() + Lettering.TEXT;
        for (String line : above) {
            page.text(area.centreX(), y, line, Lettering.TEXT, Anchor.MIDDLE);
            y += Lettering.TEXT * Lettering.LEADING;
        }
        sequences.add(job.blocks().heading(title(layout, index)));
        sequences.add(table(plan, cuts));
        sequences.addAll(warning(plan, cuts));
        return new Draft(title(layout, index), Labels.of("type.sheet"), alone, job.drawingSheet(), page);
    }

    private Scale scale(SheetPlan plan, double width, double height) {
        return Scale.fitting(plan.sheet().length(), plan.sheet().width(), width - DIMENSION, height - DIMENSION);
    }

    private void set(Sketch page, SheetPlan plan, Scale scale, Bounds room) {
        Sketch view = new SheetView(job, plan, scale).draw();
        Bounds b = view.bounds(job.measure());
        page.add(view, room.centreX() - b.centreX(), room.centreY() - b.centreY());
    }

    private String title(SheetLayout layout, int index) {
        return Labels.of(
                layout.sheets().get(index).from() == null ? "sheet.title" : "sheet.title.kept",
                layout.material(),
                String.valueOf(index + 1),
                String.valueOf(layout.sheets().size()));
    }

    private String words(SheetLayout layout, SheetPlan plan) {
        String cutting = saw(plan)
                ? Labels.of("sheet.cutting", job.length(plan.kerf()), job.length(plan.trim()))
                : Labels.of("sheet.knife");
        int settings = CutSequence.of(plan).fenceSettings();
        return Labels.of(
                        "sheet.words",
                        name(plan),
                        job.thickness(layout.thickness()),
                        cutting,
                        job.figures().percent(plan.waste()))
                + (saw(plan) ? Labels.of("sheet.settings", String.valueOf(settings)) : "");
    }

    private static String name(SheetPlan plan) {
        KeptOffcut from = plan.from();
        return from == null
                ? Job.named(plan.sheet().name())
                : Labels.of("sheet.kept", String.valueOf(from.sheet()), from.path());
    }

    private Block table(SheetPlan plan, CutSequence cuts) {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.number(Labels.of("sequence.cut")),
                        Column.name(Labels.of("sequence.from")),
                        Column.name(Labels.of("sequence.direction")),
                        Column.number(Labels.of(saw(plan) ? "sequence.fence" : "sequence.set")),
                        Column.words(Labels.of("sequence.gives"))));
        for (CutSequence.Step step : cuts.steps()) {
            boolean rip = step.along() == CutNode.Along.LENGTH;
            table.row(
                    String.valueOf(step.number()),
                    piece(step.from(), true),
                    Labels.of(rip ? "sequence.rip" : "sequence.crosscut"),
                    fence(plan, step),
                    Labels.of(
                                    "sequence.pieces",
                                    piece(step.first(), false) + turned(plan, step.first()),
                                    piece(step.second(), false) + turned(plan, step.second()))
                            + (step.narrow() ? Labels.of("sequence.narrow") : "")
                            + (saw(plan) && step.left() ? Labels.of("sequence.left", job.length(step.beyond())) : ""));
        }
        return table;
    }

    /** Whether a sheet is sawn; else it is cut with a knife. */
    private static boolean saw(SheetPlan plan) {
        return plan.kerf() > 0;
    }

    private static boolean unsteady(SheetPlan plan, CutSequence.Step step) {
        return saw(plan) && step.unsteady();
    }

    private String fence(SheetPlan plan, CutSequence.Step step) {
        String set = job.length(step.fence());
        return unsteady(plan, step) ? Labels.of("sequence.short", set) : set;
    }

    /** What the mark of a cut with a short edge along the fence says, if there is such a cut. */
    private List<Block> warning(SheetPlan plan, CutSequence cuts) {
        return cuts.steps().stream().anyMatch(step -> unsteady(plan, step))
                ? List.of(job.blocks().remark(Labels.of("sequence.remark.short")))
                : List.of();
    }

    private static String turned(SheetPlan plan, CutSequence.Piece piece) {
        return plan.turned(piece) ? Labels.of("sequence.turned") : "";
    }

    private String piece(CutSequence.Piece piece, boolean whole) {
        String sizes = job.bare(piece.length()) + " × " + job.bare(piece.width());
        return switch (piece.kind()) {
            case SHEET -> Labels.of("sequence.sheet");
            case PART_SHEET -> whole ? piece.name() : Labels.of("sequence.partSheet", piece.name(), sizes);
            case PANEL -> piece.name();
            case OFFCUT -> Labels.of("sequence.offcut", sizes);
            case DUST -> Labels.of("sequence.nothing");
        };
    }
}
