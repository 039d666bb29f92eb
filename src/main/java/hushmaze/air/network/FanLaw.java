package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import java.util.function.DoubleUnaryOperator;

/**
 * A fan with its path, from where the fan draws to where it blows.
 *
 * <p>Formula: R(q) = Δp + F(q); R pressure the path takes, F pressure the fan gives, Δp difference of pressure from start to
 * end. Of several flows the one on the falling part of the curve, where a fan runs steadily. So that every difference has a
 * flow: below the first point of the curve the fan gives the pressure of that point; beyond the last one it takes pressure,
 * along a line as steep as from the summit to nothing over a tenth of its largest flow. {@link #isOnCurve} says whether a
 * flow is between the points. Not safe for use by several threads.
 */
public final class FanLaw implements BranchLaw {
    /** Share of the largest flow over which the line beyond it takes the summit's pressure. */
    private static final double BEYOND = 0.1;

    private static final double MAX_FLOW = 1e6;

    private final FanCurve fan;
    private final DoubleUnaryOperator resistance;
    /** What the path takes less what the fan gives, from the summit on. */
    private final RisingCurve falling;

    /**
     * @param fan at its speed
     * @param resistance Pa over m³/s, rising, asked at flows above zero only; the same in both directions
     */
    public FanLaw(FanCurve fan, DoubleUnaryOperator resistance) {
        this.fan = InvalidValue.present("fan", fan);
        this.resistance = InvalidValue.present("resistance", resistance);
        this.falling = new RisingCurve(q -> path(q) - pressure(q));
    }

    /** Whether the fan's points reach to a flow, m³/s. */
    public boolean isOnCurve(double flow) {
        return flow >= fan.leastFlow() && flow <= fan.largestFlow();
    }

    @Override
    public double flow(double pressureDifference) {
        double summit = fan.summitFlow();
        if (falling.at(summit) <= pressureDifference) {
            return falling.inverse(
                    pressureDifference, summit, difference -> beyond(q -> falling.at(q) - difference, summit, 1));
        }
        DoubleUnaryOperator lack = q -> path(q) - pressure(q) - pressureDifference;
        return Root.between(lack, beyond(lack, summit, -1), summit);
    }

    /** A flow on the far side of the root. */
    private double beyond(DoubleUnaryOperator lack, double from, int direction) {
        double step = fan.largestFlow();
        double at = from + direction * step;
        while (direction * lack.applyAsDouble(at) < 0) {
            step *= 2;
            at = from + direction * step;
            if (step > MAX_FLOW) {
                throw new InvalidValue("resistance", "too little", "enough to hold the flow", "");
            }
        }
        return at;
    }

    private double path(double flow) {
        return flow == 0 ? 0 : Math.signum(flow) * resistance.applyAsDouble(Math.abs(flow));
    }

    /** Pressure the fan gives at any flow, Pa. */
    double pressure(double flow) {
        if (flow > fan.largestFlow()) {
            double slope = fan.pressure(fan.summitFlow()) / (BEYOND * fan.largestFlow());
            return fan.pressure(fan.largestFlow()) - slope * (flow - fan.largestFlow());
        }
        return fan.pressure(Math.max(flow, fan.leastFlow()));
    }
}
