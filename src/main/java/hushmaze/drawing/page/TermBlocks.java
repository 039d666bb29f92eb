package hushmaze.drawing.page;

import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.LossTerm;
import java.util.ArrayList;
import java.util.List;

/** The handbook estimate of the path, term by term, per octave. */
final class TermBlocks {
    private final Job job;
    private final List<LossTerm> terms;

    TermBlocks(Job job) {
        this.job = job;
        this.terms = job.result().terms();
    }

    List<Block> all() {
        List<Block> all = new ArrayList<>();
        all.add(job.blocks().heading(Labels.of("terms.heading")));
        all.add(table());
        all.add(job.blocks().remark(Labels.of("terms.remark")));
        return all;
    }

    private Block table() {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words(Labels.of("air.where")));
        columns.add(Column.words(Labels.of("air.what")));
        BandSet.OCTAVE.bands().forEach(b -> columns.add(Column.number(b.label())));
        Table table = new Table(job.measure(), columns);
        Spectrum total = Spectrum.flat(BandSet.OCTAVE, 0);
        for (LossTerm term : terms) {
            table.row(cells(Labels.word("place", term.part()), Labels.word("term", term.key()), term.octaves()));
            total = total.plus(term.octaves());
        }
        table.strong(cells(Labels.of("air.total"), "", total));
        return table;
    }

    private String[] cells(String where, String what, Spectrum octaves) {
        List<String> cells = new ArrayList<>(List.of(where, what));
        for (double db : octaves.values()) {
            cells.add(job.figures().db(db));
        }
        return cells.toArray(String[]::new);
    }
}
