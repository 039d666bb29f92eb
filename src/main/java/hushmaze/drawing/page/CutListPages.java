package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.build.Plate;
import hushmaze.build.PrintedSizes;
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

/** The cut list as a table. */
final class CutListPages {
    private final Job job;
    private final PrintedSizes printed;

    CutListPages(Job job) {
        this.job = job;
        this.printed = job.printed();
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
        List<Block> check = new ArrayList<>();
        new BoardCheckBlocks(job).addTo(check);
        return together(blocks, check);
    }

    /** On one page if all has room there; else what follows the board's thickness has pages of its own. */
    private List<Draft> together(List<Block> list, List<Block> check) {
        List<Block> all = new ArrayList<>(list);
        all.addAll(check);
        List<Draft> together = pages(Labels.of("cutList.title"), all);
        if (together.size() == 1) {
            return together;
        }
        List<Draft> apart = new ArrayList<>(pages(Labels.of("cutList.title"), list));
        apart.addAll(pages(Labels.of("cutList.measure"), check));
        return apart;
    }

    private List<Draft> pages(String title, List<Block> blocks) {
        return job.textPages(title, Labels.of("type.cutList"), blocks, 1);
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
            Plate plate = printed.of(item);
            List<String> cells = new ArrayList<>(List.of(
                    item.mark(),
                    String.valueOf(item.quantity()),
                    job.bare(plate.length()),
                    job.bare(plate.width()),
                    LengthFormat.fine(item.thickness(), job.units())));
            if (inches) {
                cells.add(millimetres(item.length()) + " × " + millimetres(item.width()));
            }
            cells.add(item.material());
            cells.add(PartNames.of(item, job.result().path().box()));
            cells.add(work(plate));
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }

    private String work(Plate plate) {
        List<String> work = new ArrayList<>();
        plate.cutouts().forEach(c -> work.add(cutout(c)));
        plate.grooves().forEach(g -> work.add(groove(g)));
        if (!plate.holes().isEmpty()) {
            work.add(Labels.of("cutList.holes", String.valueOf(plate.holes().size())));
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
        return cutout(job, c);
    }

    /** Size and place of a cut-out. */
    static String cutout(Job job, Cutout c) {
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
}
