package hushmaze.drawing.page;

import hushmaze.build.BoardCheck;
import hushmaze.build.CutItem;
import hushmaze.build.PrintedFit;
import hushmaze.drawing.Ink;
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

/** The cut list as a table. */
final class CutListPages {
    /** So much thicker is the board of the example, m. */
    private static final double EXAMPLE = 0.0004;

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
        BoardCheck.of(job.result().solid(), job.result().cutList()).forEach(check -> measure(check, blocks));
        blocks.add(fit());
        if (job.units() == UnitSystem.INCH) {
            String worst = job.figures().fixed(1000 * worstRounding(), 2);
            blocks.add(job.blocks().remark(Labels.of("cutList.rounding", worst)));
        }
        return job.textPages(Labels.of("cutList.title"), Labels.of("type.cutList"), blocks, 1);
    }

    /** What moves when a board is not as thick as thought. */
    private void measure(BoardCheck check, List<Block> blocks) {
        String thickness = job.length(check.board().thickness());
        double example = EXAMPLE;
        blocks.add(job.blocks().heading(Labels.of("cutList.measure")));
        blocks.add(job.blocks()
                .paragraph(Labels.of("cutList.measure.why", check.board().name(), thickness)));
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.name(Labels.of("cutList.mark")),
                        Column.words(Labels.of("cutList.part")),
                        Column.number(Labels.of("cutList.measure.length")),
                        Column.number(Labels.of("cutList.measure.width")),
                        Column.number(Labels.of(
                                "cutList.measure.example",
                                job.length(check.board().thickness() + example)))));
        for (BoardCheck.Change change : check.changes()) {
            CutItem item = change.item();
            table.row(
                    item.mark(),
                    PartNames.of(change.parts(), job.result().path().box()),
                    times(change.length()),
                    times(change.width()),
                    job.bare(item.length() + change.length() * example) + " × "
                            + job.bare(item.width() + change.width() * example));
        }
        blocks.add(table);
        blocks.add(job.blocks()
                .remark(Labels.of(
                        "cutList.measure.wrong",
                        job.length(check.board().thickness() + example),
                        job.length(check.changes().stream()
                                .mapToDouble(c -> example * Math.max(Math.abs(c.length()), Math.abs(c.width())))
                                .max()
                                .orElse(0)),
                        job.length(check.outer() * example))));
    }

    private static String times(int thicknesses) {
        if (thicknesses == 0) {
            return "–";
        }
        String sign = thicknesses < 0 ? "−" : "+";
        return Labels.of("cutList.measure.times", sign, String.valueOf(Math.abs(thicknesses)));
    }

    /** How well the printed sizes close. */
    private Block fit() {
        PrintedFit fit = PrintedFit.of(job.result().solid(), job.units());
        String step = job.figures().fixed(1000 * fit.step(), 2);
        return fit.closes()
                ? job.blocks().remark(Labels.of("cutList.fit", step))
                : job.blocks()
                        .bullet(
                                Labels.of("cutList.tight", job.figures().fixed(1000 * fit.tight(), 2), step),
                                Ink.ALERT);
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
        return job.result()
                .cutList()
                .items()
                .flatMapToDouble(i -> DoubleStream.of(i.length(), i.width()))
                .map(m -> Math.abs(LengthFormat.roundingError(m, job.units())))
                .max()
                .orElse(0);
    }
}
