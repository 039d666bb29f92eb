package hushmaze.drawing.page;

import hushmaze.build.CutNode;
import hushmaze.build.CutSequence;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.Scale;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import java.util.ArrayList;
import java.util.List;

/** One page for each sheet with its cuts, then the cuts in words. */
final class SheetPages {
    private static final double WORDS = 7;

    private final Job job;

    SheetPages(Job job) {
        this.job = job;
    }

    List<Draft> pages() {
        List<Draft> pages = new ArrayList<>();
        for (SheetLayout layout : job.result().layouts()) {
            for (int i = 0; i < layout.sheets().size(); i++) {
                pages.add(page(layout, i));
            }
        }
        pages.addAll(sequence());
        return pages;
    }

    private Draft page(SheetLayout layout, int index) {
        SheetPlan plan = layout.sheets().get(index);
        Bounds area = job.drawingSheet().content();
        double dimension = 18;
        Scale scale = Scale.fitting(
                plan.sheet().length(),
                plan.sheet().width(),
                area.width() - dimension,
                area.height() - dimension - WORDS);
        Sketch view = new SheetView(job, plan, scale).draw();
        Bounds b = view.bounds(job.measure());
        Sketch page = new Sketch();
        page.add(view, area.centreX() - b.centreX(), area.centreY() + WORDS / 2 - b.centreY());
        page.text(area.centreX(), area.y0() + Lettering.TEXT, words(layout, plan), Lettering.TEXT, Anchor.MIDDLE);
        return new Draft(title(layout, index), Labels.of("type.sheet"), scale, job.drawingSheet(), page);
    }

    private String title(SheetLayout layout, int index) {
        return Labels.of(
                "sheet.title",
                layout.material(),
                String.valueOf(index + 1),
                String.valueOf(layout.sheets().size()));
    }

    private String words(SheetLayout layout, SheetPlan plan) {
        String cutting = plan.kerf() > 0
                ? Labels.of("sheet.cutting", job.length(plan.kerf()), job.length(plan.trim()))
                : Labels.of("sheet.knife");
        return Labels.of(
                "sheet.words",
                plan.sheet().name(),
                job.length(layout.thickness()),
                cutting,
                job.figures().percent(plan.waste()));
    }

    private List<Draft> sequence() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(job.blocks().title(Labels.of("sequence.title")));
        blocks.add(job.blocks().paragraph(Labels.of("sequence.explained")));
        for (SheetLayout layout : job.result().layouts()) {
            for (int i = 0; i < layout.sheets().size(); i++) {
                Block table = table(layout.sheets().get(i));
                blocks.add(job.blocks().heading(title(layout, i)));
                blocks.add(table);
            }
        }
        return job.textPages(Labels.of("sequence.title"), Labels.of("type.sheet"), blocks);
    }

    private Block table(SheetPlan plan) {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.number(Labels.of("sequence.cut")),
                        Column.name(Labels.of("sequence.from")),
                        Column.name(Labels.of("sequence.direction")),
                        Column.number(Labels.of("sequence.fence")),
                        Column.words(Labels.of("sequence.gives"))));
        for (CutSequence.Step step : CutSequence.of(plan).steps()) {
            boolean rip = step.along() == CutNode.Along.LENGTH;
            table.row(
                    String.valueOf(step.number()),
                    piece(step.from(), true),
                    Labels.of(rip ? "sequence.rip" : "sequence.crosscut"),
                    job.length(step.fence()),
                    Labels.of("sequence.pieces", piece(step.first(), false), piece(step.second(), false)));
        }
        return table;
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
