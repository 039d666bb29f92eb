package hushmaze.drawing.page;

import hushmaze.assess.PathResult;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Blocks;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Change;
import hushmaze.size.Sensitivity;
import hushmaze.size.Unable;
import hushmaze.sound.PathCalculator.Quick;
import hushmaze.sound.PathMethods;
import java.util.ArrayList;
import java.util.List;

/** What small errors of cutting and buying, and small improvements, would do to this box. */
final class SensitivityPages {
    /** A smaller loss of margin is not worth a sentence, dB. */
    private static final double WORTH_SAYING = 0.5;

    private final Job job;
    private final Blocks blocks;

    SensitivityPages(Job job) {
        this.job = job;
        this.blocks = job.blocks();
    }

    /** None where the wave solution was left out for the sake of time: the quick wave of all the changed boxes takes seconds. */
    List<Draft> pages() {
        PathMethods methods = job.result().sound().loss().methods();
        if (methods.quick() != null && methods.wave() == null) {
            return List.of();
        }
        List<PathResult> paths = job.assessment().paths();
        String name = job.result().path().name();
        int index = 0;
        while (!paths.get(index).path().name().equals(name)) {
            index++;
        }
        return job.textPages(
                Labels.of("change.title"), Labels.of("type.change"), blocks(Sensitivity.of(job.assessment(), index)));
    }

    private List<Block> blocks(Sensitivity sensitivity) {
        String method = Labels.of(sensitivity.method() == Quick.NONE ? "change.estimate" : "change.quick");
        List<Block> all = new ArrayList<>();
        all.add(blocks.title(Labels.of("change.title")));
        all.add(blocks.paragraph(Labels.of("change.intro", method)));
        all.add(table(sensitivity));
        sensitivity.rows().stream()
                .filter(row -> row.unable() != null)
                .forEach(row -> all.add(blocks.bullet(Labels.of("change.because", what(row.change()), why(row)))));
        all.add(blocks.paragraph(worst(sensitivity)));
        all.add(blocks.heading(Labels.of("change.meant")));
        Labels.list("change.meant").forEach(text -> all.add(blocks.bullet(text)));
        all.add(blocks.bullet(new GapWords(job).slit(small(Change.SLIT))));
        all.add(blocks.remark(Labels.of("change.remark", method)));
        return all;
    }

    private Table table(Sensitivity sensitivity) {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("change.what")),
                        Column.number(Labels.of("change.margin")),
                        Column.number(Labels.of("change.likely")),
                        Column.number(Labels.of(
                                "change.pressure", job.figures().pressureUnit().symbol())),
                        Column.words(Labels.of("change.fits"))));
        for (Sensitivity.Row row : sensitivity.rows()) {
            table.row(
                    what(row.change()),
                    signed(row.margin(), 1),
                    signed(row.likely(), 1),
                    pressure(row.pressureDrop()),
                    Labels.of(row.unable() != null ? "change.below" : row.fits() ? "change.yes" : "change.no"));
        }
        return table;
    }

    private String why(Sensitivity.Row row) {
        String why = Labels.of("unable." + row.unable());
        return row.unable() == Unable.NO_BOX ? why + " (" + row.detail() + ")" : why;
    }

    private String worst(Sensitivity sensitivity) {
        return sensitivity
                .worstError()
                .filter(row -> row.margin() <= -WORTH_SAYING)
                .map(row ->
                        Labels.of("change.worst." + row.change(), job.amounts().decibels(-row.margin())))
                .orElse(Labels.of("change.harmless", job.amounts().decibels(WORTH_SAYING)));
    }

    private String what(Change change) {
        return switch (change) {
            case WIDER, NARROWER -> Labels.of("change." + change, small(Change.WIDTH));
            case THICKER_LINER, THINNER_LINER -> Labels.of("change." + change, small(Change.LINER));
            case COVER_SLIT -> Labels.of("change." + change, small(Change.SLIT));
            case HALF_RESISTIVITY, DOUBLE_RESISTIVITY, ONE_MORE_LAYER, ONE_MORE_PASS -> Labels.of("change." + change);
        };
    }

    /** A small size in millimetres, with about what it is on an inch rule. */
    private String small(double metres) {
        String millimetres = job.figures().fixed(metres * 1e3, metres < 1e-3 ? 1 : 0) + " mm";
        return job.units() == UnitSystem.METRIC || metres < 1e-3
                ? millimetres
                : Labels.of("change.inches", millimetres, job.length(metres));
    }

    private String pressure(Double si) {
        Unit unit = job.figures().pressureUnit();
        return signed(si == null ? null : Double.valueOf(unit.fromSi(si)), unit == Unit.PASCAL ? 1 : 3);
    }

    /** With its sign; what rounds to nothing has none. */
    private String signed(Double value, int decimals) {
        if (value == null) {
            return job.figures().db(null);
        }
        String text = job.figures().fixed(value, decimals);
        return value > 0 && text.chars().anyMatch(c -> c >= '1' && c <= '9') ? "+" + text : text;
    }
}
