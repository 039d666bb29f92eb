package hushmaze.material;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * A fan by its curve.
 *
 * @param name as a person would call it
 * @param points of static pressure over flow at one speed: flows rising, pressures may rise up to one summit and then only
 *     fall
 * @param source data sheet, measured or invented: where the points are from
 */
public record Fan(String name, List<Point> points, String source) {
    /** Most points of a curve. */
    public static final int MAX_POINTS = 100;

    /**
     * One point of the curve.
     *
     * @param flow m³/s
     * @param pressure static pressure, Pa
     */
    public record Point(
            @Measured(Unit.LITRE_PER_SECOND) double flow,
            @Measured(Unit.PASCAL) double pressure) {
        public Point {
            InvalidValue.within("flow", flow, 0, 1000, Unit.LITRE_PER_SECOND);
            InvalidValue.within("pressure", pressure, 0, 1e5, Unit.PASCAL);
        }
    }

    public Fan {
        InvalidValue.text("name", name, 80);
        points = List.copyOf(InvalidValue.present("points", points));
        InvalidValue.text("source", source, 400);
        if (points.size() < 2 || points.size() > MAX_POINTS) {
            throw new InvalidValue("points", points.size() + " points", "2 to " + MAX_POINTS + " points", "");
        }
        boolean falling = false;
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point here = points.get(i);
            if (here.flow() <= before.flow()) {
                throw refused(i, Unit.LITRE_PER_SECOND, here.flow(), "more than the ", before.flow(), "");
            }
            if (falling && here.pressure() > before.pressure()) {
                throw refused(
                        i,
                        Unit.PASCAL,
                        here.pressure(),
                        "at most the ",
                        before.pressure(),
                        ": after its summit a curve only falls");
            }
            falling |= here.pressure() < before.pressure();
        }
        if (!falling) {
            throw new InvalidValue(
                    "points",
                    InvalidValue.shown(points.get(points.size() - 1).pressure(), Unit.PASCAL) + " Pa in the last point",
                    "below the summit of the curve, which ends falling",
                    "");
        }
    }

    private static InvalidValue refused(int point, Unit unit, double given, String limit, double bound, String why) {
        return new InvalidValue(
                "points",
                InvalidValue.shown(given, unit) + " " + unit.symbol() + " in point " + (point + 1),
                limit + InvalidValue.shown(bound, unit) + " " + unit.symbol() + " of the point before it" + why,
                "");
    }
}
