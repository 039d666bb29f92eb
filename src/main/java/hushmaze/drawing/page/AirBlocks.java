package hushmaze.drawing.page;

import hushmaze.air.Loss;
import hushmaze.air.PathAir;
import hushmaze.assess.AirJudge;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import hushmaze.project.Brief;
import java.util.ArrayList;
import java.util.List;

/** The air's part of the summary: every loss, and every velocity against its limit. */
final class AirBlocks {
    /** Height of the chart of pressure over flow, mm. */
    private static final double CHART = 55;

    private final Job job;
    private final PathAir air;
    private final Brief brief;

    AirBlocks(Job job) {
        this.job = job;
        this.air = job.result().pathAir();
        this.brief = job.result().path().brief();
    }

    List<Block> all() {
        List<Block> all = new ArrayList<>();
        all.add(job.blocks().heading(Labels.of("air.losses", job.amounts().flow(air.flow()))));
        all.add(losses());
        all.add(job.blocks().remark(Labels.of("air.losses.remark", job.amounts().pressure(AirJudge.allowed(brief)))));
        AirCharts charts = new AirCharts(job);
        charts.pressure().ifPresent(chart -> {
            all.add(job.blocks().heading(charts.pressureTitle()));
            all.add(job.blocks().chart(2, CHART, chart::draw, charts.pressureRemark()));
            job.wording()
                    .drive(job.result())
                    .ifPresent(d -> all.add(job.blocks().paragraph(d)));
        });
        all.add(job.blocks().heading(Labels.of("air.velocities")));
        all.add(velocities());
        return all;
    }

    private Block losses() {
        Figures f = job.figures();
        String pressure = f.pressureUnit().symbol();
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("air.where")),
                        Column.words(Labels.of("air.what")),
                        Column.number(Labels.of("air.velocity", f.velocityUnit())),
                        Column.number(Labels.of("air.coefficient")),
                        Column.number(Labels.of("air.low", pressure)),
                        Column.number(Labels.of("air.likely", pressure)),
                        Column.number(Labels.of("air.high", pressure))));
        for (Loss loss : air.losses()) {
            table.row(
                    Labels.word("place", loss.part()),
                    Labels.word("loss", loss.key()),
                    f.velocity(loss.velocity()),
                    f.fixed(loss.zeta(), 2),
                    f.pressure(loss.pressureLow()),
                    f.pressure(loss.pressure()),
                    f.pressure(loss.pressureHigh()));
        }
        table.strong(
                Labels.of("air.total"),
                "",
                "",
                "",
                f.pressure(air.pressureLow()),
                f.pressure(air.pressure()),
                f.pressure(air.pressureHigh()));
        return table;
    }

    /** Two places a row, in the order of the air down the left half and on down the right. */
    private Block velocities() {
        List<Column> half = List.of(
                Column.words(Labels.of("air.where")),
                Column.number(Labels.of("air.velocity", job.figures().velocityUnit())),
                Column.number(Labels.of("air.limit", job.figures().velocityUnit())),
                Column.name(Labels.of("air.kept")));
        List<Column> columns = new ArrayList<>(half);
        columns.addAll(half);
        Table table = new Table(job.measure(), columns);
        List<PathAir.PlaceVelocity> places = air.velocities();
        int rows = (places.size() + 1) / 2;
        for (int i = 0; i < rows; i++) {
            List<String> cells = new ArrayList<>(velocity(places.get(i)));
            cells.addAll(i + rows < places.size() ? velocity(places.get(i + rows)) : List.of("", "", "", ""));
            table.row(cells.toArray(String[]::new));
        }
        return table;
    }

    private List<String> velocity(PathAir.PlaceVelocity place) {
        double limit = AirJudge.limit(brief, place);
        return List.of(
                Labels.word("place", place.part()),
                job.figures().velocity(place.velocity()),
                job.figures().velocity(limit),
                Labels.of(AirJudge.kept(brief, place) ? "air.yes" : "air.no"));
    }
}
