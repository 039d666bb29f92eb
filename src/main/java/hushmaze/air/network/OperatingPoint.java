package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import java.util.function.DoubleUnaryOperator;

/** Where a drive and the resistance of its path meet; or why they do not. */
public sealed interface OperatingPoint permits OperatingPoint.Found, OperatingPoint.None {
    /** Why there is no operating point. */
    enum Reason {
        /** Already at the least flow the path takes more than the drive gives. */
        FAN_TOO_WEAK,
        /** At the largest flow of its curve the drive still gives more than the path takes. */
        FAN_RUNS_OFF_ITS_CURVE
    }

    /**
     * The meeting point.
     *
     * @param flow m³/s
     * @param pressure Pa
     */
    record Found(double flow, double pressure) implements OperatingPoint {}

    /** There is none. */
    record None(Reason reason) implements OperatingPoint {}

    /**
     * The operating point of a fan.
     *
     * @param resistance pressure the path takes, Pa, rising with the flow in m³/s
     */
    static OperatingPoint of(FanCurve fan, DoubleUnaryOperator resistance) {
        InvalidValue.present("fan", fan);
        return of(fan::pressure, fan.leastFlow(), fan.summitFlow(), fan.largestFlow(), resistance);
    }

    /**
     * The operating point of any drive; of two, the one on the falling part, where a fan runs steadily.
     *
     * @param drive pressure given, Pa, over the flow in m³/s
     * @param least least flow of the drive, m³/s
     * @param summit flow from which on its pressure only falls, m³/s
     * @param largest largest flow of the drive, m³/s
     * @param resistance pressure the path takes, Pa, rising with the flow in m³/s
     */
    static OperatingPoint of(
            DoubleUnaryOperator drive, double least, double summit, double largest, DoubleUnaryOperator resistance) {
        DoubleUnaryOperator lack = q -> resistance.applyAsDouble(q) - drive.applyAsDouble(q);
        if (lack.applyAsDouble(largest) < 0) {
            return new None(Reason.FAN_RUNS_OFF_ITS_CURVE);
        }
        boolean steady = lack.applyAsDouble(summit) <= 0;
        if (!steady && lack.applyAsDouble(least) > 0) {
            return new None(Reason.FAN_TOO_WEAK);
        }
        double flow = steady ? Root.between(lack, summit, largest) : Root.between(lack, least, summit);
        return new Found(flow, drive.applyAsDouble(flow));
    }
}
