package hushmaze.air.network;

import hushmaze.material.Fan;
import hushmaze.project.Drive;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Pressure of a fan over its flow, through given points().
 *
 * <p>Formulas: between the points a cubic whose slope at a point is the weighted harmonic mean of the slopes on both sides,
 * zero at a summit, so it never leaves the range of its neighbours. At another speed: flow as n, pressure as n², power as
 * n³; n speed over the speed of the points().
 *
 * <p>Source: Fritsch and Butland, SIAM Journal on Scientific and Statistical Computing 5(2), 1984, 300-304 (from memory);
 * fan laws as printed in ventilation texts. Range: from the first to the last point, nothing beyond. Accuracy: as good as
 * the points; between them near the straight line.
 *
 * @param fan points at one speed; flows rising, pressures rising up to one summit at most and then only falling
 */
public record FanCurve(Fan fan) {
    /** Least and largest speed over that of the points. */
    private static final double SLOWEST = 0.05;

    private static final double FASTEST = 5;

    public FanCurve {
        InvalidValue.present("fan", fan);
    }

    /** The fan of a drive at its speed. */
    public static FanCurve of(Drive drive) {
        return new FanCurve(drive.fan()).atSpeed(drive.speedOrFull());
    }

    private List<Fan.Point> points() {
        return fan.points();
    }

    /** Least flow of the curve, m³/s. */
    public double leastFlow() {
        return points().get(0).flow();
    }

    /** Largest flow of the curve, m³/s. */
    public double largestFlow() {
        return points().get(points().size() - 1).flow();
    }

    /** Flow of the last point with the largest pressure, m³/s; beyond it the curve only falls. */
    public double summitFlow() {
        Fan.Point summit = points().get(0);
        for (Fan.Point point : points()) {
            summit = point.pressure() >= summit.pressure() ? point : summit;
        }
        return summit.flow();
    }

    /**
     * Pressure at a flow, Pa.
     *
     * @param flow m³/s
     * @throws InvalidValue outside the points
     */
    public double pressure(double flow) {
        InvalidValue.within("flow", flow, leastFlow(), largestFlow(), Unit.LITRE_PER_SECOND);
        int i = 1;
        while (points().get(i).flow() < flow) {
            i++;
        }
        double h = width(i);
        double t = (flow - points().get(i - 1).flow()) / h;
        double u = 1 - t;
        // cubic Hermite form
        return points().get(i - 1).pressure() * u * u * (1 + 2 * t)
                + points().get(i).pressure() * t * t * (1 + 2 * u)
                + h * t * u * (u * slopeAt(i - 1) - t * slopeAt(i));
    }

    /** The same fan at another speed: flow as the speed, pressure as its square. */
    public FanCurve atSpeed(double ratio) {
        InvalidValue.within("ratio", ratio, SLOWEST, FASTEST, Unit.NUMBER);
        List<Fan.Point> turned = points().stream()
                .map(p -> new Fan.Point(p.flow() * ratio, p.pressure() * ratio * ratio))
                .toList();
        return new FanCurve(new Fan(fan.name(), turned, fan.source()));
    }

    /**
     * Least speed, over that of the points, at which the fan gives a pressure at a flow; nothing if none up to five does. At
     * flows below its first point a fan counts with the pressure of that point.
     *
     * @param flow m³/s
     * @param pressure Pa
     */
    public OptionalDouble speedFor(double flow, double pressure) {
        DoubleUnaryOperator above =
                n -> n * n * pressure(Math.max(leastFlow(), Math.min(largestFlow(), flow / n))) - pressure;
        double slow = Math.max(SLOWEST, flow / largestFlow());
        if (slow > FASTEST || above.applyAsDouble(FASTEST) < 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(above.applyAsDouble(slow) >= 0 ? slow : Root.between(above, slow, FASTEST));
    }

    /** Power at a speed over the power at the speed of the points: the third power of the ratio of speeds. */
    public static double powerRatio(double ratio) {
        return ratio * ratio * ratio;
    }

    private double width(int i) {
        return points().get(i).flow() - points().get(i - 1).flow();
    }

    private double chord(int i) {
        return (points().get(i).pressure() - points().get(i - 1).pressure()) / width(i);
    }

    private double slopeAt(int i) {
        int last = points().size() - 1;
        if (last == 1) {
            return chord(1);
        }
        if (i == 0) {
            return endSlope(width(1), width(2), chord(1), chord(2));
        }
        if (i == last) {
            return endSlope(width(last), width(last - 1), chord(last), chord(last - 1));
        }
        double before = chord(i);
        double after = chord(i + 1);
        if (before * after <= 0) {
            return 0;
        }
        double w1 = 2 * width(i + 1) + width(i);
        double w2 = width(i + 1) + 2 * width(i);
        return (w1 + w2) / (w1 / before + w2 / after);
    }

    /** Three-point slope at an end, held back where it would overshoot. */
    private static double endSlope(double near, double next, double chordNear, double chordNext) {
        double slope = ((2 * near + next) * chordNear - near * chordNext) / (near + next);
        if (slope * chordNear <= 0) {
            return 0;
        }
        boolean bend = chordNear * chordNext <= 0;
        return bend && Math.abs(slope) > 3 * Math.abs(chordNear) ? 3 * chordNear : slope;
    }
}
