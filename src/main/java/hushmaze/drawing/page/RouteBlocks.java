package hushmaze.drawing.page;

import hushmaze.assess.PathResult;
import hushmaze.assess.SoundRoute;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.List;

/** By which ways sound comes to the microphone, what would change it, and what others hear. */
final class RouteBlocks {
    private final Job job;
    private final PathResult result;

    RouteBlocks(Job job) {
        this.job = job;
        this.result = job.result();
    }

    List<Block> all() {
        List<Block> all = new ArrayList<>();
        all.add(job.blocks().heading(Labels.of("routes.heading")));
        all.add(table());
        String remark = Labels.of("routes.remark");
        boolean measured = result.path().box().joinery().coverGap() != null;
        all.add(job.blocks().remark(measured ? remark + " " + Labels.of("routes.remark.measured") : remark));
        all.add(job.blocks().paragraph(job.wording().improvements(result)));
        all.add(job.blocks().paragraph(job.wording().difference(result)));
        job.wording().heard(result).forEach(s -> all.add(job.blocks().paragraph(s)));
        return all;
    }

    private Block table() {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.name(Labels.of("octaves.band")));
        BandSet.OCTAVE.bands().forEach(b -> columns.add(Column.number(b.label())));
        Table table = new Table(job.measure(), columns);
        for (SoundRoute route : result.sound().routes()) {
            Spectrum octaves = route.level().levelsInOctaves();
            if (octaves.total() > Double.NEGATIVE_INFINITY) {
                table.row(cells(job.wording().text("route." + route.kind()), octaves));
            }
        }
        table.strong(cells(
                Labels.of("octaves.level"),
                Spectrum.of(BandSet.OCTAVE, i -> result.octaves().get(i).level())));
        return table;
    }

    private String[] cells(String name, Spectrum octaves) {
        List<String> cells = new ArrayList<>(List.of(name));
        for (double db : octaves.values()) {
            cells.add(job.figures().db(db));
        }
        return cells.toArray(String[]::new);
    }
}
