package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import java.util.function.DoubleUnaryOperator;

/**
 * A way whose loss of pressure is known over its flow, such as a whole vent path; turned round by a bracketed root. Not safe for use
 * by several threads.
 */
public final class ResistanceLaw implements BranchLaw {
    private static final double MAX_FLOW = 1e6;

    private final RisingCurve curve;

    /** @param resistance Pa over m³/s, rising, asked at flows above zero only; the same in both directions */
    public ResistanceLaw(DoubleUnaryOperator resistance) {
        InvalidValue.present("resistance", resistance);
        this.curve = new RisingCurve(flow -> flow > 0 ? resistance.applyAsDouble(flow) : 0);
    }

    @Override
    public double flow(double pressureDifference) {
        double size = Math.abs(pressureDifference);
        if (size < STRAIGHT_BELOW) {
            return pressureDifference / STRAIGHT_BELOW * at(STRAIGHT_BELOW);
        }
        return Math.signum(pressureDifference) * at(size);
    }

    private double at(double difference) {
        return curve.inverse(difference, 0, this::beyond);
    }

    private double beyond(double difference) {
        double high = 1e-3;
        while (curve.at(high) < difference) {
            high *= 4;
            if (high > MAX_FLOW) {
                throw new InvalidValue("resistance", "too little", "enough to hold the flow", "");
            }
        }
        return high;
    }
}
