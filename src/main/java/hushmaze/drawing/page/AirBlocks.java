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
        all.add(job.blocks().remark(Labels.of("air.losses.remark", job.amounts().pressure(brief.maxPressureDrop()))));
        all.add(job.blocks().heading(Labels.of("air.velocities")));
        all.add(velocities());
        return all;
    }

    private Block losses() {
        Figures f = job.figures();
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("air.where")),
                        Column.words(Labels.of("air.what")),
                        Column.number(Labels.of("air.velocity", f.velocityUnit())),
                        Column.number(Labels.of("air.coefficient")),
                        Column.number(Labels.of("air.low")),
                        Column.number(Labels.of("air.likely")),
                        Column.number(Labels.of("air.high"))));
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

    private Block velocities() {
        Figures f = job.figures();
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("air.where")),
                        Column.number(Labels.of("air.velocity", f.velocityUnit())),
                        Column.number(Labels.of("air.limit", f.velocityUnit())),
                        Column.name(Labels.of("air.kept"))));
        for (PathAir.PlaceVelocity place : air.velocities()) {
            double limit = AirJudge.limit(brief, place);
            table.row(
                    Labels.word("place", place.part()),
                    f.velocity(place.velocity()),
                    f.velocity(limit),
                    Labels.of(place.velocity() <= limit ? "air.yes" : "air.no"));
        }
        return table;
    }
}
