package hushmaze.drawing.page;

import hushmaze.air.need.Co2Course;
import hushmaze.assess.PathFlow;
import hushmaze.assess.PathResult;
import hushmaze.assess.RoomResult;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Point;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.draft.Co2Chart;
import hushmaze.drawing.draft.Curve;
import hushmaze.drawing.draft.FanChart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The charts of the air, for paper and screen. */
final class AirCharts {
    private static final int CO2_PARTS = 40;
    private static final Stroke OFF = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.BLACK);
    private static final Stroke ON = new Stroke(true, Stroke.Pattern.CONTINUOUS, Ink.ACCENT);

    private final Job job;

    AirCharts(Job job) {
        this.job = job;
    }

    /** Title of the chart of pressure over flow. */
    String pressureTitle() {
        PathFlow carried = job.result().carried();
        return Labels.of(carried != null && carried.answers() ? "air.chart.drive" : "air.chart.path");
    }

    /** What stands below that chart. */
    String pressureRemark() {
        PathFlow carried = job.result().carried();
        return Labels.of(carried != null && carried.answers() ? "air.chart.drive.remark" : "air.chart.path.remark");
    }

    /** Title of the chart of carbon dioxide. */
    String co2Title() {
        return Labels.of(hasTimetable() ? "chart.co2.day" : "chart.co2");
    }

    /** Pressure over flow: the drive, if it has a curve, and what path and room take; nothing when the room has no answer. */
    Optional<FanChart> pressure() {
        PathResult result = job.result();
        PathFlow carried = result.carried();
        if (carried == null || carried.curve().isEmpty()) {
            return Optional.empty();
        }
        List<PathFlow.DrivePoint> curve = carried.curve();
        FanChart.Path path = new FanChart.Path(
                Labels.of(carried.answers() ? "air.chart.system" : "air.chart.loss"),
                Labels.of("air.chart.range"),
                each(curve, PathFlow.DrivePoint::flow),
                each(curve, PathFlow.DrivePoint::low),
                each(curve, PathFlow.DrivePoint::likely),
                each(curve, PathFlow.DrivePoint::high));
        return Optional.of(new FanChart(
                drive(carried),
                path,
                point(carried),
                job.figures().flowUnit(),
                job.figures().pressureUnit(),
                job.measure()));
    }

    private static List<Double> each(List<PathFlow.DrivePoint> curve, ToDoubleFunction<PathFlow.DrivePoint> value) {
        return curve.stream().map(value::applyAsDouble).toList();
    }

    private FanChart.Line drive(PathFlow carried) {
        if (!carried.answers()) {
            return null;
        }
        List<Point> points = carried.curve().stream()
                .filter(p -> p.drive() != null)
                .map(p -> new Point(p.flow(), p.drive()))
                .toList();
        return new FanChart.Line(Labels.of(carried.fan() == null ? "air.chart.given" : "air.chart.fan"), points);
    }

    /** Where drive and likely path meet, or the flow of the brief on the likely path. */
    private FanChart.Operating point(PathFlow carried) {
        double flow =
                carried.answers() ? carried.likely() : job.result().pathAir().flow();
        List<PathFlow.DrivePoint> curve = carried.curve();
        for (int i = 1; i < curve.size(); i++) {
            PathFlow.DrivePoint a = curve.get(i - 1);
            PathFlow.DrivePoint b = curve.get(i);
            if (flow >= a.flow() && flow <= b.flow()) {
                double share = (flow - a.flow()) / (b.flow() - a.flow());
                double pressure = a.likely() + share * (b.likely() - a.likely());
                return new FanChart.Operating(job.amounts().flow(flow), flow, pressure);
            }
        }
        return null;
    }

    /** Carbon dioxide over the timetable, or with the air on and off. */
    Co2Chart co2() {
        return new Co2Chart(
                co2Curves(),
                List.of(
                        new Co2Chart.Limit("1000 ppm", RoomResult.NOTICED_CO2),
                        new Co2Chart.Limit("1500 ppm", RoomResult.STALE_CO2)),
                job.measure());
    }

    /** The lines of that chart. */
    List<Curve> co2Curves() {
        RoomResult room = job.assessment().room();
        List<Curve> curves = new ArrayList<>();
        boolean timetable = hasTimetable();
        curves.add(curve(timetable ? "chart.co2.timetable" : "chart.co2.on", ON, room.course()));
        if (!timetable) {
            curves.add(curve("chart.co2.off", OFF, room.sealed()));
        }
        return curves;
    }

    private boolean hasTimetable() {
        var use = job.assessment().project().room().use();
        return use != null && !use.timetable().isEmpty();
    }

    private static Curve curve(String key, Stroke stroke, Co2Course course) {
        return new Curve(
                Labels.of(key),
                stroke,
                course.curve(CO2_PARTS).stream()
                        .map(s -> new Point(s.time(), s.level()))
                        .toList());
    }
}
