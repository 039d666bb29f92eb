package hushmaze.drawing.page;

import hushmaze.air.Loss;
import hushmaze.air.PathAir;
import hushmaze.assess.AirJudge;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Told;
import hushmaze.drawing.draft.WayChart;
import hushmaze.project.Brief;
import hushmaze.quantity.Unit;
import hushmaze.wording.Amounts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** How fast the air is and what pressure it takes, place by place along its way through a box. */
final class AirWay {
    private final Job job;
    private final PathAir air;
    private final Brief brief;
    private final Amounts amounts;

    AirWay(Job job) {
        this.job = job;
        this.air = job.result().pathAir();
        this.brief = job.result().path().brief();
        this.amounts = job.amounts();
    }

    /** Its chart. */
    WayChart chart() {
        String speed = job.figures().velocityUnit();
        String pressure = job.figures().pressureUnit().symbol();
        return new WayChart(
                places(),
                new WayChart.Names(
                        Labels.of("air.way.speed", speed),
                        Labels.of("air.way.pressure", pressure),
                        Labels.of("air.chart.range"),
                        Labels.of("air.way.likely"),
                        Labels.of("air.way.limit")),
                job.measure());
    }

    /** What stands below it: the sum, and what it is held to. */
    String remark() {
        return Labels.of(
                "air.way.remark",
                amounts.flow(air.flow()),
                amounts.pressure(air.pressureLow()),
                amounts.pressure(air.pressureHigh()),
                amounts.pressure(AirJudge.allowed(brief)));
    }

    /** Every place that has a speed or a loss, in the order of the air. */
    private List<WayChart.Place> places() {
        Map<String, PathAir.PlaceVelocity> speeds = new LinkedHashMap<>();
        air.velocities().forEach(v -> speeds.putIfAbsent(v.part(), v));
        Map<String, List<Loss>> losses = new LinkedHashMap<>();
        air.losses()
                .forEach(l ->
                        losses.computeIfAbsent(l.part(), k -> new ArrayList<>()).add(l));
        return order(List.copyOf(speeds.keySet()), List.copyOf(losses.keySet())).stream()
                .map(part -> place(part, speeds.get(part), losses.getOrDefault(part, List.of())))
                .toList();
    }

    /** Both lists in one, each in its own order: what only the second has comes before what follows it there. */
    private static List<String> order(List<String> first, List<String> second) {
        List<String> all = new ArrayList<>(first);
        int at = 0;
        for (String part : second) {
            int there = all.indexOf(part);
            if (there < 0) {
                all.add(at, part);
                there = at;
            }
            at = there + 1;
        }
        return all;
    }

    private WayChart.Place place(String part, PathAir.PlaceVelocity speed, List<Loss> losses) {
        String name = Labels.word("place", part);
        List<Told.Item> items = new ArrayList<>();
        if (speed != null) {
            items.add(new Told.Item(
                    Labels.of("air.way.mean"),
                    amounts.velocity(speed.velocity()),
                    Labels.of(
                            AirJudge.kept(brief, speed) ? "told.speed.kept" : "told.speed.over",
                            amounts.velocity(AirJudge.limit(brief, speed)))));
        }
        for (Loss loss : losses) {
            items.add(new Told.Item(
                    Labels.of("told.loss.name", Labels.word("loss", loss.key()), amounts.velocity(loss.velocity())),
                    Labels.of(
                            "told.fromTo", amounts.pressure(loss.pressureLow()), amounts.pressure(loss.pressureHigh())),
                    loss.source()));
        }
        return new WayChart.Place(name, speed(speed), pressure(losses), new Told(name, items));
    }

    private WayChart.Speed speed(PathAir.PlaceVelocity of) {
        if (of == null) {
            return null;
        }
        Unit unit = job.figures().speedUnit();
        return new WayChart.Speed(
                unit.fromSi(of.velocity()),
                unit.fromSi(AirJudge.limit(brief, of)),
                AirJudge.kept(brief, of),
                job.figures().velocity(of.velocity()));
    }

    private WayChart.Pressure pressure(List<Loss> losses) {
        if (losses.isEmpty()) {
            return null;
        }
        Unit unit = job.figures().pressureUnit();
        double likely = sum(losses, Loss::pressure);
        return new WayChart.Pressure(
                unit.fromSi(sum(losses, Loss::pressureLow)),
                unit.fromSi(likely),
                unit.fromSi(sum(losses, Loss::pressureHigh)),
                job.figures().pressure(likely));
    }

    private static double sum(List<Loss> losses, ToDoubleFunction<Loss> of) {
        return losses.stream().mapToDouble(of).sum();
    }
}
