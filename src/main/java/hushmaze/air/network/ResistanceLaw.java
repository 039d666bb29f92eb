package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import java.util.function.DoubleUnaryOperator;

/**
 * A way whose loss of pressure is known over its flow, such as a whole vent path; turned round by a bracketed root.
 *
 * @param resistance Pa over m³/s, rising, asked at flows above zero only; the same in both directions
 */
public record ResistanceLaw(DoubleUnaryOperator resistance) implements BranchLaw {
    private static final double MAX_FLOW = 1e6;

    public ResistanceLaw {
        InvalidValue.present("resistance", resistance);
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
        double high = 1e-3;
        while (resistance.applyAsDouble(high) < difference) {
            high *= 4;
            if (high > MAX_FLOW) {
                throw new InvalidValue("resistance", "too little", "enough to hold the flow", "");
            }
        }
        return Root.between(q -> (q > 0 ? resistance.applyAsDouble(q) : 0) - difference, 0, high);
    }
}
