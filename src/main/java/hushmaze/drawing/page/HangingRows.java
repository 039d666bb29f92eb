package hushmaze.drawing.page;

import hushmaze.build.fixing.PortFrame;
import hushmaze.build.fixing.Rows;
import hushmaze.build.fixing.ScrewLength;
import hushmaze.build.fixing.Way;
import hushmaze.drawing.Labels;
import hushmaze.drawing.draft.Table;
import hushmaze.project.Mounting;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/** What a hanging box takes: screws into the studs, timber with its screws, and the strips of the frame around its port. */
final class HangingRows {
    private final Job job;
    private final Way way;
    private final Mounting mounting;
    private final Rows rows;

    HangingRows(Job job, Way way) {
        this.job = job;
        this.way = way;
        this.mounting = job.result().path().brief().construction().mounting();
        this.rows = job.result().rows();
    }

    /** Adds rows of what, how much and what for. */
    void addTo(Table table) {
        table.row(
                Labels.of("fixing.screw." + mounting.screw()),
                String.valueOf(rows.screwed().size() * mounting.screwsPerRow()),
                Labels.of(
                        "shopping.hung.screws",
                        job.length(ScrewLength.of(job.result().solid(), mounting, way))));
        table.row(
                Labels.of("shopping.hung.inside"),
                String.valueOf(rows.screwsFromInside()),
                Labels.of(
                        "shopping.hung.inside.for",
                        job.length(ScrewLength.mostFromInside(job.result().solid(), mounting))));
        timber(table);
        PortFrame.of(job.result().solid(), rows)
                .filter(frame -> !frame.strips().isEmpty())
                .ifPresent(frame -> strips(table, frame));
    }

    private void timber(Table table) {
        rows.cleats().stream()
                .collect(Collectors.groupingBy(
                        cleat -> List.of(
                                Labels.of("shopping.hung." + cleat.kind().timber()), width(cleat)),
                        LinkedHashMap::new,
                        Collectors.summingDouble(Rows.Cleat::length)))
                .forEach((named, length) -> table.row(
                        Labels.of("shopping.hung.timber", job.length(mounting.cleat()), named.get(1)),
                        job.amounts().distance(length),
                        named.get(0)));
    }

    private String width(Rows.Cleat cleat) {
        return job.length(Math.ceil(cleat.width() * 1e3) / 1e3);
    }

    private void strips(Table table, PortFrame frame) {
        List<PortFrame.Strip> strips = frame.strips();
        double widest =
                strips.stream().mapToDouble(PortFrame.Strip::width).max().orElseThrow();
        table.row(
                Labels.of("shopping.hung.frame", job.length(frame.thickness()), job.length(widest)),
                job.amounts()
                        .distance(strips.stream()
                                .mapToDouble(PortFrame.Strip::length)
                                .sum()),
                Labels.of("shopping.hung.frame.for"));
    }
}
