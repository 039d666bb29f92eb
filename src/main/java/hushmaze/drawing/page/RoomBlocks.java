package hushmaze.drawing.page;

import hushmaze.air.need.NamedFlow;
import hushmaze.assess.Assessment;
import hushmaze.assess.DraughtAtPerson;
import hushmaze.assess.PathFlow;
import hushmaze.assess.PathResult;
import hushmaze.assess.RoomResult;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Table;
import hushmaze.drawing.draft.Table.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The room with all its paths: sound, air of every path with the door shut, need, carbon dioxide, draught. */
final class RoomBlocks {
    /** Height of the chart of carbon dioxide, mm. */
    private static final double CO2_HEIGHT = 55;

    private final Job job;
    private final Assessment all;
    private final RoomResult room;

    RoomBlocks(Job job) {
        this.job = job;
        this.all = job.assessment();
        this.room = all.room();
    }

    List<Block> all() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(job.blocks().heading(Labels.of("summary.room")));
        blocks.add(job.blocks()
                .paragraph(job.wording().room(room, all.project().room().target())));
        job.wording().envelope(room).ifPresent(e -> blocks.add(job.blocks().paragraph(e)));
        blocks.add(job.blocks().paragraph(job.wording().roomAir(room)));
        if (!room.air().flows().isEmpty()) {
            blocks.add(job.blocks().heading(Labels.of("room.flows")));
            blocks.add(flows());
            blocks.add(job.blocks().remark(Labels.of("room.flows.remark")));
        }
        if (room.need() != null) {
            blocks.add(job.blocks().heading(Labels.of("room.need")));
            blocks.add(need());
        }
        if (all.project().room().people() > 0) {
            AirCharts charts = new AirCharts(job);
            blocks.add(job.blocks().heading(charts.co2Title()));
            blocks.add(job.blocks().chart(2, CO2_HEIGHT, charts.co2()::draw, Labels.of("chart.co2.remark")));
        }
        if (!room.draughts().isEmpty()) {
            blocks.add(job.blocks().heading(Labels.of("room.draught")));
            blocks.add(draughts());
            blocks.add(job.blocks().remark(Labels.of("room.draught.remark")));
        }
        return blocks;
    }

    private Block flows() {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("room.path")),
                        Column.words(Labels.of("room.drive")),
                        Column.number(Labels.of("room.asked")),
                        Column.number(Labels.of("room.low")),
                        Column.number(Labels.of("room.likely")),
                        Column.number(Labels.of("room.high"))));
        for (int i = 0; i < all.paths().size(); i++) {
            PathResult path = all.paths().get(i);
            PathFlow carried = room.air().flows().get(i);
            table.row(
                    path.path().name(),
                    Labels.of("drive." + carried.drive().name().toLowerCase(Locale.ROOT)),
                    job.amounts().flow(path.pathAir().flow()),
                    job.amounts().flow(carried.least()),
                    job.amounts().flow(carried.likely()),
                    job.amounts().flow(carried.most()));
        }
        return table;
    }

    private Block need() {
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("room.need.ground")),
                        Column.number(Labels.of("room.need.flow")),
                        Column.words(Labels.of("room.need.source"))));
        NamedFlow governing = room.need().governing();
        for (NamedFlow flow : room.need().flows()) {
            String[] cells = {
                job.wording().ground(flow), job.amounts().flow(flow.flow()), flow.source(),
            };
            if (flow.equals(governing)) {
                table.strong(cells);
            } else {
                table.row(cells);
            }
        }
        return table;
    }

    private Block draughts() {
        String unit = job.figures().velocityUnit();
        Table table = new Table(
                job.measure(),
                List.of(
                        Column.words(Labels.of("room.path")),
                        Column.number(Labels.of("room.draught.distance")),
                        Column.number(Labels.of("room.draught.velocity", unit)),
                        Column.number(Labels.of("room.draught.high", unit)),
                        Column.number(Labels.of("room.draught.rate")),
                        Column.number(Labels.of("room.draught.rateHigh"))));
        for (DraughtAtPerson draught : room.draughts()) {
            table.row(
                    draught.path(),
                    job.amounts().distance(draught.distance()),
                    job.figures().velocity(draught.velocity().likely()),
                    job.figures().velocity(draught.velocity().high()),
                    job.figures().percent(draught.rate() / 100),
                    job.figures().percent(draught.rateHigh() / 100));
        }
        return table;
    }
}
