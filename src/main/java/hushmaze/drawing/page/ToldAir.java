package hushmaze.drawing.page;

import hushmaze.air.need.Co2Course;
import hushmaze.assess.PathFlow;
import hushmaze.assess.PathFlow.DrivePoint;
import hushmaze.assess.RoomResult;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Point;
import hushmaze.drawing.Told;
import hushmaze.drawing.Told.Item;
import hushmaze.drawing.draft.Curve;
import hushmaze.project.Drive;
import hushmaze.wording.Amounts;
import java.util.ArrayList;
import java.util.List;

/** What the charts of the air tell: every figure, and where it comes from. */
final class ToldAir {
    private static final double MINUTE = 60;

    private final Job job;
    private final List<Curve> curves;

    ToldAir(Job job) {
        this.job = job;
        this.curves = new AirCharts(job).co2Curves();
    }

    /** Of the pressures at a flow. @param number of the flow in the curve */
    Told pressures(int number) {
        PathFlow carried = job.result().carried();
        DrivePoint point = carried.curve().get(number);
        Amounts amounts = job.amounts();
        List<Item> items = new ArrayList<>();
        String range = Labels.of("told.fromTo", amounts.pressure(point.low()), amounts.pressure(point.high()));
        items.add(new Item(Labels.of("air.chart.range"), range, Labels.of("told.losses")));
        String likely = carried.answers() ? "air.chart.system" : "air.chart.loss";
        String from = carried.answers() ? "told.system" : "told.loss";
        items.add(new Item(Labels.of(likely), amounts.pressure(point.likely()), Labels.of(from)));
        if (carried.answers() && point.drive() != null) {
            String drive = carried.fan() == null ? "air.chart.given" : "air.chart.fan";
            items.add(new Item(Labels.of(drive), amounts.pressure(point.drive()), driveSource()));
        }
        return new Told(amounts.flow(point.flow()), items);
    }

    private String driveSource() {
        Drive drive = job.result().path().brief().drive();
        if (drive == null) {
            return Labels.of("told.usual");
        }
        return drive.kind() == Drive.Kind.FAN_CURVE ? drive.fan().source() : drive.source();
    }

    /** Of carbon dioxide at a time. @param number of the time in the first line */
    Told co2(int number) {
        RoomResult room = job.assessment().room();
        List<Co2Course> courses = List.of(room.course(), room.sealed());
        Point at = curves.get(0).points().get(number);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            String level = Amounts.number(
                    courses.get(i).levelAt(Math.min(at.x(), courses.get(i).duration())) * 1e6, 0);
            items.add(new Item(curves.get(i).name(), Labels.of("told.ppm", level), Labels.of("told.co2")));
        }
        return new Told(Labels.of("told.minutes", Amounts.number(at.x() / MINUTE, 0)), items);
    }
}
