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
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** What follows the real thickness of a board, and how well boards fit that are cut to the printed sizes. */
final class BoardCheckBlocks {
    /** What does not show in hundredths of a millimetre. */
    private static final String NOTHING = "0.00";

    private final Job job;

    BoardCheckBlocks(Job job) {
        this.job = job;
    }

    void addTo(List<Block> blocks) {
        BoardCheck.of(job.result().solid(), job.result().cutList()).forEach(check -> measure(check, blocks));
        blocks.add(fit());
        String worst = job.figures().fixed(1000 * worstRounding(), 2);
        if (job.units() == UnitSystem.INCH && !worst.equals(NOTHING)) {
            blocks.add(job.blocks().remark(Labels.of("cutList.rounding", worst)));
        }
    }

    /** What moves when a board is not as thick as thought. */
    private void measure(BoardCheck check, List<Block> blocks) {
        blocks.add(job.blocks().heading(Labels.of("cutList.measure")));
        blocks.add(job.blocks()
                .paragraph(Labels.of(
                        "cutList.measure.why",
                        check.board().name(),
                        job.thickness(check.board().thickness()))));
        blocks.add(table(check));
        if (check.changes().stream().anyMatch(change -> !change.features().isEmpty())) {
            blocks.add(features(check));
        }
        blocks.add(job.blocks().remark(Labels.of("cutList.measure.holes")));
        blocks.add(job.blocks().remark(ignored(check)));
    }

    private Table table(BoardCheck check) {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.name(Labels.of("cutList.mark")),
                        Column.words(Labels.of("cutList.part")),
                        Column.number(Labels.of("cutList.measure.length")),
                        Column.number(Labels.of("cutList.measure.width")),
                        Column.number(Labels.of("cutList.measure.example", example(check)))));
        for (BoardCheck.Change change : check.changes()) {
            CutItem item = change.item();
            if (!change.resized()) {
                continue;
            }
            table.row(
                    item.mark(),
                    PartNames.of(change.parts(), job.result().path().box()),
                    times(change.length()),
                    times(change.width()),
                    job.bare(item.length() + change.length() * BoardCheck.EXAMPLE) + " × "
                            + job.bare(item.width() + change.width() * BoardCheck.EXAMPLE));
        }
        return table;
    }

    /** Cut-outs and grooves that move. */
    private Table features(BoardCheck check) {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.name(Labels.of("cutList.mark")),
                        Column.words(Labels.of("cutList.measure.feature")),
                        Column.number(Labels.of("cutList.measure.left")),
                        Column.number(Labels.of("cutList.measure.below")),
                        Column.number(Labels.of("cutList.measure.long")),
                        Column.number(Labels.of("cutList.measure.high")),
                        Column.number(Labels.of("cutList.measure.example", example(check)))));
        for (BoardCheck.Change change : check.changes()) {
            for (BoardCheck.Feature feature : change.features()) {
                table.row(
                        change.item().mark(),
                        Labels.of(
                                "cutList.measure.feature." + (feature.groove() ? "groove" : "cutout"), at(feature, 0)),
                        few(feature.left()),
                        few(feature.below()),
                        few(feature.length()),
                        few(feature.width()),
                        at(feature, BoardCheck.EXAMPLE));
            }
        }
        return table;
    }

    private String at(BoardCheck.Feature feature, double more) {
        return CutListPages.cutout(job, feature.at(more));
    }

    private static String few(int thicknesses) {
        return times("cutList.measure.few", thicknesses);
    }

    /** What comes of it if the difference goes unnoticed, and where the outside moves if it does not. */
    private String ignored(BoardCheck check) {
        PrintedFit fit = check.ignored(job.result().solid(), BoardCheck.EXAMPLE);
        List<String> sentences = new ArrayList<>();
        sentences.add(Labels.of("cutList.measure.wrong", example(check), job.thickness(fit.step())));
        if (check.between() > 0) {
            sentences.add(Labels.of("cutList.measure.narrow", job.thickness(check.between() * BoardCheck.EXAMPLE)));
        }
        if (!fit.closes()) {
            sentences.add(Labels.of("cutList.measure.tight", job.thickness(fit.tight())));
        }
        BoardCheck.Outside outer = check.outer();
        sentences.add(Labels.of(
                "cutList.measure.outside",
                job.thickness(outer.length() * BoardCheck.EXAMPLE),
                job.thickness(outer.width() * BoardCheck.EXAMPLE),
                job.thickness(outer.height() * BoardCheck.EXAMPLE)));
        return String.join(" ", sentences);
    }

    private String example(BoardCheck check) {
        return job.thickness(check.board().thickness() + BoardCheck.EXAMPLE);
    }

    private static String times(int thicknesses) {
        return times("cutList.measure.times", thicknesses);
    }

    private static String times(String key, int thicknesses) {
        if (thicknesses == 0) {
            return "–";
        }
        String sign = thicknesses < 0 ? "−" : "+";
        return Labels.of(key, sign, String.valueOf(Math.abs(thicknesses)));
    }

    /** How well the printed sizes close. */
    private Block fit() {
        PrintedFit fit = PrintedFit.of(job.result().solid(), job.result().cutList(), job.units());
        String step = job.figures().fixed(1000 * fit.step(), 2);
        String fits = step.equals(NOTHING) ? Labels.of("cutList.fit.flush") : Labels.of("cutList.fit", step);
        return fit.closes()
                ? job.blocks().remark(fits)
                : job.blocks()
                        .bullet(
                                Labels.of("cutList.tight", job.figures().fixed(1000 * fit.tight(), 2), step),
                                Ink.ALERT);
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
