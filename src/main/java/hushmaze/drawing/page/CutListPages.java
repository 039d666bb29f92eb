package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The cut list as a table. */
final class CutListPages {
    private final Job job;

    CutListPages(Job job) {
        this.job = job;
    }

    List<Draft> pages() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(job.blocks().title(Labels.of("cutList.title")));
        blocks.add(job.blocks().paragraph(Labels.of("cutList.explained")));
        blocks.add(job.blocks().heading(Labels.of("cutList.boards")));
        blocks.add(table(job.result().cutList().boards()));
        if (!job.result().cutList().liners().isEmpty()) {
            blocks.add(job.blocks().heading(Labels.of("cutList.liners")));
            blocks.add(table(job.result().cutList().liners()));
        }
        if (job.units() == UnitSystem.INCH) {
            String worst = job.figures().fixed(1000 * worstRounding(), 2);
            blocks.add(job.blocks().remark(Labels.of("cutList.rounding", worst)));
        }
        return job.textPages(Labels.of("cutList.title"), Labels.of("type.cutList"), blocks, 1);
    }

    private Block table(List<CutItem> items) {
        boolean inches = job.units() == UnitSystem.INCH;
        List<Column> columns = new ArrayList<>();
        columns.add(Column.name(Labels.of("cutList.mark")));
        columns.add(Column.number(Labels.of("cutList.quantity")));
        columns.add(Column.number(Labels.of("cutList.length")));
        columns.add(Column.number(Labels.of("cutList.width")));
        columns.add(Column.number(Labels.of("cutList.thickness")));
        if (inches) {
            columns.add(Column.number(Labels.of("cutList.millimetres")));
        }
        columns.add(Column.words(Labels.of("cutList.material")));
        columns.add(Column.words(Labels.of("cutList.part")));
        columns.add(Column.words(Labels.of("cutList.cutouts")));
        Table table = new Table(job.measure(), columns);
        for (CutItem item : items) {
            List<String> cells = new ArrayList<>(List.of(
                    item.mark(),
                    String.valueOf(item.quantity()),
                    job.bare(item.length()),
                    job.bare(item.width()),
                    job.bare(item.thickness())));
            if (inches) {
                cells.add(millimetres(item.length()) + " × " + millimetres(item.width()));
            }
            cells.add(item.material());
            cells.add(PartNames.of(item, job.result().path().box()));
            cells.add(work(item));
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }

    private String work(CutItem item) {
        List<String> work = new ArrayList<>();
        item.cutouts().forEach(c -> work.add(cutout(c)));
        item.grooves().forEach(g -> work.add(groove(g)));
        if (!item.holes().isEmpty()) {
            work.add(Labels.of("cutList.holes", String.valueOf(item.holes().size())));
        }
        return String.join("; ", work);
    }

    private String groove(Groove g) {
        return Labels.of(
                "cutList.groove",
                job.bare(g.u1() - g.u0()),
                job.bare(g.v1() - g.v0()),
                job.bare(g.depth()),
                job.bare(g.u0()),
                job.bare(g.v0()));
    }

    private String cutout(Cutout c) {
        return Labels.of(
                "cutList.cutout",
                job.bare(c.u1() - c.u0()),
                job.bare(c.v1() - c.v0()),
                job.bare(c.u0()),
                job.bare(c.v0()));
    }

    private static String millimetres(double metres) {
        return LengthFormat.bare(metres, UnitSystem.METRIC);
    }

    /** Largest difference between a printed size and the true one, m. */
    private double worstRounding() {
        return Stream.of(job.result().cutList().boards(), job.result().cutList().liners())
                .flatMap(List::stream)
                .flatMapToDouble(i -> DoubleStream.of(i.length(), i.width()))
                .map(m -> Math.abs(LengthFormat.roundingError(m, job.units())))
                .max()
                .orElse(0);
    }
}
