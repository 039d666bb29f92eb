package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A system that delivers a flow whatever the pressure.
 *
 * @param delivered m³/s, from the start to the end of the way
 */
public record FixedFlow(double delivered) implements BranchLaw {
    public FixedFlow {
        InvalidValue.within("delivered", delivered, -1000, 1000, Unit.LITRE_PER_SECOND);
    }

    @Override
    public double flow(double pressureDifference) {
        return delivered;
    }

    @Override
    public boolean answersPressure() {
        return false;
    }

    @Override
    public BranchLaw enlarged(double factor) {
        return this;
    }
}
